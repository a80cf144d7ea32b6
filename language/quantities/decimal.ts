import Fraction from 'fraction.js';
import { oncePerText } from './memo.ts';

/** How a number that does not fit the wanted digits is rounded; 'nearest' takes the even digit at a half. */
export type Rounding = 'nearest' | 'up' | 'down';

/** Ten to a whole power, exact. */
export function tenTo(power: number): Fraction {
  const size = 10n ** BigInt(Math.abs(power));
  return power < 0 ? new Fraction(1n, size) : new Fraction(size, 1n);
}

/**
 * The exact value of plain digits ('250', '-0.20'). Throws a RangeError for anything else: numbers come from
 * `readNumber`, so other text here is a defect of the program and not of the author.
 */
export const decimalValue = oncePerText((number): Fraction => {
  const match = /^(-?)(\d+)(?:\.(\d+))?$/u.exec(number);
  if (match === null) throw new RangeError(`Not a plain decimal number: ${number}`);
  const [, sign, whole, fraction = ''] = match;
  return new Fraction(BigInt(`${sign}${whole}${fraction}`), 10n ** BigInt(fraction.length));
});

/** Digits after the point. */
export function decimalsOf(number: string): number {
  return number.split('.')[1]?.length ?? 0;
}

/** Rounds to a whole multiple of a step over 0, exactly. */
export function toStep(value: Fraction, step: Fraction, rounding: Rounding): Fraction {
  const steps = value.div(step);
  if (rounding === 'up') return steps.ceil().mul(step);
  if (rounding === 'down') return steps.floor().mul(step);
  const below = steps.floor();
  const rest = steps.sub(below).compare(new Fraction(1n, 2n));
  const even = below.n % 2n === 0n;
  return (rest < 0 || (rest === 0 && even) ? below : below.add(1)).mul(step);
}

/** Writes a value with just so many digits after the point; it must be a whole multiple of the last one. */
export function written(value: Fraction, decimals: number): string {
  const places = Math.max(0, decimals);
  const scaled = value.mul(tenTo(places));
  const digits = scaled.n.toString().padStart(places + 1, '0');
  const sign = scaled.s < 0n && scaled.n !== 0n ? '-' : '';
  return places === 0 ? `${sign}${digits}` : `${sign}${digits.slice(0, -places)}.${digits.slice(-places)}`;
}

/** Rounds to so many digits after the point (fewer than none: tens, hundreds) and writes it. */
export function rounded(value: Fraction, decimals: number, rounding: Rounding): string {
  return written(toStep(value, tenTo(-decimals), rounding), decimals);
}

/** Digits kept of a value that no decimal number gives exactly (1 psi in bar): far below anything measured. */
const endlessDecimals = 15;

/**
 * Writes a value exactly, with at least so many digits after the point. A value with an endless decimal is cut after
 * 15 of them, rounded as asked.
 */
export function exactText(value: Fraction, atLeast = 0, rounding: Rounding = 'nearest'): string {
  let rest = value.d;
  let [twos, fives] = [0, 0];
  for (; rest % 2n === 0n; rest /= 2n) twos++;
  for (; rest % 5n === 0n; rest /= 5n) fives++;
  const needed = Math.max(twos, fives, atLeast);
  return rest === 1n && needed <= 2 * endlessDecimals
    ? written(value, needed)
    : rounded(value, endlessDecimals, rounding);
}

/** The largest power of ten (as its exponent) that is not over a value over 0. */
export function powerBelow(value: Fraction): number {
  let power = value.n.toString().length - value.d.toString().length;
  while (tenTo(power).compare(value) > 0) power--;
  while (tenTo(power + 1).compare(value) <= 0) power++;
  return power;
}
