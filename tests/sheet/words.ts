/** Words taken from a print, and how two texts are compared when lines are broken differently. */
import { printable } from '../../language/i18n/printable.ts';

/** A unit of text: a paragraph, a number, a cell. */
export interface Piece {
  readonly text: string;
  /** It is of a heading, by its tag and not by its words: the route says the number and title of a stage before its head. */
  readonly heading: boolean;
}

/** What was read from a print, in its order. */
export interface Words {
  /** Pieces of the sheet itself. */
  readonly body: readonly Piece[];
  /** What is written in drawings: one entry each. It is none of the lines of the sheet and may be anywhere. */
  readonly drawings: readonly string[];
  /** Heads, feet and watermark, which pages repeat: of a PDF one entry a page. */
  readonly furniture: readonly string[];
}

/** A text with no blanks and breaks in it, and with ligatures taken apart. */
export function bones(text: string): string {
  return printable(text)
    .normalize('NFKC')
    .replace(/[\s\u00a0\u200b\u00ad]+/gu, '');
}

const known = new Map<string, string>();

/** Skeletons, lower case: a title inside a sentence begins in lower case. Cached, since the same texts come up often. */
export function lowBones(text: string): string {
  const found = known.get(text) ?? bones(text).toLowerCase();
  if (known.size > 20_000) known.clear();
  known.set(text, found);
  return found;
}

/** The first of these texts that does not come after the one before it; null if all do. */
export function firstLost(texts: readonly string[], whole: string): string | null {
  let at = 0;
  for (const text of texts) {
    const wanted = bones(text);
    const found = whole.indexOf(wanted, at);
    if (found < 0) return text;
    at = found + wanted.length;
  }
  return null;
}
