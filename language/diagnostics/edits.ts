import type { Edit } from '../model/diagnostic.ts';
import type { FailEntry } from '../model/procedure.ts';
import type { Position, Source } from '../model/source.ts';
import { statementsOf } from '../syntax/layout.ts';
import { scan } from '../syntax/scan.ts';
import type { Token } from '../syntax/token.ts';

/** Placeholder in a fix for what only the author knows. It does not parse, so it is reported until it is filled in. */
export const blank = '…';

/** Inserts a step before another: on a line of its own if that one begins its line. */
export function stepBefore({ file, range: { start } }: Source, step: string): Edit {
  return { source: { file, range: { start, end: start } }, text: `${step}\n` };
}

/** Inserts a step after another: on a line of its own if that one ends its line. */
export function stepAfter({ file, range }: Source, step: string): Edit {
  return { source: { file, range: { start: range.end, end: range.end } }, text: `\n${step}` };
}

/** Inserts words after others. */
export function behind({ file, range: { end } }: Source, words: string): Edit {
  return { source: { file, range: { start: end, end } }, text: words };
}

/**
 * An edit that fits into its text: an inserted step takes over indentation and line ending of its neighbor, and a
 * deletion leaves no blanks behind.
 */
export function fitted(text: string, edit: Edit): Edit {
  if (edit.endsStatement === true) {
    const end = statementEnd(text, edit.source.range.start);
    return fitted(text, { source: { ...edit.source, range: { start: end, end } }, text: edit.text });
  }
  const { source, text: put } = edit;
  const { start, end } = source.range;
  const parts = text.split(/(\r\n|\n|\r)/u);
  const lines = parts.filter((_, index) => index % 2 === 0);
  const ending = parts[2 * start.line + 1] ?? parts[1] ?? '\n';
  const before = (lines[start.line] ?? '').slice(0, start.character);
  const after = (lines[end.line] ?? '').slice(end.character);
  if (put.endsWith('\n'))
    return { source, text: before.trim() === '' ? `${put.slice(0, -1)}${ending}${before}` : `${put.slice(0, -1)}   ` };
  if (put.startsWith('\n')) {
    const line = lines[end.line] ?? '';
    // What a blank is left in is not read, and still belongs to the step before: nothing is put between them.
    const isLast = /^\s*(?:\/\/.*)?$/u.test(after) || after.replace(/"[^"]*"/gu, '').includes(blank);
    const place = { line: end.line, character: isLast ? line.trimEnd().length : end.character };
    const indentation = /^\s*/u.exec(line)![0];
    const text = isLast ? `${ending}${indentation}${put.slice(1)}` : `   ${put.slice(1)}`;
    return { source: { ...source, range: { start: place, end: place } }, text };
  }
  if (put !== '') return edit;
  const at = (line: number, character: number) => ({ line, character });
  const widened = (range: Source['range']): Edit => ({ source: { ...source, range }, text: '' });
  if (before.trim() === '' && after.trim() === '' && end.line + 1 < lines.length)
    return widened({ start: at(start.line, 0), end: at(end.line + 1, 0) });
  if (before.trim() === '')
    return widened({ start, end: at(end.line, end.character + after.length - after.trimStart().length) });
  return widened({ start: at(start.line, before.trimEnd().length), end });
}

/** Where a statement ends that a position is in: before its brace, and before another one on its line. */
function statementEnd(text: string, position: Position): Position {
  const { statements } = statementsOf(scan(text).lines);
  const holds = ({ line, column, endColumn }: Token) =>
    line.number === position.line && column <= position.character && position.character <= endColumn;
  for (const { tokens } of statements) {
    const real = tokens.filter(({ isMade }) => !isMade);
    const at = real.findIndex(holds);
    if (at < 0) continue;
    const next = real.findIndex(
      ({ name }, index) => index > at && (name === '{' || name === '}' || name === real[0]!.name),
    );
    const last = real[(next < 0 ? real.length : next) - 1]!;
    return { line: last.endLine.number, character: last.endColumn };
  }
  return position;
}

/** Asks how often a repair may be tried, whatever is written now. Null if its text cannot be put back together. */
export function counted({ repair, as, tries, furthestOut, source }: FailEntry): Edit | null {
  const count = ` (${blank} times)`;
  if (tries === null && !furthestOut) return behind(source, count);
  // An inline repair (`renew needle in oil`) may say more than its name.
  return as !== 'repair' ? null : { source, text: `${repair}${count}${furthestOut ? ' of the furthest out' : ''}` };
}
