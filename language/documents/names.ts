import { plural } from '../analysis/prose.ts';
import type { Words } from '../i18n/index.ts';
import type { Family, Part } from '../model/family.ts';
import type { Procedure, StepObject } from '../model/procedure.ts';
import { recordOf, titleOf } from '../model/titles.ts';

/** Title of the thing of this name, or the name as words. */
function titleAmong(things: readonly { readonly name: string; readonly title: string }[], name: string): string {
  return titleOf(things.find((thing) => thing.name === name) ?? { name, title: name });
}

/** What words are looked up in: the procedure's own, and the fixed ones of a language. */
export interface ObjectWords {
  readonly procedure: Procedure;
  readonly words: Words;
}

/** The author's words for an object, as a title. */
export function objectTitle({ procedure: { family }, words }: ObjectWords, object: StepObject): string {
  switch (object.kind) {
    case 'part': {
      if (object.assembly !== undefined) return titleAmong(family.assemblies, object.assembly.name);
      const part = family.parts.find(({ name }) => name === object.name);
      if (part === undefined) return titleAmong([], object.name);
      return partTitle(words, part);
    }
    case 'adjuster':
      return titleAmong(family.adjusters, object.name);
    case 'face':
      return faceTitle(family, words, object.name);
    case 'port':
      return titleAmong(family.ports, object.name);
  }
}

/** `end face of holder`, unless the author has a title for the face. */
function faceTitle(family: Family, words: Words, id: string): string {
  const face = family.faces.find((other) => other.id === id);
  const part = family.parts.find(({ name }) => name === face?.part);
  if (face === undefined) return id;
  return part !== undefined && face.title === `${part.title}, ${face.name} face`
    ? words.names.face({ face: words.face(face.name), part: words.inSentence(titleOf(part)) })
    : face.title;
}

/** Title of a part, with its cylinder or its side. */
function partTitle({ names }: Words, part: Part): string {
  if (part.position === null) return titleOf(part);
  return part.side === null
    ? names.cylinder({ part: baseTitle(part), number: part.position })
    : names.side({ part: baseTitle(part), side: sideWords(part.side) });
}

const sideWords = (side: string) => side.replaceAll('-', ' ');

/** Several alike: `3 cover screws`. The plural of an author's word is known in English alone. */
function countedTitle({ procedure, words }: ObjectWords, title: string, count: number): string {
  if (count === 1) return title;
  const isEnglish = words.language === 'en' && (procedure.language ?? 'en') === 'en';
  return words.names.several({ count, part: isEnglish ? plural(title) : title });
}

/** Title of a part without `, cylinder 3`. */
export function baseTitle(part: Part): string {
  return part.position === null ? titleOf(part) : titleOf({ name: part.base, title: part.baseTitle });
}

/** `on its two dowels`, from the words of `located by "two dowels"`. */
function locatedWords({ language, names, inSentence }: Words, words: string): string {
  // Which word goes before is a matter of the author's language, and is known for English alone.
  if (language !== 'en' || /^(on|by|with|in|at|to|against|from)\b/iu.test(words)) return names.located({ words });
  return /^(a|an|the|its|one)\b/iu.test(words)
    ? names.on({ words: inSentence(words) })
    : names.onIts({ words: inSentence(words) });
}

/**
 * Objects as a bench hand would say them: `setting shim, spring and nozzle (on its two dowels)`. Copies of one part
 * by cylinder are said once: `holder, cylinders 1 to 6`; where it is said before which of them, `holder`.
 */
export function objectWords(
  told: ObjectWords,
  objects: readonly StepObject[],
  options: { readonly fitting?: boolean; readonly oneByOne?: boolean } = {},
): string[] {
  const { words } = told;
  const { family } = told.procedure;
  const said: string[] = [];
  const done = new Set<StepObject>();
  for (const object of objects) {
    if (done.has(object)) continue;
    const isPart = object.kind === 'part' && object.assembly === undefined;
    const part = isPart ? family.parts.find(({ name }) => name === object.name) : undefined;
    const copies =
      part?.position == null
        ? [object]
        : objects.filter(
            (other) =>
              other.kind === 'part' && family.parts.some(({ name, base }) => name === other.name && base === part.base),
          );
    for (const copy of copies) done.add(copy);
    const name =
      copies.length > 1 && part !== undefined && options.oneByOne === true
        ? words.inSentence(baseTitle(part))
        : copies.length > 1 && part !== undefined
          ? copiesTitle(told, part, copies)
          : countedTitle(told, words.inSentence(objectTitle(told, object)), part?.quantity ?? 1);
    const located = object.located ?? (options.fitting === true ? (part?.locatedBy ?? null) : null);
    const marks = object.marksAligned || options.fitting === true ? (part?.marks ?? null) : null;
    const more = [
      located === null ? null : locatedWords(words, located),
      marks === null ? (object.marksAligned ? words.names.aligned : null) : words.names.alignedTo({ marks }),
    ].filter((word) => word !== null);
    said.push(more.length === 0 ? name : `${name} (${more.join('; ')})`);
  }
  return said;
}

/** `holder, cylinders 1 to 6`; `seal ring, left and right`. */
function copiesTitle(told: ObjectWords, part: Part, copies: readonly StepObject[]): string {
  const { words, procedure } = told;
  const title = words.inSentence(baseTitle(part));
  if (part.side === null) {
    const named = countedTitle(told, title, part.quantity);
    return words.names.cylinders({ part: named, numbers: positions(told, copies) });
  }
  const sides = copies.flatMap(({ name }) => procedure.family.parts.find((one) => one.name === name)?.side ?? []);
  return words.names.sides({
    part: countedTitle(told, title, copies.length * part.quantity),
    sides: words.list(sides.map(sideWords)),
  });
}

/** `1 to 6`, or `1, 3 and 4`. */
function positions({ procedure: { family }, words }: ObjectWords, copies: readonly StepObject[]): string {
  const numbers = copies
    .flatMap(({ name }) => family.parts.find((part) => part.name === name)?.position ?? [])
    .sort((a, b) => a - b);
  const run = numbers.every((number, index) => index === 0 || number === numbers[index - 1]! + 1);
  return run && numbers.length > 2
    ? words.names.through({ from: numbers[0]!, to: numbers.at(-1)! })
    : words.list(numbers.map(String));
}

/** Title of a station; its name where the shop does not know it. */
export function stationTitle(procedure: Procedure, name: string): string {
  return titleAmong(procedure.shop.stations, name);
}

/** Title of a fluid. */
export function fluidTitle(procedure: Procedure, name: string): string {
  return titleAmong(procedure.shop.fluids, name);
}

/** What a test, a spec or a master is called: its own words where it has some, else its name as words. */
export function specTitle(procedure: Procedure, name: string): string {
  const { specs, shop } = procedure;
  const record = recordOf(procedure, name);
  return titleAmong([...(record === undefined ? [] : [record]), ...specs, ...shop.masters], name);
}

/** What a repair is called; an inline one reads as what it does. */
export function repairTitle(procedure: Procedure, name: string): string {
  return titleAmong(procedure.repairs, name);
}

/** `R1`. */
export function repairNumber(procedure: Procedure, name: string): string {
  return `R${procedure.repairs.findIndex((repair) => repair.name === name) + 1}`;
}

/** A part number with its title, where it has one. */
export function numberWords({ numbers }: Procedure, number: string): string {
  const title = numbers.find(({ name }) => name === number)?.title ?? number;
  return title === number ? number : `${number} ${title}`;
}
