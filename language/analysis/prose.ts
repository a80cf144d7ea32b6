import type { Part } from '../model/family.ts';
import type { Procedure, StepObject } from '../model/procedure.ts';
import type { GateStep } from '../model/steps.ts';
import { english, type Filling, inEach, listed, lower, type Said, say } from '../say/say.ts';
import type { PathContext } from './flow-analysis.ts';

export { capital, either, listed, lower } from '../say/say.ts';

/** The words for a part. */
export function partWords(procedure: Pick<Procedure, 'family'>, name: string): Filling {
  const part = procedure.family.parts.find((other) => other.name === name);
  return part === undefined ? name : lower(part.title);
}

/** The words for what a step acts on: of an assembly its own. */
export function objectWords(
  procedure: Pick<Procedure, 'family'>,
  { name, assembly }: Pick<StepObject, 'name' | 'assembly'>,
): Filling {
  const whole = procedure.family.assemblies.find((one) => one.name === assembly?.name);
  return whole === undefined ? partWords(procedure, name) : lower(whole.title);
}

/** Words for several parts, as a person would say them: `six valve holders`, not one after the other. */
export function partsWords(procedure: Pick<Procedure, 'family'>, names: readonly string[]): Said {
  const groups = byBase(procedure, names);
  // One name is one thing to what is said of it, however many there are.
  if (groups.length === 1 && groups[0]!.parts.length === 1) return listed([lower(groups[0]!.parts[0]!.title)]);
  return listed(groups.map(({ parts, isAll, name }) => copiesWords(parts, isAll, name)));
}

/** Parts as they are written in a step: one name for all copies. */
export function partsWritten(procedure: Pick<Procedure, 'family'>, names: readonly string[]): string {
  return byBase(procedure, names)
    .flatMap(({ parts, isAll, name }) => (isAll ? parts[0]!.base : parts.length === 0 ? name : parts.map(positioned)))
    .join(', ');
}

interface Copies {
  readonly parts: readonly Part[];
  /** Every copy of it. */
  readonly isAll: boolean;
  /** As it was named: nothing is known of a part that does not exist. */
  readonly name: string;
}

/** Parts in the order in which they are named, copies of one together. */
function byBase({ family }: Pick<Procedure, 'family'>, names: readonly string[]): Copies[] {
  const groups = new Map<string, { parts: Part[]; name: string }>();
  for (const name of new Set(names)) {
    const part = family.parts.find((other) => other.name === name);
    const key = part?.base ?? name;
    const group = groups.get(key) ?? { parts: [], name };
    if (part !== undefined) group.parts.push(part);
    groups.set(key, group);
  }
  return [...groups].map(([base, group]) => ({
    ...group,
    isAll: group.parts.length > 0 && group.parts.length === family.parts.filter((part) => part.base === base).length,
  }));
}

const counts = 'no one two three four five six seven eight nine ten eleven twelve'.split(' ');

function copiesWords(parts: readonly Part[], isAll: boolean, name: string): Filling {
  const [first] = parts;
  if (first === undefined) return name;
  if (parts.length === 1 && first.quantity === 1) return lower(first.title);
  const title = lower(parts.length === 1 ? first.title : first.baseTitle);
  const several = plural(english(title));
  const count = parts.length * first.quantity;
  // The plural of an author's word is known in English alone.
  if (isAll || parts.length === 1)
    return inEach({
      en: `${counts[count] ?? count} ${several}`,
      ...inOthers(`${count} × `, title),
    });
  const all = inEach({ en: several, ...inOthers('', title) });
  if (first.side !== null) return say`${all} (${listed(parts.map(({ side }) => side!))})`;
  return say`${all} of cylinders ${listed(parts.map(({ position }) => String(position)))}`;
}

function inOthers(count: string, title: Filling): Readonly<Record<string, string>> {
  const text = `${count}${english(title)}`;
  return { es: text, de: text };
}

/** More than one of what an author calls so, in English. What ends in an s of its own is plural already. */
export function plural(title: string): string {
  if (/[^suix]s$/u.test(title)) return title;
  if (/y$/u.test(title) && !/[aeo]y$/u.test(title)) return `${title.slice(0, -1)}ies`;
  return /(?:s|x|z|ch|sh)$/u.test(title) ? `${title}es` : `${title}s`;
}

function positioned({ name, base, position, side }: Part): string {
  return position === null ? base : side === null ? `${base} ${position}` : name;
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
