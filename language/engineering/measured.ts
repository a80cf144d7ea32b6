import { amount, asDifference, sizeOf } from '../quantities/index.ts';
import type { Difference, Quantity, UnitName } from '../quantities/types.ts';
import { unitOf } from '../quantities/unit-table.ts';

/** Digits kept of a result that no decimal gives exactly: more than any input has, and what is printed is rounded from them. */
const significant = 12;

/** The amount in the base unit of its kind, as a number to reckon with where π or a root comes in. */
export function base(quantity: Quantity): number {
  return amount(quantity).valueOf();
}

/** The same of a difference, such as an uncertainty. */
export function baseDifference(difference: Difference): number {
  return sizeOf(difference).valueOf();
}

/**
 * A number in base units as a quantity in a unit of the kind, to so many significant digits. Null: it is no finite
 * number, or beyond anything that can be written out.
 */
export function quantityOf(value: number, unit: UnitName, digits = significant): Quantity | null {
  const { factor, offset } = unitOf(unit);
  const number = value / factor.valueOf() - offset.valueOf();
  if (!Number.isFinite(number) || Math.abs(number) >= 1e15) return null;
  if (number === 0) return { number: '0', unit };
  const places = Math.min(20, Math.max(0, digits - 1 - Math.floor(Math.log10(Math.abs(number)))));
  const text = Number(number.toPrecision(digits)).toFixed(places);
  return { number: places === 0 ? text : text.replace(/\.?0+$/u, ''), unit };
}

/** The same of a difference: it has no zero of its own. */
export function differenceOf(value: number, unit: UnitName, digits = significant): Difference | null {
  const zero = unitOf(unit).offset.mul(unitOf(unit).factor).valueOf();
  const found = quantityOf(value + zero, unit, digits);
  return found === null ? null : asDifference(found);
}
