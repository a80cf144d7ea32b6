import type { Position } from '../model/source.ts';

/** Offset of a position in a text. Beyond the end of its line, or of the text, it is that end. */
export function offsetAt(text: string, { line, character }: Position): number {
  const lineEnd = /\r\n|\n|\r/gu;
  let start = 0;
  for (let at = 0; at < line; at++) {
    if (lineEnd.exec(text) === null) return text.length;
    start = lineEnd.lastIndex;
  }
  return Math.min(start + character, lineEnd.exec(text)?.index ?? text.length);
}

/** Position of an offset in a text. */
export function positionAt(text: string, offset: number): Position {
  const lineEnd = /\r\n|\n|\r/gu;
  let [line, start] = [0, 0];
  for (let match = lineEnd.exec(text); match !== null && lineEnd.lastIndex <= offset; match = lineEnd.exec(text)) {
    line++;
    start = lineEnd.lastIndex;
  }
  return { line, character: offset - start };
}
