import type { Words } from '../../i18n/index.ts';
import type { RateFrom } from '../../model/procedure.ts';
import { specFor } from '../../model/spec-for.ts';
import { type Limit, limitText, type Quantity } from '../../quantities/index.ts';
import type { PrintContext } from '../print-context.ts';
import { byNumber, withNumbers } from './by-number.ts';

/** `3 bar per 0.001 in`, from a spec of a rate; by part number where they differ. */
export function rateText({ procedure, numbers, words }: PrintContext, name: string): string {
  const texts = byNumber({ numbers }, (number) => {
    const value = specFor(procedure, name, number);
    if (value?.rebuilt == null) return null;
    return rateWords(words, value.rebuilt, value.spec.per, value.rateFrom);
  });
  return texts.length === 0 ? name : texts.map(withNumbers).join('; ');
}

/** A rate as it is written, or with what it was worked out from: `94.31 bar per mm, from 200 N/mm, guide 6 mm, seat 3 mm`. */
export function rateWords(words: Words, rebuilt: Limit, each: Quantity | null, from: RateFrom | null): string {
  const { figures, facts, quantity, wording } = words;
  const amount = limitText(rebuilt, wording);
  const written = each === null ? amount : figures.per({ amount, each: quantity(each) });
  if (from === null) return written;
  const { stiffness, guide, seat } = from;
  return `${written}, ${facts.rateFrom({ stiffness: quantity(stiffness), guide: quantity(guide), seat: quantity(seat) })}`;
}

/** Where a spec is from, for each part number of the sheet. */
export function specSources({ procedure, numbers }: PrintContext, name: string): string[] {
  return byNumber({ numbers }, (number) => specFor(procedure, name, number)?.sourceText ?? null).map(
    ({ told }) => told,
  );
}
