import normalCdf from '@stdlib/stats-base-dists-normal-cdf';
import type Fraction from 'fraction.js';
import type { DecisionRule } from '../model/shop.ts';
import { decimalValue, exactText, toStep } from '../quantities/decimal.ts';
import { convert, convertDifference } from '../quantities/index.ts';
import type { Difference, Quantity, UnitName } from '../quantities/types.ts';
import type { Window } from '../quantities/window.ts';
import { base, baseDifference } from './measured.ts';

/** The share `r` of the uncertainty by which a limit is drawn in, as exact digits. */
const shares: Readonly<Record<DecisionRule, string>> = { simple: '0', guarded: '0.83', 'fully guarded': '1' };

/** By how much of the uncertainty a rule draws a limit in. */
export function shareOf(rule: DecisionRule): number {
  return Number(shares[rule]);
}

/**
 * What a tool may show so that the true value is inside the window: each end drawn in by `r · U`, then to the marks of
 * the tool, the low end up and the high end down. In the unit of the marks, or of the scale where it has none. `shut`: nothing
 * that it shows would do. Null: window, error and marks are not of one kind, or a mark is not over nothing.
 */
export function acceptance(
  { low, high, nominal }: Window,
  error: Difference,
  rule: DecisionRule,
  mark: Difference | null,
  scale: UnitName = error.unit,
): { readonly window: Window; readonly shut: boolean } | null {
  // Marks are counted from the zero of their own unit.
  const unit = mark?.unit ?? scale;
  const size = convertDifference(error, unit);
  const step = mark === null ? null : decimalValue(mark.number);
  if (size === null || (step !== null && step.compare(0) <= 0)) return null;
  const band = size.abs().mul(decimalValue(shares[rule]));
  const drawn = (end: Quantity | null, side: 1 | -1): Fraction | null | undefined => {
    if (end === null) return null;
    const value = convert(end, unit);
    if (value === null) return undefined;
    const guarded = value.add(band.mul(side));
    return step === null ? guarded : toStep(guarded, step, side === 1 ? 'up' : 'down');
  };
  const [from, to] = [drawn(low, 1), drawn(high, -1)];
  if (from === undefined || to === undefined) return null;
  const text = (value: Fraction | null, side: 'up' | 'down'): Quantity | null =>
    value === null ? null : { number: exactText(value, 0, side), unit };
  return {
    window: { low: text(from, 'up'), high: text(to, 'down'), nominal },
    shut: from !== null && to !== null && from.compare(to) > 0,
  };
}

/**
 * Probability that a unit just at the limit, in truth outside, is read as good: `Φ(−2r)` for a guard of `r` expanded
 * uncertainties, one side. 0.5 with no guard.
 */
export function falseAccept(share: number): number {
  return normalCdf(-2 * share, 0, 1);
}

/**
 * Probability that the true value is inside the window, of a reading with its standard uncertainty, both errors
 * normal and nothing known of the unit before (JCGM 106:2012, 7). Null: there is no uncertainty, or it is no number.
 */
export function conformance({ low, high }: Pick<Window, 'low' | 'high'>, reading: Quantity, uncertainty: Difference) {
  const [at, u] = [base(reading), baseDifference(uncertainty)];
  if (!(u > 0) || !Number.isFinite(at)) return null;
  const under = high === null ? 1 : normalCdf(base(high), at, u);
  return under - (low === null ? 0 : normalCdf(base(low), at, u));
}
