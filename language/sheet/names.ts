import type { Family, Part } from '../model/family.ts';
import type { Procedure, StepObject } from '../model/procedure.ts';

/** The author's words for an object, as a title. */
export function objectTitle(family: Family, object: StepObject): string {
  switch (object.kind) {
    case 'part':
      return family.parts.find(({ name }) => name === object.name)?.title ?? object.name;
    case 'adjuster':
      return family.adjusters.find(({ name }) => name === object.name)?.title ?? object.name;
    case 'face':
      return family.faces.find(({ id }) => id === object.name)?.title ?? object.name;
    case 'port':
      return family.ports.find(({ name }) => name === object.name)?.title ?? object.name;
  }
}

/** A title inside a sentence: `Setting shim` → `setting shim`; `O-ring`, `M8 stud` and `TDC mark` stay. */
export function inSentence(title: string): string {
  const [first = '', second = ''] = [...title];
  return first !== first.toLowerCase() && second !== '' && second === second.toLowerCase() && /\p{L}|\s/u.test(second)
    ? first.toLowerCase() + title.slice(first.length)
    : title;
}

/** The first letter as a sentence begins. */
export function capital(text: string): string {
  const [first = ''] = [...text];
  return first.toUpperCase() + text.slice(first.length);
}

/** `a, b and c`. */
export function list(words: readonly string[], last = 'and'): string {
  if (words.length < 2) return words.join('');
  return `${words.slice(0, -1).join(', ')} ${last} ${words.at(-1)}`;
}

/** Title of a part without `, cylinder 3`. */
export function baseTitle(part: Part): string {
  return part.position === null ? part.title : part.title.replace(/, cylinder \d+$/u, '');
}

/** `(on its two dowels)`, from the words of `located by "two dowels"`. */
function locatedWords(words: string): string {
  if (/^(on|by|with|in|at|to|against|from)\b/iu.test(words)) return `located ${words}`;
  return /^(a|an|the|its|one)\b/iu.test(words) ? `on ${inSentence(words)}` : `on its ${inSentence(words)}`;
}

/**
 * Objects as a bench hand would say them: `setting shim, spring and nozzle (on its two dowels)`. Copies of one part
 * by cylinder are said once: `holder, cylinders 1 to 6`.
 */
export function objectWords(procedure: Procedure, objects: readonly StepObject[], options: { readonly fitting?: boolean } = {}): string[] {
  const { family } = procedure;
  const said: string[] = [];
  const done = new Set<StepObject>();
  for (const object of objects) {
    if (done.has(object)) continue;
    const part = object.kind === 'part' ? family.parts.find(({ name }) => name === object.name) : undefined;
    const copies = part?.position == null ? [object] : objects.filter((other) => other.kind === 'part' && family.parts.some(({ name, base }) => name === other.name && base === part.base));
    for (const copy of copies) done.add(copy);
    const name = copies.length > 1 && part !== undefined ? `${inSentence(baseTitle(part))}, cylinders ${positions(family, copies)}` : inSentence(objectTitle(family, object));
    const located = object.located ?? (options.fitting === true ? (part?.locatedBy ?? null) : null);
    const marks = object.marksAligned || options.fitting === true ? (part?.marks ?? null) : null;
    const more = [located === null ? null : locatedWords(located), marks === null ? (object.marksAligned ? 'marks aligned' : null) : `marks aligned: ${marks}`].filter((word) => word !== null);
    said.push(more.length === 0 ? name : `${name} (${more.join('; ')})`);
  }
  return said;
}

/** `1 to 6`, or `1, 3 and 4`. */
function positions(family: Family, copies: readonly StepObject[]): string {
  const numbers = copies.flatMap(({ name }) => family.parts.find((part) => part.name === name)?.position ?? []).sort((a, b) => a - b);
  const run = numbers.every((number, index) => index === 0 || number === numbers[index - 1]! + 1);
  return run && numbers.length > 2 ? `${numbers[0]} to ${numbers.at(-1)}` : list(numbers.map(String));
}

/** Title of a station; its name where the shop does not know it. */
export function stationTitle(procedure: Procedure, name: string): string {
  return procedure.shop.stations.find((station) => station.name === name)?.title ?? name;
}

/** Title of a fluid. */
export function fluidTitle(procedure: Procedure, name: string): string {
  return procedure.shop.fluids.find((fluid) => fluid.name === name)?.title ?? name;
}

/** What a test or spec is called: the spec's own words where it has some, else its name as words. */
export function specTitle(procedure: Procedure, name: string): string {
  const spec = procedure.specs.find((other) => other.name === name);
  return spec !== undefined && spec.title !== spec.name ? spec.title : name.replaceAll('-', ' ').replaceAll('_', ' ');
}

/** What a repair is called; an inline one reads as what it does. */
export function repairTitle(procedure: Procedure, name: string): string {
  const repair = procedure.repairs.find((other) => other.name === name);
  return repair !== undefined && repair.title !== repair.name ? repair.title : name.replaceAll('-', ' ');
}

/** `R1`. */
export function repairNumber(procedure: Procedure, name: string): string {
  return `R${procedure.repairs.findIndex((repair) => repair.name === name) + 1}`;
}
