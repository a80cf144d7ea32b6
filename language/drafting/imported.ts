/** Results from outside, written as lines of a unit. */
import type { Range } from '../model/source.ts';

/** A result as its line says it: names, figures and words as they are written there. */
export interface ImportedResult {
  readonly asFound: boolean;
  readonly test: string;
  readonly point: string | null;
  readonly place: string | null;
  /** `254`, `pass`, or words for a `record`. */
  readonly value: string;
  readonly unit: string | null;
  readonly tool: string | null;
  readonly by: string | null;
  /** ISO date. */
  readonly on: string | null;
}

/** `opening 254 bar on PG-400 by "R. A." on 2026-11-05`. */
export function resultLine({ asFound, test, point, place, value, unit, tool, by, on }: ImportedResult): string {
  const isVerdict = value === 'pass' || value === 'fail';
  const said = unit !== null ? `${value} ${unit}` : isVerdict ? value : `"${value}"`;
  return [
    ...(asFound ? ['as found'] : []),
    test,
    ...(point === null ? [] : [point]),
    said,
    ...(place === null ? [] : [`at ${place}`]),
    ...(tool === null ? [] : [`on ${tool}`]),
    ...(by === null ? [] : [`by "${by}"`]),
    ...(on === null ? [] : [`on ${on}`]),
  ].join(' ');
}

/** The lines that are not there yet: what was taken in once is not taken in a second time. */
export function missingLines(unit: string, lines: readonly string[]): string[] {
  const there = unit.split('\n').map(withoutBlanks);
  return lines.filter((line) => {
    const at = there.indexOf(withoutBlanks(line));
    if (at >= 0) there.splice(at, 1);
    return at < 0;
  });
}

/** Without the blanks that nobody sees. */
function withoutBlanks(line: string): string {
  return line.trim().replaceAll(/\s+/gu, ' ');
}

/** A text with lines at the end of a unit. @param range of the unit, from its word to its end */
export function withLines(text: string, { start, end }: Range, lines: readonly string[]): string {
  const offset = ({ line, character }: Range['start']) =>
    text
      .split('\n')
      .slice(0, line)
      .reduce((sum, one) => sum + one.length + 1, 0) + character;
  const [from, to] = [offset(start), offset(end)];
  const unit = text.slice(from, to);
  const margin = /[ \t]*$/u.exec(text.slice(0, from))?.[0] ?? '';
  const added = lines.map((line) => `${margin}  ${line}\n`).join('');
  const closed = /\s*\}$/u.exec(unit);
  const before = closed === null ? `${unit.trimEnd()} {` : unit.slice(0, closed.index);
  const line = text.includes('\r\n') ? '\r\n' : '\n';
  const written = `${before}\n${added}${margin}}`.replaceAll(/\r?\n/gu, line);
  return text.slice(0, from) + written + text.slice(to);
}
