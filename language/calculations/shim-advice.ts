import normalCdf from '@stdlib/stats-base-dists-normal-cdf';
import type Fraction from 'fraction.js';
import { amount, sizeOf } from '../quantities/index.ts';
import type { Difference, Quantity } from '../quantities/types.ts';
import { base, quantityOf } from './measured.ts';

/** A thickness in the drawer, and how many there are of it; null: as many as are wanted. */
export interface Shim {
  readonly thickness: Quantity;
  readonly count: number | null;
}

export interface ShimQuestion {
  /** What the unit reads with the shim that is in. */
  readonly reading: Quantity;
  readonly now: Quantity;
  readonly low: Quantity;
  readonly high: Quantity;
  /** Where it should land; the middle of the window where none is given. */
  readonly aim: Quantity | null;
  /** Setting rate, over nothing. */
  readonly rate: Quantity;
  /** Standard error of the rate, where it is known. */
  readonly rateError: Quantity | null;
  /** Standard deviation of one reading about the next of the same build, where it is known. */
  readonly scatter: Quantity | null;
  /** What a new spring will lose by settling: it must read so much more than the low end, and no more than the high one. */
  readonly settling: Difference | null;
  readonly drawer: readonly Shim[];
  /** Whether two shims may lie on each other. */
  readonly stacks: boolean;
}

/** What is to be fitted, and what to expect of it. */
export interface ShimChoice {
  /** One shim, or two on each other. */
  readonly shims: readonly Quantity[];
  /** What the gauge should show, before a new spring has settled. */
  readonly expected: Quantity;
  /** Where 95 of 100 readings fall; the same as expected where nothing is known of the doubt. */
  readonly low: Quantity;
  readonly high: Quantity;
  /** That it lands in the window, 0 to 1. */
  readonly probability: number;
}

/** Why nothing fits: the drawer ends before the window, or goes past it in one step; the spring loses more than it is wide. */
export type NothingFits =
  | { readonly reason: 'empty' | 'settles out' }
  | { readonly reason: 'too thin' | 'too thick'; readonly nearest: ShimChoice }
  | { readonly reason: 'too coarse'; readonly under: ShimChoice; readonly over: ShimChoice };

export type ShimAdvice = { readonly choice: ShimChoice } | { readonly nothing: NothingFits };

/** Two-sided 95 % of the normal distribution, in standard deviations. */
const ninetyFive = 1.959964;

interface Candidate {
  readonly shims: readonly Quantity[];
  readonly expected: Fraction;
  readonly doubt: number;
  readonly probability: number;
}

/**
 * The shim, or two, that most surely lands in the window: `expected = reading + rate · (shim − now)`, at least `low +
 * settling` and at most `high`, with the doubt `√((shim − now)² · rate error² + 2 · scatter²)`, since the reading before and the reading after both scatter.
 * Of those that are as sure, the nearest to the aim; of those, one shim before two. Expected pressures are exact.
 */
export function shimAdvice(question: ShimQuestion): ShimAdvice {
  const { low, high } = windowOf(question);
  if (low.compare(high) > 0) return { nothing: { reason: 'settles out' } };
  const aim = question.aim === null ? low.add(high).div(2) : amount(question.aim).add(lossOf(question));
  const candidates = stacksOf(question).map((shims) => candidate(shims, question));
  if (candidates.length === 0) return { nothing: { reason: 'empty' } };
  const off = (one: Candidate) => one.expected.sub(aim).abs();
  const before = (a: Candidate, b: Candidate) =>
    b.probability - a.probability || off(a).compare(off(b)) || a.shims.length - b.shims.length;
  const shown = (one: Candidate) => choice(one, question);
  const inside = candidates.filter(({ expected }) => expected.compare(low) >= 0 && expected.compare(high) <= 0);
  if (inside.length > 0) return { choice: shown(inside.sort(before)[0]!) };
  const rising = candidates.sort((a, b) => a.expected.compare(b.expected) || a.shims.length - b.shims.length);
  const under = rising.filter(({ expected }) => expected.compare(low) < 0);
  const over = rising.filter(({ expected }) => expected.compare(high) > 0);
  if (over.length === 0) return { nothing: { reason: 'too thin', nearest: shown(highest(under)) } };
  if (under.length === 0) return { nothing: { reason: 'too thick', nearest: shown(over[0]!) } };
  return { nothing: { reason: 'too coarse', under: shown(highest(under)), over: shown(over[0]!) } };
}

/** What the gauge may show: a new spring loses some of it afterwards. */
function windowOf(question: ShimQuestion) {
  return { low: amount(question.low).add(lossOf(question)), high: amount(question.high) };
}

function lossOf({ settling, low }: ShimQuestion): Fraction {
  return settling === null ? amount(low).mul(0) : sizeOf(settling);
}

/** The highest, with as few shims as it takes. */
function highest(rising: readonly Candidate[]): Candidate {
  const top = rising.at(-1)!.expected;
  return rising.find(({ expected }) => expected.equals(top))!;
}

function stacksOf({ drawer, stacks }: ShimQuestion): Quantity[][] {
  const there = drawer.filter(({ count }) => count === null || count > 0);
  const single = there.map(({ thickness }) => [thickness]);
  if (!stacks) return single;
  const pairs = there.flatMap((one, index) =>
    there
      .slice(index)
      .flatMap((two) => (one !== two || one.count === null || one.count > 1 ? [[one.thickness, two.thickness]] : [])),
  );
  return [...single, ...pairs];
}

function candidate(shims: readonly Quantity[], question: ShimQuestion): Candidate {
  const { reading, now, rate, rateError, scatter } = question;
  const { low, high } = windowOf(question);
  const change = shims.reduce((sum, shim) => sum.add(amount(shim)), amount(now).neg());
  const expected = amount(reading).add(amount(rate).mul(change));
  const doubt = Math.hypot(
    change.valueOf() * (rateError === null ? 0 : base(rateError)),
    Math.SQRT2 * (scatter === null ? 0 : base(scatter)),
  );
  const inside = expected.compare(low) >= 0 && expected.compare(high) <= 0;
  const probability =
    doubt === 0
      ? Number(inside)
      : normalCdf(high.valueOf(), expected.valueOf(), doubt) - normalCdf(low.valueOf(), expected.valueOf(), doubt);
  return { shims, expected, doubt, probability };
}

function choice({ shims, expected, doubt, probability }: Candidate, { low }: ShimQuestion): ShimChoice {
  const at = (shift: number) => quantityOf(expected.valueOf() + shift * doubt, low.unit)!;
  return { shims, expected: at(0), low: at(-ninetyFive), high: at(ninetyFive), probability };
}
