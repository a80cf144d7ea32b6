import type { SourceFile } from '../../language/db/workspace.ts';
import type { FuzzCase } from './case.ts';
import { wordsOf } from './seeds.ts';

/** The smallest case found that still shows it: fewer states, files, lines, words, then signs (Zeller’s ddmin). */
export async function minimized(
  one: FuzzCase,
  shows: (smaller: FuzzCase) => Promise<boolean>,
  most = 400,
): Promise<FuzzCase> {
  let left = most;
  const still = async (smaller: FuzzCase) => left-- > 0 && (await shows(smaller));
  let best = one;
  if (best.versions.length > 1) {
    const versions = await ddmin(best.versions, (fewer) => still({ ...best, versions: fewer }));
    best = { ...best, versions };
  }
  if (best.versions.length > 1) return best;
  const withFiles = (files: readonly SourceFile[]): FuzzCase => ({ ...best, versions: [files] });
  let files = await ddmin(best.versions[0]!, (fewer) => still(withFiles(fewer)));
  const cuts: ((text: string) => string[])[] = [
    (text) => text.split(/(?<=\n)/u),
    (text) => {
      const words = wordsOf(text);
      return words.map(({ from }, index) => text.slice(index === 0 ? 0 : from, words[index + 1]?.from ?? text.length));
    },
    (text) => (text.length > 400 ? [text] : [...text]),
  ];
  for (const cut of cuts)
    for (const [index, file] of files.entries()) {
      const change = (pieces: readonly string[]) =>
        files.map((other, at) => (at === index ? { ...file, text: pieces.join('') } : other));
      const pieces = await ddmin(cut(files[index]!.text), (fewer) => still(withFiles(change(fewer))));
      files = change(pieces);
    }
  return withFiles(files);
}

/** Parts of a list without which it no longer shows. Never empty. */
async function ddmin<T>(all: readonly T[], shows: (fewer: readonly T[]) => Promise<boolean>): Promise<readonly T[]> {
  let list = all;
  let size = Math.ceil(list.length / 2);
  while (list.length > 1 && size >= 1) {
    let smaller: readonly T[] | null = null;
    for (let from = 0; from < list.length && smaller === null; from += size) {
      const rest = [...list.slice(0, from), ...list.slice(from + size)];
      if (rest.length > 0 && (await shows(rest))) smaller = rest;
    }
    if (smaller !== null) list = smaller;
    else if (size === 1) break;
    if (smaller === null || size > list.length / 2) size = Math.max(1, Math.ceil(Math.min(size, list.length) / 2));
  }
  return list;
}
