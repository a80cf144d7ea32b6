import type Fraction from 'fraction.js';
import { decimalsOf, tenTo } from './decimal.ts';

/**
 * The place of the last digit that a number means, as a power of ten: -2 for 0.20, 0 for 250. Trailing zeros of an
 * integer beyond its first three figures say nothing: 2 for 20 000.
 */
export function lastPlace(number: string): number {
  const decimals = decimalsOf(number);
  return decimals > 0 ? -decimals : placeOfInteger(number, 3);
}

/**
 * The size of the last digit that a printed number means. Trailing zeros of an integer leave it open: 20 000 may be
 * rounded to thousands and 3750 to tens, but the first two figures always count, and a third after a 1: 100 to the
 * nearest ten would be anything from 95 to 105.
 */
export function digitOf(number: string): Fraction {
  const decimals = decimalsOf(number);
  return tenTo(decimals > 0 ? -decimals : placeOfInteger(number, /^-?0*1/u.test(number) ? 3 : 2));
}

/** The place of the last significant digit of an integer, whose trailing zeros beyond so many digits do not count. */
function placeOfInteger(number: string, figures: number): number {
  const digits = number.replace(/^-?0*/u, '');
  const zeros = /0*$/u.exec(digits)![0].length;
  return Math.max(0, Math.min(zeros, digits.length - figures));
}
