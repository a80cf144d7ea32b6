import type { Procedure } from '../model/procedure.ts';
import type { GateStep } from '../model/steps.ts';
import { type Filling, listed, lower, type Said, say } from '../say/say.ts';
import type { PathContext } from './flow-analysis.ts';

export { capital, either, listed, lower } from '../say/say.ts';

/** The words for a part. */
export function partWords(procedure: Pick<Procedure, 'family'>, name: string): Filling {
  const part = procedure.family.parts.find((other) => other.name === name);
  return part === undefined ? name : lower(part.title);
}

/** Words for several parts. */
export function partsWords(procedure: Pick<Procedure, 'family'>, names: readonly string[]): Said {
  return listed(names.map((name) => partWords(procedure, name)));
}

/** A face in words: `end face of the body`. */
export function faceWords(procedure: Pick<Procedure, 'family'>, id: string): Filling {
  const face = procedure.family.faces.find((other) => other.id === id);
  if (face === undefined) return id;
  return say`the ${face.name} face of the ${partWords(procedure, face.part)}`;
}

/**
 * The path to a state, with the step numbers of the sheet: `after opening (7.4) fails and reshim (R1) is done`. Null on
 * the first path.
 */
export function pathWords(procedure: Procedure, path: PathContext): Said | null {
  if (path.repair === null || path.from === null) return null;
  const number = procedure.repairs.indexOf(path.repair) + 1;
  const { gate } = path.from;
  const failed =
    gate.verb === 'check' || gate.verb === 'measure'
      ? atStep(gate.verb, gate.number)
      : `${gate.gate.id} (${gate.number})`;
  const repair = path.repair.inline
    ? say`${path.repair.steps[0]!.verb} (R${number})`
    : say`${path.repair.name} (R${number})`;
  const before = pathWords(procedure, path.from.path);
  return before === null
    ? say`after ${failed} fails and ${repair} is done`
    : say`${before}, then ${failed} fails and ${repair} is done`;
}

function atStep(kind: 'check' | 'measure', number: string): Said {
  return kind === 'check' ? say`the check at ${number}` : say`the measure at ${number}`;
}

/** A station in the middle of a sentence: `the polishing wheel`. */
export function stationWords(procedure: Pick<Procedure, 'shop'>, name: string | null): Filling {
  const station = procedure.shop.stations.find((other) => other.name === name);
  return station === undefined ? say`its station` : say`the ${lower(station.title)}`;
}

/** A gate in the middle of a sentence: `opening`, `the check at 5.3`, `opening across the set`. */
export function gateWords({ gate, number }: GateStep): Filling {
  switch (gate.kind) {
    case 'check':
    case 'measure':
      return atStep(gate.kind, number);
    case 'across':
      return say`${gate.test} across the set`;
    case 'set':
      return say`the setting of ${gate.test}`;
    case 'test':
      return gate.test;
  }
}
