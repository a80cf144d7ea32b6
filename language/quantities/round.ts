import type Fraction from 'fraction.js';
import { convert, convertDifference, toleranceOf } from './convert.ts';
import { decimalsOf, decimalValue, powerBelow, type Rounding, rounded, tenTo, toStep, written } from './decimal.ts';
import { quantitiesOf } from './limit-kind.ts';
import { pairAgrees } from './pairs.ts';
import { lastPlace } from './printed-digits.ts';
import type { Difference, Limit, Quantity, UnitName } from './types.ts';
import { type ExactWindow, exactWindow, type Window, window } from './window.ts';

/**
 * A quantity in a unit with so many digits after the point (fewer than none: tens, hundreds). 'nearest' takes the even
 * digit at a half. Null: the unit measures another kind.
 */
export function roundTo(quantity: Quantity, unit: UnitName, decimals: number, rounding: Rounding): Quantity | null {
  const value = convert(quantity, unit);
  return value === null ? null : { number: rounded(value, decimals, rounding), unit };
}

/**
 * A limit's window on a tool that shows whole steps (1 bar, 0.01 mm), in the step's unit. The low end rounds up and
 * the high end down, so that it never loosens (NIST SP 811, B.7); the nominal rounds to the nearest, the even step at
 * a half. The low end may come out over the high one: then no mark of the tool lies inside. Null: kinds differ, or
 * the step is not over nothing.
 */
export function windowInSteps(limit: Limit, step: Difference): Window | null {
  const size = decimalValue(step.number);
  if (size.compare(0) <= 0) return null;
  const exact = window(limit);
  const onStep = (quantity: Quantity | null, rounding: Rounding): Quantity | null | undefined => {
    if (quantity === null) return null;
    const value = convert(quantity, step.unit);
    if (value === null) return undefined;
    return { number: written(toStep(value, size, rounding), decimalsOf(step.number)), unit: step.unit };
  };
  const low = onStep(exact.low, 'up');
  const high = onStep(exact.high, 'down');
  const nominal = onStep(exact.nominal, 'nearest');
  return low === undefined || high === undefined || nominal === undefined ? null : { low, high, nominal };
}

/** Places tried beyond the first, until the rounded window keeps most of what the exact one lets through. */
const finerPlaces = 6;

/**
 * A limit in another unit, rounded so that it never loosens (NIST SP 811, B.7).
 *
 * Its last digit is the largest power of ten not over the finest digit that the author wrote, the second figure at
 * least, and finer while more than a quarter of the window or of a tolerance would be lost, or while the two would not
 * agree side by side (see `pairAgrees`). A tolerance in percent stays so where it is alone, and becomes one in the
 * unit beside a nominal. The pair in brackets is left out; a limit already in the unit comes back as it is.
 * Null: kinds differ, or the limit leaves nothing to round into (`5 bar +0 -0` in psi).
 */
export function inUnit(limit: Limit, unit: UnitName): Limit | null {
  if (quantitiesOf(limit).every((own) => own.unit === unit)) return limit;
  switch (limit.form) {
    case 'then': {
      const first = inUnit(limit.first, unit);
      return first?.form === 'nominal' ? { ...limit, first } : null;
    }
    case 'tolerance':
      return toleranceIn(limit.plus, limit.minus, unit);
    default:
      return limitIn(limit, unit);
  }
}

/** The forms that hold a value of their own and convert as one. */
type Convertible = Exclude<Limit, { form: 'tolerance' | 'then' }>;

function toleranceIn(plus: Difference, minus: Difference, unit: UnitName): Limit | null {
  const inward = (side: Difference): Difference | null => {
    if (side.unit === '%') return side;
    const value = convertDifference(side, unit);
    if (value === null) return null;
    const place = placeFor([side], unit);
    return { number: rounded(value, -place, 'down'), unit };
  };
  const [above, below] = [inward(plus), inward(minus)];
  return above === null || below === null ? null : { form: 'tolerance', plus: above, minus: below };
}

/** Power of ten of the last digit to print in a unit, from the finest digit among the numbers written. */
function placeFor(numbers: readonly (Quantity | Difference)[], unit: UnitName): number {
  const sizes = numbers.map((quantity) => powerBelow(convertDifference(lastDigit(quantity), unit)!));
  return Math.min(...sizes);
}

