/** The words of a file at their places. */
import type { Position, Range } from '../model/source.ts';
import { type Scanned, scan } from '../syntax/scan.ts';
import type { Token } from '../syntax/token.ts';
import type { Snapshot } from './snapshot.ts';

const scanned = new WeakMap<Snapshot['result'], Map<string, Scanned>>();

/** The lines of a file with their tokens, scanned once for each check. */
export function scannedFile({ result, textOf }: Snapshot, file: string): Scanned {
  const files = scanned.get(result) ?? new Map<string, Scanned>();
  scanned.set(result, files);
  const known = files.get(file) ?? scan(textOf(file) ?? '');
  files.set(file, known);
  return known;
}

/** A token as it lies in its file. */
export function rangeOfToken({ line, column, endLine, endColumn }: Token): Range {
  return {
    start: { line: line.number, character: column },
    end: { line: endLine.number, character: endColumn },
  };
}

/** Tokens that lie in a range, in order. */
export function tokensIn({ lines }: Scanned, { start, end }: Range): Token[] {
  return lines
    .slice(start.line, end.line + 1)
    .flatMap(({ tokens, number }) =>
      tokens.filter(
        ({ column, endColumn }) =>
          (number > start.line || column >= start.character) && (number < end.line || endColumn <= end.character),
      ),
    );
}

/** The tokens that a position touches: two where one ends and another begins. */
export function tokensAt({ lines }: Scanned, { line, character }: Position): Token[] {
  return (lines[line]?.tokens ?? []).filter(({ column, endColumn }) => column <= character && character <= endColumn);
}
