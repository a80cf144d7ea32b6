import { type SourceFile, Workspace } from '../../language/db/workspace.ts';
import { everythingOf } from './everything.ts';

/** One way in which a file may be broken. */
export interface Damage {
  /** What was done, and where: line and column, from one. */
  readonly what: string;
  readonly text: string;
}

/** A word, a number, words in quotes, a sign: what a hand deletes at once. */
const token = /"[^"\n]*"?|\/\/[^\n]*|[\p{L}\d_.-]+|[^\s\p{L}\d]/gu;

/** A file without each of its tokens, and cut off behind each of them. */
export function damagesOf(text: string): Damage[] {
  return [...text.matchAll(token)].flatMap(({ 0: word, index }) => {
    if (word.startsWith('//')) return [];
    const before = text.slice(0, index).split('\n');
    const at = `${before.length}:${before.at(-1)!.length + 1} ${word}`;
    return [
      { what: `without ${at}`, text: text.slice(0, index) + text.slice(index + word.length) },
      { what: `cut off behind ${at}`, text: text.slice(0, index + word.length) },
    ];
  });
}

/** The file, and those of all that declare a name which is used in them: what it takes to check and print it. */
function withItsOwn(file: SourceFile, all: readonly SourceFile[]): SourceFile[] {
  const needed = new Set([file]);
  for (const one of needed) {
    const words = new Set(one.text.match(/[\p{L}\d_-]+/gu));
    for (const other of all) {
      const names = [...other.text.matchAll(/^(?:shop|family|procedure|sequence) +(\S+)/gmu)].map(([, name]) => name!);
      if (names.some((name) => words.has(name))) needed.add(other);
      // A job shows more of the procedure that it is of.
      const [, of] = /^job .* of (\S+)/mu.exec(other.text) ?? [];
      if (one === file && of !== undefined && file.text.includes(`procedure ${of} `)) needed.add(other);
    }
  }
  return all.filter((one) => needed.has(one));
}

/** What is thrown where a file is broken in these ways: what was done, and what was thrown. */
export function thrown(file: SourceFile, all: readonly SourceFile[], damages: readonly Damage[]): string[] {
  const own = withItsOwn(file, all);
  const checker = new Workspace();
  return damages.flatMap(({ what, text }) => {
    try {
      everythingOf(
        own.map((one) => (one === file ? { ...one, text } : one)),
        checker,
      );
      return [];
    } catch (error) {
      return [`${file.uri} ${what}: ${error instanceof Error ? error.stack : error}`];
    }
  });
}
