import type Fraction from 'fraction.js';
import { convert, convertDifference, toleranceOf } from './convert.ts';
import { decimalsOf, decimalValue, rounded } from './decimal.ts';
import { formatLimit, formatQuantity } from './format.ts';
import { digitOf, lastPlace } from './printed-digits.ts';
import type { Limit, NominalLimit, Quantity } from './types.ts';
import { kindOfUnit } from './unit-table.ts';
import { window } from './window.ts';

/** Which way a number may be off by a whole digit and still not loosen the limit. */
type Safe = 'higher' | 'lower' | null;

/** A printed number with its digit, both in the unit that two numbers are compared in. */
interface Printed {
  readonly value: Fraction;
  readonly digit: Fraction;
}

/**
 * Agreement by printed digits: within half a digit of each. In the safe direction of a limit one of the two may be
 * rounded by a whole digit of its own. Which was rounded from which is not said by their order, so either may be.
 */
function agree(a: Printed, b: Printed, safe: Safe): boolean {
  const apart = a.value.sub(b.value).abs();
  if (apart.compare(a.digit.add(b.digit).div(2)) <= 0) return true;
  if (safe === null) return false;
  const [safer, other] = a.value.compare(b.value) > 0 === (safe === 'higher') ? [a, b] : [b, a];
  return apart.compare(safer.digit.add(other.digit.div(2))) <= 0;
}

/** Two quantities side by side. Null: they measure different kinds. */
function quantitiesAgree(a: Quantity, b: Quantity, safe: Safe): boolean | null {
  const value = convert(b, a.unit);
  const perUnit = convertDifference({ number: '1', unit: b.unit }, a.unit);
  if (value === null || perUnit === null) return null;
  const first = { value: decimalValue(a.number), digit: digitOf(a.number) };
  return agree(first, { value, digit: digitOf(b.number).mul(perUnit) }, safe);
}

/** Two tolerances of one side, each of its own nominal; the smaller is the safe one. */
function tolerancesAgree(a: Quantity, aNominal: Quantity, b: Quantity, bNominal: Quantity): boolean {
  // Per cent beside per cent are compared as they stand: the nominals are judged on their own.
  if (a.unit === '%' && b.unit === '%') return quantitiesAgree(a, b, 'lower') ?? true;
  const perUnit = convertDifference({ number: '1', unit: bNominal.unit }, aNominal.unit)!;
  const first = printedTolerance(a, aNominal);
  const second = printedTolerance(b, bNominal);
  if (first === null || second === null) return true;
  return agree(first, { value: second.value.mul(perUnit), digit: second.digit.mul(perUnit) }, 'lower');
}

function printedTolerance(tolerance: Quantity, nominal: Quantity): Printed | null {
  const value = toleranceOf(nominal, tolerance);
  const digit = toleranceOf(nominal, { number: '1', unit: tolerance.unit });
  return value === null || digit === null ? null : { value, digit: digit.mul(digitOf(tolerance.number)) };
}

/**
 * Judges the second unit in brackets (rule `unit-pair-disagrees`): null if it agrees with the first or there is none.
 *
 * Numbers agree within half a digit of each as printed, or a whole digit in the safe direction: at the low end of a
 * limit higher is safe, at the high end lower, for a tolerance smaller. A nominal is compared by nominal, and by each
 * tolerance that both sides write; a range by both ends; a limit against one of another form by their windows.
 */
export function pairAgrees(limit: Limit): null | { message: string } {
  if (limit.form === 'then') return pairAgrees(limit.first) ?? pairAgrees(limit.angle);
  if (limit.form === 'tolerance' || limit.pair === undefined) return null;
  const { pair } = limit;
  if (pair.form === 'then' || pair.form === 'tolerance') {
    return { message: `The brackets hold the limit in a second unit: write a value there, not ${formatLimit(pair)}.` };
  }
  if (limit.form === 'nominal' && pair.form === 'nominal') return nominalsAgree(limit, pair);
  const second = window(pair);
  const first = window(limit);
  // A lone number in brackets after "at least" or "at most" is the same end in the other unit.
  const lone = pair.form === 'nominal' && pair.plus === null && pair.minus === null ? pair.nominal : null;
  const low = limit.form === 'at least' ? (lone ?? second.low) : second.low;
  const high = limit.form === 'at most' ? (lone ?? second.high) : second.high;
  if ((first.low === null) !== (low === null) || (first.high === null) !== (high === null)) {
    return {
      message: `${formatLimit(withoutPair(limit))} and ${formatLimit(pair)} are two kinds of limit: write both the same way.`,
    };
  }
  return endsAgree(first.low, low, 'higher') ?? endsAgree(first.high, high, 'lower');
}

function nominalsAgree(limit: NominalLimit, pair: NominalLimit): null | { message: string } {
  const nominal = endsAgree(limit.nominal, pair.nominal, null);
  if (nominal !== null) return nominal;
  for (const [side, sign] of [
    ['plus', '+'],
    ['minus', '−'],
  ] as const) {
    const [a, b] = [limit[side], pair[side]];
    if (a === null || b === null || tolerancesAgree(a, limit.nominal, b, pair.nominal)) continue;
    return {
      message: `The tolerances ${sign}${formatQuantity(a)} and ${sign}${formatQuantity(b)} do not agree${comes(a, b)}.`,
    };
  }
  return null;
}

function endsAgree(a: Quantity | null, b: Quantity | null, safe: Safe): null | { message: string } {
  if (a === null || b === null) return null;
  const verdict = quantitiesAgree(a, b, safe);
  if (verdict === true) return null;
  if (verdict === null) {
    return {
      message: `${formatQuantity(a)} is a ${kindOfUnit(a.unit)} and ${formatQuantity(b)} a ${kindOfUnit(b.unit)}.`,
    };
  }
  const value = convert(a, b.unit)!;
  return {
    message: `${formatQuantity(a)} and ${formatQuantity(b)} do not agree: ${formatQuantity(a)} is ${shown(value, b)}.`,
  };
}

function comes(a: Quantity, b: Quantity): string {
  const value = convertDifference(a, b.unit);
  return value === null ? '' : `: ${formatQuantity(a)} is ${shown(value, b)}`;
}

/** One digit more than is printed beside it, and three figures at least, so that the difference can be seen. */
function shown(value: Fraction, beside: Quantity): string {
  const decimals = Math.max(decimalsOf(beside.number) + 1, -lastPlace(beside.number));
  return formatQuantity({ number: rounded(value, decimals, 'nearest'), unit: beside.unit });
}

function withoutPair(limit: Limit): Limit {
  return { ...limit, pair: undefined } as Limit;
}
