import type { ScrewTurns } from '../calculations/screw-turns.ts';
import type { ShimAdvice, ShimChoice } from '../calculations/shim-advice.ts';
import { decimalsOf } from '../quantities/decimal.ts';
import { formatNumber, formatQuantity, roundTo, sub } from '../quantities/index.ts';
import type { Quantity } from '../quantities/types.ts';

/** Figures behind the point of an expected pressure: as many as its window is written with, and no more than one. */
export function expectedWords(quantity: Quantity, like: Quantity): string {
  const decimals = Math.min(1, decimalsOf(like.number));
  return formatQuantity(roundTo(quantity, like.unit, decimals, 'nearest') ?? quantity);
}

/** A spread to a tenth, rounded up: none is printed smaller than it is. */
export function spreadWords(spread: Quantity): string {
  return formatQuantity(roundTo(spread, spread.unit, 1, 'up') ?? spread);
}

/** `Fit 1.45 mm (now 1.30 mm): expect 253 bar, 249 to 257 bar`. */
export function choiceSentence({ shims, expected: at, low, high }: ShimChoice, now: Quantity, like: Quantity): string {
  const fit = shims.map((shim) => formatQuantity(shim)).join(' and ');
  const doubt =
    low.number === high.number
      ? ''
      : `, ${formatNumber(roundTo(low, like.unit, 0, 'nearest')!.number)} to ${expectedWords(high, like)}`;
  return `Fit ${fit} (now ${formatQuantity(now)}): expect ${expectedWords(at, like)}${doubt}`;
}

/** What to fit, or why nothing fits and what to do. */
export function adviceSentence(advice: ShimAdvice, now: Quantity, like: Quantity, settling: Quantity | null): string {
  if ('choice' in advice)
    return choiceSentence(advice.choice, now, like) + settledWords(advice.choice.expected, settling, like);
  const { nothing } = advice;
  const of = ({ shims, expected: at }: ShimChoice) =>
    `${shims.map((shim) => formatQuantity(shim)).join(' and ')} gives ${expectedWords(at, like)}`;
  switch (nothing.reason) {
    case 'empty':
      return 'No shim is left in the drawer.';
    case 'settles out':
      return 'The new spring will lose more by settling than the window is wide: no reading allows for it. Look at the spec.';
    case 'too thin':
      return `No shim is thick enough: ${of(nothing.nearest)}. Look at the spring, or get thicker ones.`;
    case 'too thick':
      return `No shim is thin enough: ${of(nothing.nearest)}. Look at the spring, or get thinner ones.`;
    case 'too coarse':
      return `The drawer steps over the window: ${of(nothing.under)}, ${of(nothing.over)}. Grind one between them.`;
  }
}

/** `Turn it 345° in: expect 122 bar`; `Turn it 2 turns and 90° in: expect 260 bar`. */
export function turnsSentence({ angle, way, expected: at }: ScrewTurns, like: Quantity, settling: Quantity | null) {
  const whole = Math.floor(angle / 360);
  const rest = angle % 360;
  const turns = whole === 0 ? [] : [whole === 1 ? '1 turn' : `${whole} turns`];
  const words = [...turns, ...(rest === 0 ? [] : [`${rest}°`])].join(' and ');
  return `Turn it ${words} ${way}: expect ${expectedWords(at, like)}${settledWords(at, settling, like)}`;
}

/** `; settled, 252 bar`: what a gauge will show when a new spring has lost what it loses. */
export function settledWords(expected: Quantity, settling: Quantity | null, like: Quantity): string {
  const settled = settling === null ? null : sub(expected, settling);
  return settled === null ? '' : `; with the new spring settled, ${expectedWords(settled, like)}`;
}
