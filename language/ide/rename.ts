/** Renaming: every place of a name at once, or in words why that cannot be. */
import { edited } from '../db/fixes.ts';
import { isIssuedFile } from '../db/issued/format.ts';
import { Workspace } from '../db/workspace.ts';
import type { Edit } from '../model/diagnostic.ts';
import { comparePositions } from '../model/ranges.ts';
import type { Position, Range, Source } from '../model/source.ts';
import { type Said, say, term } from '../say/say.ts';
import { callable, reserved } from '../syntax/keywords.ts';
import { scan } from '../syntax/scan.ts';
import { bare, type Name, nameAt, type Occurrence } from './occurrences.ts';
import type { Snapshot } from './snapshot.ts';
import { scannedFile, tokensAt } from './words.ts';

/** A sentence that says why a name cannot be changed, or not to this one. */
interface Refused {
  readonly kind: 'refused';
  readonly reason: Said;
}

export type RenameSubject = Refused | { readonly kind: 'name'; readonly range: Range; readonly name: string };
export type Renamed = Refused | { readonly kind: 'changes'; readonly edits: readonly Edit[] };

const refused = (reason: Said): Refused => ({ kind: 'refused', reason });

/** Whether there is a name at a place that can be changed, and where it is. */
export function renameSubjectAt(snapshot: Snapshot, file: string, position: Position): RenameSubject {
  const found = nameAt(snapshot, file, position, 'workspace');
  if (found !== null) return { kind: 'name', range: found.here.source.range, name: found.name };
  const [token] = tokensAt(scannedFile(snapshot, file), position);
  if (token === undefined || !/^[\p{L}"]/u.test(token.image))
    return refused(say`There is no name here. Put the cursor on a name that you gave: of a part, a spec, a stage.`);
  if (token.name === 'STRING') return refused(say`Words in quotes are printed as they are: change them in the text.`);
  return refused(
    token.name === token.image
      ? say`“${token.image}” is a word of the language here, not a name that you gave.`
      : say`“${token.image}” is not declared anywhere. Declare it, or correct it, before you rename it.`,
  );
}

/** The edits that give the name at a place another one, everywhere. */
export function renameAt(snapshot: Snapshot, file: string, position: Position, name: string): Renamed {
  const found = nameAt(snapshot, file, position, 'workspace');
  if (found === null) {
    const why = renameSubjectAt(snapshot, file, position);
    return why.kind === 'refused' ? why : refused(say`There is no name here.`);
  }
  const wanted = bare(name.trim());
  if (wanted === found.name) return { kind: 'changes', edits: [] };
  const written = writtenAs(wanted, found.kinds);
  if (typeof written !== 'string') return written;
  const edits = found.occurrences.map(
    (one): Edit => ({
      source: { file: one.source.file, range: one.source.range },
      text: withPosition(written, one, found.name),
    }),
  );
  const issued = edits.find(({ source }) => isIssuedFile(source.file));
  if (issued !== undefined)
    return refused(
      say`${found.name} is a name of an issued revision, which never changes: ${shown(issued.source)}. Rename it in the procedure, under its next revision.`,
    );
  return conflict(snapshot, found, edits, wanted) ?? { kind: 'changes', edits };
}

/** Part numbers and jobs are labels: any words, in quotes where they are no name and no number. */
const labels: readonly string[] = ['number', 'job'];

/** How a name is written; refused where it cannot be one. */
function writtenAs(name: string, kinds: readonly string[]): string | Refused {
  if (name === '' || /["\n\r]/u.test(name))
    return refused(say`A name cannot be empty, nor have a quote or a line end in it.`);
  const [line] = scan(name).lines;
  const [token, second] = line!.tokens;
  const isWord = second === undefined && !line!.isFlawed && token?.image === name && /^\p{L}/u.test(name);
  if (kinds.some((kind) => labels.includes(kind))) {
    const isLabel = second === undefined && token?.image === name && token.name === 'NUMBER';
    return isLabel || (isWord && !reserved.includes(name)) ? name : `"${name}"`;
  }
  if (!isWord)
    return refused(
      say`“${name}” cannot be a name. A name begins with a letter and goes on with letters, digits, _ and single hyphens.`,
    );
  if (reserved.includes(name)) return refused(say`“${name}” joins the words of a step, and cannot be a name.`);
  if (kinds.includes('sequence') && token!.name === name && !callable.includes(name))
    return refused(say`“${name}” is a word of the language: a sequence of this name could not be called.`);
  return name;
}

/** A copy of a part keeps its position: `plunger-3`. */
function withPosition(name: string, { written }: Occurrence, before: string): string {
  return bare(written) === before ? name : `${name}${bare(written).slice(before.length)}`;
}

/**
 * What would be wrong after the edits: the texts are read with them, and then the name must be in the same places as
 * before and in no others, and nothing be unknown or declared twice that was not.
 */
function conflict(snapshot: Snapshot, found: Name, edits: readonly Edit[], name: string): Refused | null {
  const { result } = snapshot;
  const texts = new Map([...result.symbols.keys()].map((uri) => [uri, snapshot.textOf(uri) ?? '']));
  const places = new Map<Edit, Source>();
  for (const uri of new Set(edits.map(({ source }) => source.file))) {
    const own = edits.filter(({ source }) => source.file === uri);
    for (const [edit, source] of placesAfter(own)) places.set(edit, source);
    texts.set(uri, edited(texts.get(uri) ?? '', own));
  }
  const after: Snapshot = {
    result: new Workspace().open([...texts].map(([uri, text]) => ({ uri, text }))),
    findingsIn: () => [],
    textOf: (uri) => texts.get(uri) ?? null,
  };
  const { problems } = after.result.resolved;
  const twice = problems.find((problem) => problem.kind === 'duplicate-name' && problem.name === name);
  if (twice?.kind === 'duplicate-name')
    return refused(
      say`There is already a ${term(twice.what)} ${name}: ${shown(twice.first)}. Two of one name cannot be distinguished.`,
    );
  const here = places.get(edits[found.occurrences.indexOf(found.here)]!)!;
  const now = nameAt(after, here.file, here.range.start, 'workspace');
  const expected = new Set([...places.values()].map(keyOf));
  const strange = now?.occurrences.find(({ source }) => !expected.has(keyOf(source)));
  if (strange !== undefined)
    return refused(say`“${name}” already means something else there: ${shown(strange.source)}. Choose another name.`);
  if (now?.occurrences.length !== edits.length || problems.length > result.resolved.problems.length)
    return refused(say`“${name}” would be read as something else where it is used. Choose another name.`);
  return null;
}

/** Where edits of one file are once they are all made. */
function placesAfter(edits: readonly Edit[]): Map<Edit, Source> {
  const places = new Map<Edit, Source>();
  let line = -1;
  let shift = 0;
  for (const edit of [...edits].sort((one, other) =>
    comparePositions(one.source.range.start, other.source.range.start),
  )) {
    const { start, end } = edit.source.range;
    if (start.line !== line) [line, shift] = [start.line, 0];
    const character = start.character + shift;
    const range = { start: { line, character }, end: { line, character: character + edit.text.length } };
    places.set(edit, { file: edit.source.file, range });
    shift += edit.text.length - (end.character - start.character);
  }
  return places;
}

function keyOf({ file, range: { start } }: Source): string {
  return `${file}:${start.line}:${start.character}`;
}

/** A place in words. */
function shown({ file, range }: Source): Said {
  return say`line ${range.start.line + 1} of ${decodeURIComponent(file.slice(file.lastIndexOf('/') + 1))}`;
}
