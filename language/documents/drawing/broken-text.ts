import { widthOf } from './text-width.ts';

/** Lines of at most a width, and whether the text had to be cut. */
export interface BrokenText {
  readonly lines: readonly string[];
  readonly cut: boolean;
}

const ellipsis = '…';

/**
 * Breaks a text at its blanks into lines of at most `width` millimeters; a word that is longer is broken anywhere. What
 * does not go into `most` lines ends with an ellipsis. Always one line at least.
 */
export function brokenText(text: string, isBold: boolean, width: number, most: number): BrokenText {
  const lines: string[] = [];
  let rest = text.trim();
  while (rest !== '') {
    if (lines.length + 1 === most) {
      if (widthOf(rest, isBold) <= width) lines.push(rest);
      else return { lines: [...lines, shortened(rest, isBold, width)], cut: true };
      break;
    }
    const taken = lineFrom(rest, isBold, width);
    lines.push(taken.trim());
    rest = rest.slice(taken.length).trim();
  }
  return { lines: lines.length === 0 ? [''] : lines, cut: false };
}

/** As many words as go into a line; where the first alone is too wide its parts, then its letters. */
function lineFrom(text: string, isBold: boolean, width: number): string {
  const taken = (pieces: readonly string[]): string => {
    let line = '';
    for (const piece of pieces) {
      if (widthOf((line + piece).trimEnd(), isBold) > width) break;
      line += piece;
    }
    return line;
  };
  const words = taken(text.split(/(?<= )/u));
  if (words !== '') return words;
  // A figure stays with its unit only where a line holds both.
  const kept = taken(text.split(/(?<=[ \u00a0])/u));
  if (kept !== '') return kept;
  const parts = taken(text.split(/(?<=[-/])(?=\p{L})/u));
  if (parts !== '') return parts;
  return taken([...text]) || ([...text][0] ?? '');
}

function shortened(text: string, isBold: boolean, width: number): string {
  let line = '';
  for (const letter of text) {
    if (widthOf(line + letter + ellipsis, isBold) > width) break;
    line += letter;
  }
  return `${line.trimEnd()}${ellipsis}`;
}
