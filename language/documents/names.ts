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
    case 'port': {
      const title = titleAmong(family.ports, object.name);
      const position = partOf(family, object)?.position ?? null;
      const side = partOf(family, object)?.side ?? null;
      if (position === null) return title;
      return side === null
        ? words.names.cylinder({ part: title, number: position })
        : words.names.side({ part: title, side: sideWords(side) });
    }
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
 * Objects as a bench hand would say them: `setting shim, spring and nozzle (on its two dowels)`. Copies by cylinder are
 * said once: `6 holders` where it is all of them, else `holder, cylinders 1 and 4`; where it is said before which of
 * them, `holder`. So are their faces, ports and screws.
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
    const part = object.kind === 'part' && object.assembly === undefined ? partOf(family, object) : undefined;
    const kind = copyKind(family, object);
    const copies = kind === null ? [object] : objects.filter((other) => copyKind(family, other) === kind);
    for (const copy of copies) done.add(copy);
    const name =
      copies.length > 1
        ? copiesTitle(told, copies, options.oneByOne === true)
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

/** The part that an object is, or is of. */
function partOf({ parts, faces, ports }: Family, { kind, name }: StepObject): Part | undefined {
  const of =
    kind === 'face'
      ? faces.find(({ id }) => id === name)?.part
      : kind === 'port'
        ? ports.find((port) => port.name === name)?.part
        : name;
  return parts.find((part) => part.name === of);
}

/** What the copies of an object have in common, by cylinder or side; null: there is only one. */
export function copyKind(family: Family, object: StepObject): string | null {
  const part = object.assembly === undefined ? partOf(family, object) : undefined;
  if (part?.position == null) return null;
  const own =
    object.kind === 'face'
      ? family.faces.find(({ id }) => id === object.name)?.name
      : object.kind === 'port'
        ? family.ports.find(({ name }) => name === object.name)?.base
        : '';
  return `${object.kind} ${part.base} ${own}`;
}

/** `6 holders`; `holder, cylinders 1 and 4`; `2 seal rings, left and right`; `top face of 6 barrels`. */
function copiesTitle(told: ObjectWords, copies: readonly StepObject[], oneByOne: boolean): string {
  const { words, procedure } = told;
  const { family } = procedure;
  const [first] = copies;
  const part = partOf(family, first!)!;
  const named = (title: string) => {
    const counted = (count: number) => (oneByOne ? title : countedTitle(told, title, count));
    const isAll = copies.length === family.parts.filter(({ base }) => base === part.base).length;
    const each = first!.kind === 'part' ? part.quantity : 1;
    if (oneByOne || (isAll && part.side === null)) return counted(copies.length * each);
    if (part.side === null) return words.names.cylinders({ part: counted(each), numbers: positions(told, copies) });
    const sides = copies.flatMap((copy) => partOf(family, copy)?.side ?? []);
    return words.names.sides({ part: counted(copies.length * each), sides: words.list(sides.map(sideWords)) });
  };
  const base = words.inSentence(baseTitle(part));
  if (first!.kind === 'port') return named(words.inSentence(titleAmong(family.ports, first!.name)));
  if (first!.kind !== 'face') return named(base);
  const face = family.faces.find(({ id }) => id === first!.name)!;
  return face.title === `${part.title}, ${face.name} face`
    ? words.names.face({ face: words.face(face.name), part: named(base) })
    : named(words.inSentence(face.title));
}

/** `1 to 6`, or `1, 3 and 4`. */
function positions({ procedure: { family }, words }: ObjectWords, copies: readonly StepObject[]): string {
  const numbers = copies.flatMap((copy) => partOf(family, copy)?.position ?? []).sort((a, b) => a - b);
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
