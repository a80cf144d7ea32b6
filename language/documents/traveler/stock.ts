import type { Span, Words } from '../../i18n/index.ts';
import type { Stock } from '../../model/shop.ts';
import { between, compareDifferences } from '../../quantities/index.ts';
import type { Difference, Quantity } from '../../quantities/types.ts';

/** `1.00 mm to 1.95 mm by 0.05 mm`, or `1.00 mm (3), 1.05 mm (none)`; and whether two may lie on each other. */
export function stockWords(words: Words, { sizes, counts, stacks }: Stock): Span[] {
  const { piece, quantity } = words;
  const step = counts.some((count) => count !== null) ? null : evenStep(sizes);
  const listed =
    step === null
      ? sizes.map((size, index) => sizeWords(words, size, counts[index] ?? null)).join(', ')
      : textOf(piece('sizes', { from: quantity(sizes[0]!), to: quantity(sizes.at(-1)!), step: quantity(step) }));
  return stacks ? [{ text: listed }, ...piece('stacks')] : [{ text: listed }];
}

function sizeWords({ piece, quantity }: Words, size: Quantity, count: number | null): string {
  if (count === null) return quantity(size);
  return textOf(piece(count === 0 ? 'countedNone' : 'counted', { size: quantity(size), count }));
}

/** The step from each size to the next. Null if they are uneven, or too few to have steps. */
function evenStep(sizes: readonly Quantity[]): Difference | null {
  const [first, second, third] = sizes;
  const step = first === undefined || second === undefined || third === undefined ? null : between(second, first);
  if (step === null) return null;
  const even = sizes.every((size, index) => {
    const before = sizes[index - 1];
    const own = before === undefined ? step : between(size, before);
    return own !== null && compareDifferences(own, step) === 0;
  });
  return even ? step : null;
}

function textOf(spans: readonly Span[]): string {
  return spans.map(({ text }) => text).join('');
}
