import { bold, boldSigns, lentRuns, regular, signs } from './advances.ts';
import { millimetresPerPoint, textSize } from './drawing.ts';

const table = (rows: typeof regular) =>
  new Map(rows.flatMap(([advance, characters]) => [...characters].map((one) => [one, advance] as const)));
const regularSigns = table(regular);
const advances = { regular: table([...signs, ...regular]), bold: table([...boldSigns, ...bold]) };

const lent = new Set(
  lentRuns.flatMap(([first, last]) => Array.from({ length: last - first + 1 }, (_, index) => first + index)),
);

/** The font that has a sign: that of all text, the second one that lends it, or none. */
export function fontOf(character: string): 'own' | 'lent' | null {
  if (regularSigns.has(character)) return 'own';
  return lent.has(character.codePointAt(0)!) ? 'lent' : null;
}

/** Advances of a text without the room that `widthOf` keeps: where the next sign begins. Millimeters. */
export function advanceOf(text: string, isBold: boolean): number {
  return (thousandths(text, isBold) / 1000) * textSize * millimetresPerPoint;
}

/** Thousandths of an em for a sign that is not in the table: wider than any letter of the font that lends it. */
const unknown = 2100;
/** Stands for a sign that no font of the sheet has. */
export const noSign = '\ufffd';
/** Some pairs are a little further apart than their advances say; most are closer. */
const kerning = { share: 1.01, ends: 60 } as const;

/** Widths that were worked out, so many at most: the same lines are measured again for each way to set a page. */
const known = { regular: new Map<string, number>(), bold: new Map<string, number>() };
const mostKnown = 8192;

/** Width of a line in millimeters at the size of a drawing's text, never less than what is printed. */
export function widthOf(text: string, isBold: boolean): number {
  const widths = isBold ? known.bold : known.regular;
  const before = widths.get(text);
  if (before !== undefined) return before;
  if (widths.size >= mostKnown) widths.clear();
  const width = measured(text, isBold);
  widths.set(text, width);
  return width;
}

function measured(text: string, isBold: boolean): number {
  const sum = thousandths(text, isBold);
  return sum === 0 ? 0 : ((sum * kerning.share + kerning.ends) / 1000) * textSize * millimetresPerPoint;
}

function thousandths(text: string, isBold: boolean): number {
  const own = isBold ? advances.bold : advances.regular;
  let sum = 0;
  for (const character of text)
    sum +=
      own.get(character) ?? (/\p{M}/u.test(character) ? 0 : fontOf(character) === null ? own.get(noSign)! : unknown);
  return sum;
}
