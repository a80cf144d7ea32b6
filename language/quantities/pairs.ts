import Fraction from 'fraction.js';
import { type Filling, type Said, say, term } from '../say/say.ts';
import { asDifference, convert, convertDifference, toleranceOf } from './convert.ts';
import { decimalsOf, decimalValue, rounded, tenTo } from './decimal.ts';
import { formatLimit, formatQuantity } from './format.ts';
import { digitOf, lastPlace } from './printed-digits.ts';
import type { Difference, Limit, NominalLimit, Quantity, RangeLimit } from './types.ts';
import { kindOfUnit, type UnitName } from './unit-table.ts';
import { window } from './window.ts';

/** Which way a number may be off by a whole digit and still not loosen the limit. */
type Safe = 'higher' | 'lower' | null;

/** A printed number with its digit, both in the unit that two numbers are compared in. */
interface Printed {
  readonly value: Fraction;
  /** The digit that is written last. */
  readonly fine: Fraction;
  /** The coarsest that trailing zeros leave open. */
  readonly coarse: Fraction;
}

/**
 * Agreement by printed digits: within half a digit of each. In the safe direction of a limit the safer of the two may be
 * rounded by a whole digit of its own. Which was rounded from which is not said by their order, so either may be; only
 * of the one that was rounded do trailing zeros leave the digit open, or the two would be open by turns.
 */
function agree(a: Printed, b: Printed, safe: Safe): boolean {
  const apart = a.value.sub(b.value).abs();
  const within = (first: Fraction, second: Fraction) => apart.compare(first.add(second).div(2)) <= 0;
  if (within(a.coarse, b.fine) || within(a.fine, b.coarse)) return true;
  if (safe === null) return false;
  const safer = a.value.compare(b.value) > 0 === (safe === 'higher') ? a : b;
  return apart.compare(safer.coarse) <= 0;
}

/** A number as printed, with the value of one unit of it. */
function printed(number: string, value: Fraction, one: Fraction): Printed {
  return { value, fine: tenTo(-decimalsOf(number)).mul(one), coarse: digitOf(number).mul(one) };
}

/** Whether a limit is of values, or of differences (a spread): 5 °C are 41 °F or 9 °F. */
type Of = 'values' | 'differences';

function converted(quantity: Quantity, unit: UnitName, of: Of): Fraction | null {
  return of === 'values' ? convert(quantity, unit) : convertDifference(asDifference(quantity), unit);
}

/** Two quantities side by side. Null: they measure different kinds. */
function quantitiesAgree(a: Quantity, b: Quantity, safe: Safe, of: Of): boolean | null {
  const value = converted(b, a.unit, of);
  const perUnit = convertDifference({ number: '1', unit: b.unit }, a.unit);
  if (value === null || perUnit === null) return null;
  return agree(printed(a.number, decimalValue(a.number), new Fraction(1)), printed(b.number, value, perUnit), safe);
}

/** Two tolerances of one side, each of its own nominal; the smaller is the safe one. */
function tolerancesAgree(a: Difference, aNominal: Quantity, b: Difference, bNominal: Quantity): boolean {
  const perUnit = convertDifference({ number: '1', unit: bNominal.unit }, aNominal.unit)!;
  const first = printedTolerance(a, aNominal, new Fraction(1));
  const second = printedTolerance(b, bNominal, perUnit);
  // Two tolerances in percent are compared as written: the nominals are judged on their own.
  if (a.unit === '%' && b.unit === '%')
    return agree(
      printed(a.number, decimalValue(a.number), new Fraction(1)),
      printed(b.number, decimalValue(b.number), new Fraction(1)),
      'lower',
    );
  return first === null || second === null || agree(first, second, 'lower');
}

function printedTolerance(tolerance: Difference, nominal: Quantity, perUnit: Fraction): Printed | null {
  const value = toleranceOf(nominal, tolerance);
  const one = toleranceOf(nominal, { number: '1', unit: tolerance.unit });
  return value === null || one === null ? null : printed(tolerance.number, value.mul(perUnit), one.mul(perUnit));
}

/**
 * Judges the second unit in brackets (rule `unit-pair-disagrees`): null if it agrees with the first or there is none.
 *
 * Numbers agree within half a digit of each as printed, or a whole digit in the safe direction: at the low end of a
 * limit higher is safe, at the high end lower, for a tolerance smaller. A nominal is compared by nominal, and by each
 * tolerance that both sides write; a range by both ends; a single figure beside a range by the range's middle; a limit
 * against one of another form by their windows.
 */
