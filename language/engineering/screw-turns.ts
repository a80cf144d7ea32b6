import { kindOfUnit } from '../quantities/index.ts';
import type { Quantity } from '../quantities/types.ts';
import { base, quantityOf } from './measured.ts';

/** How far to turn an adjusting screw. */
export interface ScrewTurns {
  /** In whole steps of an angle that a hand can follow; never under nothing. */
  readonly angle: number;
  readonly way: 'in' | 'out';
  /** What the unit should read then, in the unit of the reading. */
  readonly expected: Quantity;
}

/** Degrees that a hand with a screwdriver can follow; a stiff spring may want the finer one. */
const steps = [15, 5, 1] as const;

/**
 * Turns that bring a reading to an aim: `turns = (aim − reading) / rate`, a straight line, rounded to the coarsest angle
 * that still leaves the unit in its window. Null: the rate is no pressure per turn over nothing, or the figures are beyond
 * anything that can be written out.
 */
export function screwTurns(
  reading: Quantity,
  { low, high, aim }: { readonly low: Quantity; readonly high: Quantity; readonly aim: Quantity },
  rate: Quantity,
): ScrewTurns | null {
  if (kindOfUnit(rate.unit) !== 'screw rate' || base(rate) <= 0) return null;
  const exact = exactTurns(reading, aim, rate) * 360;
  const after = (angle: number) => base(reading) + (angle / 360) * base(rate);
  const rounded = steps.map((step) => Math.round(exact / step) * step);
  const angle = rounded.find((one) => after(one) >= base(low) && after(one) <= base(high)) ?? rounded.at(-1)!;
  const expected = quantityOf(after(angle), reading.unit);
  return expected === null ? null : { angle: Math.abs(angle), way: angle < 0 ? 'out' : 'in', expected };
}

/** Turns in, or under nothing, out; not rounded. */
export function exactTurns(reading: Quantity, aim: Quantity, rate: Quantity): number {
  return (base(aim) - base(reading)) / base(rate);
}
