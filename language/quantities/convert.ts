import type Fraction from 'fraction.js';
import { decimalsOf, decimalValue, exactText } from './decimal.ts';
import { oncePer } from './memo.ts';
import type { Difference, Quantity, UnitName } from './types.ts';
import { unitOf } from './unit-table.ts';

/** The exact amount in the base unit of its kind (see `units`): pascals, meters, kelvins… */
export const amount = oncePer((quantity: Quantity): Fraction => {
  const unit = unitOf(quantity.unit);
  return decimalValue(quantity.number).add(unit.offset).mul(unit.factor);
});

/** The exact size of a difference in the base unit of its kind: 9 °F are 5 K. */
export const sizeOf = oncePer(
  (difference: Difference): Fraction => decimalValue(difference.number).mul(unitOf(difference.unit).factor),
);

/** A figure written as a value, where the place says that a difference is meant (`spread at most 5 °C`). */
export function asDifference({ number, unit }: Quantity): Difference {
  return { number, unit };
}

/** The exact number in another unit. Null: the unit measures another kind. */
export function convert(quantity: Quantity, to: UnitName): Fraction | null {
  const target = unitOf(to);
  if (unitOf(quantity.unit).kind !== target.kind) return null;
  return amount(quantity).div(target.factor).sub(target.offset);
}

/** A difference in another unit: 9 °F are 5 °C here, since a tolerance has no zero of its own. Null: another kind. */
export function convertDifference(difference: Difference, to: UnitName): Fraction | null {
  const target = unitOf(to);
  return unitOf(difference.unit).kind === target.kind ? sizeOf(difference).div(target.factor) : null;
}

/** -1, 0 or 1 as the first is less, equal or greater; null: they measure different kinds. */
export function compare(a: Quantity, b: Quantity): -1 | 0 | 1 | null {
  if (unitOf(a.unit).kind !== unitOf(b.unit).kind) return null;
  return Math.sign(amount(a).compare(amount(b))) as -1 | 0 | 1;
}

/** The same of two differences. */
export function compareDifferences(a: Difference, b: Difference): -1 | 0 | 1 | null {
  if (unitOf(a.unit).kind !== unitOf(b.unit).kind) return null;
  return Math.sign(sizeOf(a).compare(sizeOf(b))) as -1 | 0 | 1;
}

/**
 * The sum in the first one's unit: 20 °C and 5 K are 25 °C, a value or a difference as the first is. Exact, unless the second's unit gives an endless
 * decimal: then to 15 digits after the point. Null: different kinds.
 */
export function add<T extends Quantity | Difference>(a: T, b: Difference): T | null {
  const change = convertDifference(b, a.unit);
  return change === null ? null : sum(a, change, decimalsIfSame(a, b));
}

/** The first less the second, as `add`. */
export function sub<T extends Quantity | Difference>(a: T, b: Difference): T | null {
  const change = convertDifference(b, a.unit);
  return change === null ? null : sum(a, change.neg(), decimalsIfSame(a, b));
}

/** From the second up to the first, in the first one's unit: from 68 °F to 30 °C are 10 °C. Null: different kinds. */
export function between(a: Quantity, b: Quantity): Difference | null {
  const from = convert(b, a.unit);
  return from === null ? null : asDifference(sum(a, from.neg(), decimalsIfSame(a, b)));
}

function sum<T extends Quantity | Difference>(a: T, change: Fraction, decimals: number): T {
  return { ...a, number: exactText(decimalValue(a.number).add(change), decimals) };
}

/** The finer of both is kept, so that 1.00 and 0.05 make 1.05, and 1.00 and 1.00 make 2.00. */
function decimalsIfSame(a: Quantity | Difference, b: Quantity | Difference): number {
  return a.unit === b.unit ? Math.max(decimalsOf(a.number), decimalsOf(b.number)) : decimalsOf(a.number);
}

/**
 * A tolerance as an exact difference in its nominal's unit. Percent are of the nominal's number without its sign,
 * except where the nominal is itself in percent: `50 % ±5` is 45 to 55 %. Null: it measures another kind.
 */
export function toleranceOf(nominal: Quantity, tolerance: Difference): Fraction | null {
  if (tolerance.unit === '%' && nominal.unit !== '%') {
    return decimalValue(nominal.number).abs().mul(decimalValue(tolerance.number)).div(100);
  }
  return convertDifference(tolerance, nominal.unit);
}

/** Most sizes that a stock may have: more is a slip in the step. */
const mostSizes = 10_000;

/**
 * All sizes from low to high by a step, in the low one's unit, lowest first (the last may fall short of the high end).
 * Null: kinds differ, the low end is over the high one, the step is not over nothing, or over 10 000 sizes.
 */
export function sizesOf(low: Quantity, high: Quantity, step: Difference): Quantity[] | null {
  const top = convert(high, low.unit);
  const by = convertDifference(step, low.unit);
  if (top === null || by === null || by.compare(0) <= 0) return null;
  const start = decimalValue(low.number);
  if (start.compare(top) > 0) return null;
  const count = top.sub(start).div(by).floor().add(1);
  if (count.compare(mostSizes) > 0) return null;
  const decimals = decimalsIfSame(low, step);
  return Array.from({ length: Number(count.n) }, (_, index) => ({
    number: exactText(start.add(by.mul(index)), decimals),
    unit: low.unit,
  }));
}
