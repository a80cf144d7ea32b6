import { bold, regular } from './advances.ts';
import { millimetresPerPoint, textSize } from './drawing.ts';

const table = (rows: typeof regular) =>
  new Map(rows.flatMap(([advance, characters]) => [...characters].map((one) => [one, advance] as const)));
const advances = { regular: table(regular), bold: table(bold) };

/** Thousandths of an em for a sign that the text font lacks: wider than any letter of the font that lends it. */
const unknown = 1600;
/** Some pairs stand a little further apart than their advances say; most stand closer. */
const kerning = { share: 1.01, ends: 60 } as const;

/** Width of a line in millimetres at the size of a drawing's text, never less than what is printed. */
export function widthOf(text: string, isBold: boolean): number {
  const known = isBold ? advances.bold : advances.regular;
  let sum = 0;
  for (const character of text) sum += known.get(character) ?? (/\p{M}/u.test(character) ? 0 : unknown);
  return sum === 0 ? 0 : ((sum * kerning.share + kerning.ends) / 1000) * textSize * millimetresPerPoint;
}
