import { decimalsOf, decimalValue, exactText, tenTo } from '../quantities/decimal.ts';
import type { Quantity } from '../quantities/types.ts';

/** How near to a whole power of ten it must lie: 250 bar typed as 25.0 is one, a worn unit that reads 190 is not. */
const near = 0.2;

/**
 * Powers of ten by which a figure is off from what such figures are: 1 for 2310 beside 231, −1 for 0.13 beside 1.3.
 * 0: it is none of them, or cannot be said.
 */
export function slipOf(value: number, usual: number): number {
  const tens = Math.log10(value / usual);
  const whole = Math.round(tens);
  return Number.isFinite(tens) && Math.abs(tens - whole) <= near ? whole : 0;
}

/** The figure with its decimal mark moved back. */
export function unslipped({ number, unit }: Quantity, tens: number): Quantity {
  const decimals = decimalsOf(number);
  return { number: exactText(decimalValue(number).mul(tenTo(-tens)), Math.max(0, decimals && decimals + tens)), unit };
}

/** The middle one of some figures: one slip among them does not move it far. Null: there are none. */
export function medianOf(values: readonly number[]): number | null {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.floor((sorted.length - 1) / 2)] ?? null;
}

/**
 * Standard uncertainty of a figure that is read to a mark, or printed to a digit: half of it over √3, since anywhere
 * between is alike (uniform; JCGM 100:2008, 4.3.7).
 */
export function resolutionOf(mark: number): number {
  return Math.abs(mark) / 2 / Math.sqrt(3);
}
