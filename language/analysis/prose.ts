import type { Part } from '../model/family.ts';
import type { Procedure } from '../model/procedure.ts';
import type { GateStep } from '../model/steps.ts';
import type { PathContext } from './flow-analysis.ts';

const and = new Intl.ListFormat('en-GB', { type: 'conjunction' });
const or = new Intl.ListFormat('en-GB', { type: 'disjunction' });

/** `shim, spring and seat` */
export function listed(names: readonly string[]): string {
  return and.format(names);
}

export function either(names: readonly string[]): string {
  return or.format(names);
}

/** Title of a part in the middle of a sentence: `nozzle nut`. An abbreviation keeps its capitals. */
export function lower(title: string): string {
  return /^\p{Lu}\p{Ll}/u.test(title) ? title.charAt(0).toLowerCase() + title.slice(1) : title;
}

/** The words for a part. */
export function partWords(procedure: Pick<Procedure, 'family'>, name: string): string {
  const part = procedure.family.parts.find((other) => other.name === name);
  return part === undefined ? name : lower(part.title);
}

/** Words for several parts, as a person would say them: `six valve holders`, not one after the other. */
export function partsWords(procedure: Pick<Procedure, 'family'>, names: readonly string[]): string {
  return listed(byBase(procedure, names).map(({ parts, isAll, name }) => copiesWords(parts, isAll, name)));
}

/** Parts as they are written in a step: one name for all copies. */
export function partsWritten(procedure: Pick<Procedure, 'family'>, names: readonly string[]): string {
  return byBase(procedure, names)
    .flatMap(({ parts, isAll, name }) =>
      isAll
        ? parts[0]!.base
        : parts.length === 0
          ? name
          : parts.map(({ base, position }) => positioned(base, position)),
    )
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

function copiesWords(parts: readonly Part[], isAll: boolean, name: string): string {
  const [first] = parts;
  if (first === undefined) return name;
  if (parts.length === 1) return lower(first.title);
  const several = plural(lower(first.baseTitle));
  if (isAll) return `${counts[parts.length] ?? parts.length} ${several}`;
  return `${several} of cylinders ${listed(parts.map(({ position }) => String(position)))}`;
}

function plural(title: string): string {
  if (/y$/u.test(title) && !/[aeo]y$/u.test(title)) return `${title.slice(0, -1)}ies`;
  return /(?:s|x|z|ch|sh)$/u.test(title) ? `${title}es` : `${title}s`;
}

function positioned(base: string, position: number | null): string {
  return position === null ? base : `${base} ${position}`;
}

/** A face in words: `end face of the body`. */
export function faceWords(procedure: Pick<Procedure, 'family'>, id: string): string {
  const face = procedure.family.faces.find((other) => other.id === id);
  if (face === undefined) return id;
  return `the ${face.name} face of the ${partWords(procedure, face.part)}`;
}

/**
 * The path to a state, with the step numbers of the sheet: `after opening (7.4) fails and reshim (R1) is done`. Empty on
 * the first path.
 */
export function pathWords(procedure: Procedure, path: PathContext): string {
  if (path.repair === null || path.from === null) return '';
  const number = procedure.repairs.indexOf(path.repair) + 1;
  const { gate } = path.from;
  const failed =
    gate.verb === 'check' || gate.verb === 'measure'
      ? `the ${gate.verb} at ${gate.number}`
      : `${gate.gate.id} (${gate.number})`;
  const repair = path.repair.inline ? `${path.repair.steps[0]!.verb} (R${number})` : `${path.repair.name} (R${number})`;
  const before = path.from.path.repair === null ? 'after ' : `${pathWords(procedure, path.from.path)}, then `;
  return `${before}${failed} fails and ${repair} is done`;
}

export function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** A station in the middle of a sentence: `the polishing wheel`. */
export function stationWords(procedure: Pick<Procedure, 'shop'>, name: string | null): string {
  const station = procedure.shop.stations.find((other) => other.name === name);
  return station === undefined ? 'its station' : `the ${lower(station.title)}`;
}

/** A gate in the middle of a sentence: `opening`, `the check at 5.3`, `opening across the set`. */
export function gateWords({ gate, number }: GateStep): string {
  switch (gate.kind) {
    case 'check':
    case 'measure':
      return `the ${gate.kind} at ${number}`;
    case 'across':
      return `${gate.test} across the set`;
    case 'set':
      return `the setting of ${gate.test}`;
    case 'test':
      return gate.test;
  }
}
