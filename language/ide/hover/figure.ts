/** A figure in the other units of its kind. */
import { convert, formatNumber, formatQuantity, kindOfUnit, readQuantity, units } from '../../quantities/index.ts';
import { say, type Tell, term } from '../../say/say.ts';
import { markdownText } from './markdown.ts';

/** Markdown for a figure as it is written; null: it cannot be read, or there is no other unit for it. */
export function figureMarkdown(written: string, tell: Tell): string | null {
  const read = readQuantity(written);
  if ('problem' in read) return null;
  const { quantity } = read;
  const kind = kindOfUnit(quantity.unit);
  const others = units.flatMap(({ name, kind: other }) => {
    const value = other === kind && name !== quantity.unit ? convert(quantity, name) : null;
    const digits = value === null ? '' : shortest(value.valueOf());
    return digits === '' ? [] : [`${formatNumber(digits)} ${name}`];
  });
  if (others.length === 0) return null;
  return `**${markdownText(formatQuantity(quantity))}** = ${others.map(markdownText).join(' = ')}\n\n${tell(say`${term(kind)}, to four digits`)}`;
}

/** To four digits; empty where that is no number to work with. */
function shortest(value: number): string {
  const size = Math.abs(value);
  if (size !== 0 && (size < 0.0005 || size >= 1e6)) return '';
  return size >= 1000 ? String(Math.round(value)) : String(Number(value.toPrecision(4)));
}
