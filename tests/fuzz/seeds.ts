import type { SourceFile } from '../../language/db/workspace.ts';
import { corpusFiles } from '../corpus/files.ts';
import { libraryFiles } from '../library.ts';
import type { Random } from './random.ts';

const library = libraryFiles(true);
const corpus = corpusFiles();
const of = (...parts: string[]) =>
  library.filter(({ uri }) => parts.some((part) => uri.includes(`procedures/${part}`)));
const shop = corpus.filter(({ uri }) => uri === 'shop.rebuild');

/** Workspaces that check alone: small ones, procedures of the library with jobs, and the corpus. */
const small: readonly (readonly SourceFile[])[] = [of('first'), of('first'), of('manual'), of('flawed', 'shop')];
const large: readonly (readonly SourceFile[])[] = [
  of('one-spring', 'shared', 'shop', 'jobs'),
  of('one-spring', 'like', 'shared', 'shop'),
  of('pintle', 'shared', 'shop'),
  of('two-spring', 'shared', 'shop'),
];
const unusual = corpus.filter(({ uri }) => uri !== 'shop.rebuild').map((file) => [...shop, file]);

export const everyText = [...library, ...corpus].map(({ text }) => text);

/** One of them, the likelier the quicker it is checked. */
export function someWorkspace(random: Random): readonly SourceFile[] {
  const among = random.chance(0.55) ? small : random.chance(0.3) ? large : unusual;
  return random.pick<readonly SourceFile[]>(among);
}

/** A workspace with one of its files, the likelier the longer, in other words. */
export function changed(
  files: readonly SourceFile[],
  random: Random,
  change: (text: string) => string,
): readonly SourceFile[] {
  let at = random.below(files.reduce((sum, { text }) => sum + text.length, 0));
  return files.map((file) => {
    const mine = at >= 0 && at < file.text.length;
    at -= file.text.length;
    return mine ? { ...file, text: change(file.text) } : file;
  });
}

/** The places of the words of a text: names, numbers with units, strings, signs, with blanks between them. */
export function wordsOf(text: string): { readonly from: number; readonly to: number }[] {
  return [...text.matchAll(/"[^"\n]*"?|\/\/[^\n]*|[\p{L}\d_.-]+|\n|[^\s\p{L}\d]/gu)].map((match) => ({
    from: match.index,
    to: match.index + match[0].length,
  }));
}
