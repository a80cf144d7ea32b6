import type { Range } from '../model/source.ts';

/**
 * A range as it lies inside its text: a place behind a line's end, or behind the last line, is brought back to it. Where
 * nothing would be left, the last character of the line is marked: an editor shows no mark behind a line.
 */
export function inside(lines: readonly string[], { start, end }: Range): Range {
  const place = ({ line, character }: Range['start']) => {
    const last = Math.min(line, lines.length - 1);
    const length = lines[last]!.length;
    return { line: last, character: last < line ? length : Math.min(character, length) };
  };
  const [from, to] = [place(start), place(end)];
  const isEmpty = from.line === to.line && from.character === to.character;
  return isEmpty && from.character > 0
    ? { start: { ...from, character: from.character - 1 }, end: to }
    : { start: from, end: to };
}

/** Lines as the Language Server Protocol counts them. */
export function linesOf(text: string): string[] {
  return text.split(/\r\n|\n|\r/u);
}
