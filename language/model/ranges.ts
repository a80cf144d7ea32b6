/** Small questions about places in a text. */
import type { Position, Range } from './source.ts';

/** Negative if `a` comes before `b`. */
export function comparePositions(a: Position, b: Position): number {
  return a.line - b.line || a.character - b.character;
}

/** True where the position is in the range or at one of its ends. */
export function contains(range: Range, position: Position): boolean {
  return comparePositions(range.start, position) <= 0 && comparePositions(position, range.end) <= 0;
}

/** True where the ranges share a character or touch. */
export function touches(a: Range, b: Range): boolean {
  return comparePositions(a.start, b.end) <= 0 && comparePositions(b.start, a.end) <= 0;
}
