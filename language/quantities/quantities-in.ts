import { quantityPattern } from './patterns.ts';
import { readQuantity } from './read-quantity.ts';
import type { Quantity } from './types.ts';

const pattern = new RegExp(`(?<![\\p{L}\\p{N}.,])${quantityPattern}`, 'gu');

/** The figures with a unit in words of an author, each with what is written before it. */
export function quantitiesIn(text: string): { readonly quantity: Quantity; readonly before: string }[] {
  return [...text.matchAll(pattern)].flatMap(({ 0: written, index }) => {
    const { quantity } = readQuantity(written);
    return quantity === undefined ? [] : [{ quantity, before: text.slice(0, index) }];
  });
}