export function pairAgrees(limit: Limit, of: Of = 'values'): null | { message: Said } {
  if (limit.form === 'then') return pairAgrees(limit.first) ?? pairAgrees(limit.angle);
  if (limit.form === 'tolerance' || limit.pair === undefined) return null;
  const { pair } = limit;
  if (pair.form === 'then' || pair.form === 'tolerance') {
    return {
      message: say`the parentheses hold the limit in a second unit: write a value there, not ${formatLimit(pair)}.`,
    };
  }
  if (limit.form === 'nominal' && pair.form === 'nominal') return nominalsAgree(limit, pair, of);
  const second = window(pair);
  const first = window(limit);
  // A lone number in brackets after "at least" or "at most" is the same end in the other unit.
  const lone = isLone(pair) ? pair.nominal : null;
  const band = limit.form === 'range' ? limit : pair.form === 'range' ? pair : null;
  const single = lone ?? (isLone(limit) ? limit.nominal : null);
  if (band !== null && single !== null) return middleAgrees(band, single, of);
  const low = limit.form === 'at least' ? (lone ?? second.low) : second.low;
  const high = limit.form === 'at most' ? (lone ?? second.high) : second.high;
  if ((first.low === null) !== (low === null) || (first.high === null) !== (high === null)) {
    return {
      message: say`${formatLimit(withoutPair(limit))} and ${formatLimit(pair)} are two kinds of limit: write both the same way.`,
    };
  }
  return endsAgree(first.low, low, 'higher', of) ?? endsAgree(first.high, high, 'lower', of);
}

function isLone(limit: Limit): limit is NominalLimit {
  return limit.form === 'nominal' && limit.plus === null && limit.minus === null;
}

/** One person works to the band, the other to the figure: that is right where the figure is the middle of the band. */
function middleAgrees(band: RangeLimit, single: Quantity, of: Of): null | { message: Said } {
  const { unit } = single;
  const [low, high] = [converted(band.low, unit, of), converted(band.high, unit, of)];
  const perUnit = convertDifference({ number: '1', unit: band.low.unit }, unit);
  if (low === null || high === null || perUnit === null) return endsAgree(band.low, single, null, of);
  const middle = low.add(high).div(2);
  const own = printed(single.number, decimalValue(single.number), new Fraction(1));
  if (agree(own, printed(band.low.number, middle, perUnit), null)) return null;
  return {
    message: say`a single figure beside a band is its middle, but the middle of ${formatLimit(withoutPair(band))} is ${shown(middle, single)}, not ${formatQuantity(single)}.`,
  };
}

function nominalsAgree(limit: NominalLimit, pair: NominalLimit, of: Of): null | { message: Said } {
  const nominal = endsAgree(limit.nominal, pair.nominal, null, of);
  if (nominal !== null) return nominal;
  for (const [side, sign] of [
    ['plus', '+'],
    ['minus', '−'],
  ] as const) {
    const [a, b] = [limit[side], pair[side]];
    if (a === null || b === null || tolerancesAgree(a, limit.nominal, b, pair.nominal)) continue;
    return {
      message: say`the tolerances ${sign}${formatQuantity(a)} and ${sign}${formatQuantity(b)} do not agree${comes(a, b)}.`,
    };
  }
  return null;
}

function endsAgree(a: Quantity | null, b: Quantity | null, safe: Safe, of: Of): null | { message: Said } {
  if (a === null || b === null) return null;
  const verdict = quantitiesAgree(a, b, safe, of);
  if (verdict === true) return null;
  if (verdict === null) {
    return {
      message: say`${formatQuantity(a)} is a ${term(kindOfUnit(a.unit))} and ${formatQuantity(b)} a ${term(kindOfUnit(b.unit))}.`,
    };
  }
  const value = converted(a, b.unit, of)!;
  return {
    message: say`${formatQuantity(a)} and ${formatQuantity(b)} do not agree (${formatQuantity(a)} is ${shown(value, b)}).`,
  };
}

function comes(a: Difference, b: Difference): Filling {
  const value = convertDifference(a, b.unit);
  return value === null ? '' : say` (${formatQuantity(a)} is ${shown(value, b)})`;
}

/** One digit more than is printed beside it, and three figures at least, so that the difference can be seen. */
function shown(value: Fraction, beside: Quantity | Difference): string {
  const decimals = Math.max(decimalsOf(beside.number) + 1, -lastPlace(beside.number));
  return formatQuantity({ number: rounded(value, decimals, 'nearest'), unit: beside.unit });
}

function withoutPair(limit: Limit): Limit {
  if (!('pair' in limit)) return limit;
  const { pair, ...without } = limit;
  return without;
}
