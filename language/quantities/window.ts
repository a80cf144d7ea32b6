import type Fraction from 'fraction.js';
import { compare, convert, convertDifference, toleranceOf } from './convert.ts';
import { decimalsOf, decimalValue, exactText } from './decimal.ts';
import { oncePer } from './memo.ts';
import type { Difference, Limit, Quantity, UnitName } from './types.ts';

/** What a limit lets through. Null: open on that side, or (a nominal with no tolerance) not stated. */
export interface Window {
  readonly low: Quantity | null;
  readonly high: Quantity | null;
  readonly nominal: Quantity | null;
}

/**
 * The window of a limit, exact, in the limit's own unit; of `then`, the torque's. A tolerance alone has none.
 * A tolerance in a unit that gives an endless decimal is cut after 15 digits, toward the inside.
 */
export const window = oncePer((limit: Limit): Window => {
  switch (limit.form) {
    case 'nominal':
      return {
        low: limit.minus === null ? null : end(limit.nominal, limit.minus, -1),
        high: limit.plus === null ? null : end(limit.nominal, limit.plus, 1),
        nominal: limit.nominal,
      };
    case 'range':
      return { low: limit.low, high: limit.high, nominal: null };
    case 'at least':
      return { low: limit.least, high: null, nominal: null };
    case 'at most':
      return { low: null, high: limit.most, nominal: null };
    case 'tolerance':
      return { low: null, high: null, nominal: null };
    case 'then':
      return window(limit.first);
  }
});

function end(nominal: Quantity, tolerance: Difference, side: -1 | 1): Quantity | null {
  const change = toleranceOf(nominal, tolerance);
  if (change === null) return null;
  const decimals = Math.max(
    decimalsOf(nominal.number),
    tolerance.unit === nominal.unit ? decimalsOf(tolerance.number) : 0,
  );
  const value = decimalValue(nominal.number).add(change.mul(side));
  return { number: exactText(value, decimals, side === 1 ? 'down' : 'up'), unit: nominal.unit };
}

/** Whether nothing can pass: the low end is over the high one (in `then`, of the torque or of the angle). */
export function isEmpty(limit: Limit): boolean {
  if (limit.form === 'then') return isEmpty(limit.first) || isEmpty(limit.angle);
  const { low, high } = window(limit);
  return low !== null && high !== null && compare(low, high) === 1;
}

/** A window as fractions, before any digit is cut; what decides at an equal bound. Null: open, or not stated. */
export interface ExactWindow {
  readonly low: Fraction | null;
  readonly high: Fraction | null;
  readonly nominal: Fraction | null;
}

/** The exact window in a unit; of `then`, the torque's; of a tolerance alone, none. Null: a kind differs. */
export function exactWindow(limit: Limit, unit: UnitName): ExactWindow | null {
  switch (limit.form) {
    case 'then':
      return exactWindow(limit.first, unit);
    case 'tolerance':
      return null;
    case 'nominal': {
      const nominal = convert(limit.nominal, unit);
      const side = (tolerance: Difference | null): Fraction | null | undefined => {
        if (tolerance === null) return null;
        const change = toleranceOf(limit.nominal, tolerance);
        return change === null ? undefined : scaled(change, limit.nominal.unit, unit);
      };
      const [plus, minus] = [side(limit.plus), side(limit.minus)];
      if (nominal === null || plus === undefined || minus === undefined) return null;
      return {
        nominal,
        low: minus === null ? null : nominal.sub(minus),
        high: plus === null ? null : nominal.add(plus),
      };
    }
    case 'range':
    case 'at least':
    case 'at most': {
      const { low, high } = window(limit);
      const [from, to] = [low === null ? null : convert(low, unit), high === null ? null : convert(high, unit)];
      if ((low !== null && from === null) || (high !== null && to === null)) return null;
      return { low: from, high: to, nominal: null };
    }
  }
}

/** A difference taken from one unit to another of the same kind (checked before). */
function scaled(change: Fraction, from: UnitName, to: UnitName): Fraction {
  return change.mul(convertDifference({ number: '1', unit: from }, to)!);
}
