import type { Edit } from '../model/diagnostic.ts';
import type { FailEntry } from '../model/procedure.ts';
import type { Source } from '../model/source.ts';

/** Stands in a fix for what only the author knows. It cannot be read, so that it is reported until it is written. */
export const blank = '…';

/** Writes a step before another: on a line of its own, where that one begins its line. */
export function stepBefore({ file, range: { start } }: Source, step: string): Edit {
  return { source: { file, range: { start, end: start } }, text: `${step}\n` };
}

/** Writes words behind others. */
export function behind({ file, range: { end } }: Source, words: string): Edit {
  return { source: { file, range: { start: end, end } }, text: words };
}

/**
 * An edit as it fits into its text: a step that is put in takes over indentation and line end of its neighbour, and what
 * is taken out leaves no blanks behind.
 */
export function fitted(text: string, edit: Edit): Edit {
  const { source, text: put } = edit;
  const { start, end } = source.range;
  const parts = text.split(/(\r\n|\n|\r)/u);
  const lines = parts.filter((_, index) => index % 2 === 0);
  const ending = parts[2 * start.line + 1] ?? parts[1] ?? '\n';
  const before = (lines[start.line] ?? '').slice(0, start.character);
  const after = (lines[end.line] ?? '').slice(end.character);
  if (put.endsWith('\n'))
    return { source, text: before.trim() === '' ? `${put.slice(0, -1)}${ending}${before}` : `${put.slice(0, -1)}   ` };
  if (put !== '') return edit;
  const at = (line: number, character: number) => ({ line, character });
  const widened = (range: Source['range']): Edit => ({ source: { ...source, range }, text: '' });
  if (before.trim() === '' && after.trim() === '' && end.line + 1 < lines.length)
    return widened({ start: at(start.line, 0), end: at(end.line + 1, 0) });
  if (before.trim() === '')
    return widened({ start, end: at(end.line, end.character + after.length - after.trimStart().length) });
  return widened({ start: at(start.line, before.trimEnd().length), end });
}

/** Asks how often a repair may be tried, whatever is said of it now. Null: its words cannot be put back together. */
export function counted({ repair, as, tries, furthestOut, source }: FailEntry): Edit | null {
  const count = ` (${blank} times)`;
  if (tries === null && !furthestOut) return behind(source, count);
  // What is done at once (`renew needle in oil`) may say more than its name.
  return as !== 'repair' ? null : { source, text: `${repair}${count}${furthestOut ? ' of the furthest out' : ''}` };
}
