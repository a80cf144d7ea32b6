import { compare, toleranceOf } from './convert.ts';
import { decimalsOf, decimalValue, exactText } from './decimal.ts';
import type { Limit, Quantity } from './types.ts';

/** What a limit lets through. Null: open on that side, or (a nominal with no tolerance) not stated. */
export interface Window {
  readonly low: Quantity | null;
  readonly high: Quantity | null;
  readonly nominal: Quantity | null;
}

/**
 * The window of a limit, exact, in the limit's own unit; of `then`, the torque's. A tolerance alone has none.
 * A tolerance in a unit that gives an endless decimal is cut after 15 digits, towards the inside.
 */
export function window(limit: Limit): Window {
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
}

function end(nominal: Quantity, tolerance: Quantity, side: -1 | 1): Quantity | null {
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