/** One of the last digit that a number means: 0.01 mm for 0.20 mm. */
function lastDigit({ number, unit }: Quantity | Difference): Difference {
  const place = lastPlace(number);
  return { number: written(tenTo(place), -place), unit };
}

/** The numbers of a limit that say how exactly it is meant; all measure its kind, with percent in its unit. */
function numbersOf(limit: Convertible): (Quantity | Difference)[] {
  switch (limit.form) {
    case 'nominal': {
      const sides = [limit.plus, limit.minus].filter(
        (side) => side !== null && !decimalValue(side.number).equals(0),
      ) as Difference[];
      return [
        limit.nominal,
        ...sides.map((side) => (side.unit === '%' ? inPlaceOfPercent(side, limit.nominal) : side)),
      ];
    }
    case 'range':
      return [limit.low, limit.high];
    case 'at least':
      return [limit.least];
    case 'at most':
      return [limit.most];
  }
}

/** A number in the nominal's unit as fine as the last digit of the percent. */
function inPlaceOfPercent(percent: Difference, nominal: Quantity): Quantity | Difference {
  if (nominal.unit === '%' || decimalValue(nominal.number).equals(0))
    return percent.unit === nominal.unit ? percent : nominal;
  const place = powerBelow(toleranceOf(nominal, lastDigit(percent))!);
  return { number: written(tenTo(place), -place), unit: nominal.unit };
}

function limitIn(limit: Convertible, unit: UnitName): Limit | null {
  const exact = exactWindow(limit, unit);
  if (exact === null) return null;
  const { low, high, nominal } = exact;
  const coarsest = Math.min(placeFor(numbersOf(limit), unit), ...[low, high, nominal].flatMap(placeOfSecondFigure));
  for (let place = coarsest; place >= coarsest - finerPlaces; place--) {
    const candidate = atPlace(limit, exact, place, unit);
    if (candidate !== null && pairAgrees({ ...limit, pair: candidate }) === null) return candidate;
  }
  return null;
}

/** The limit with its last digit at a place. Null: too much of it would be lost there. */
function atPlace(limit: Convertible, { low, high, nominal }: ExactWindow, place: number, unit: UnitName): Limit | null {
  const step = tenTo(place);
  const from = low === null ? null : toStep(low, step, 'up');
  const to = high === null ? null : toStep(high, step, 'down');
  if (from !== null && to !== null && !keepsMost(to.sub(from), high!.sub(low!))) return null;
  const text = (value: Fraction) => ({ number: written(value, -place), unit });
  switch (limit.form) {
    case 'range':
      return { form: 'range', low: text(from!), high: text(to!) };
    case 'at least':
      return { form: 'at least', least: text(from!) };
    case 'at most':
      return { form: 'at most', most: text(to!) };
    case 'nominal': {
      const middle = inside(toStep(nominal!, step, 'nearest'), from, to);
      if (from !== null && !keepsMost(middle.sub(from), nominal!.sub(low!))) return null;
      if (to !== null && !keepsMost(to.sub(middle), high!.sub(nominal!))) return null;
      return {
        form: 'nominal',
        nominal: text(middle),
        plus: to === null ? null : text(to.sub(middle)),
        minus: from === null ? null : text(middle.sub(from)),
      };
    }
  }
}

/** Two figures are always kept: 3 lbf·ft would become 50 kgf·cm as a minimum, where 42 will do. */
function placeOfSecondFigure(value: Fraction | null): number[] {
  return value === null || value.equals(0) ? [] : [powerBelow(value.abs()) - 1];
}

/** Three quarters at least are left of a width. */
function keepsMost(kept: Fraction, exact: Fraction): boolean {
  return kept.compare(0) >= 0 && kept.mul(4).compare(exact.mul(3)) >= 0;
}

/** The nominal is kept inside its own window, or one tolerance would turn negative. */
function inside(nominal: Fraction, from: Fraction | null, to: Fraction | null): Fraction {
  if (from !== null && nominal.compare(from) < 0) return from;
  if (to !== null && nominal.compare(to) > 0) return to;
  return nominal;
}
