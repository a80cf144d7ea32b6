import normalCdf from '@stdlib/stats-base-dists-normal-cdf';
import Fraction from 'fraction.js';
import { amount, sizeOf, unitOf } from '../quantities/index.ts';
import type { Difference, Quantity } from '../quantities/types.ts';
import { type DrawerLayout, type Total, thickestTo, thinnestFrom, ticksOf } from './drawer.ts';
import { quantityOf } from './measured.ts';

export interface ShimQuestion {
  /** What the unit reads with the shim that is in. */
  readonly reading: Quantity;
  readonly now: Quantity;
  /** Ends of the window; one of them may be open where there is an aim. */
  readonly low: Quantity | null;
  readonly high: Quantity | null;
  /** Where it should land; what lands most surely where none is given. */
  readonly aim: Quantity | null;
  /** What a meter more of shim brings, in the base unit of the reading; over nothing. */
  readonly rate: Fraction;
  /** Standard error of the rate, where it is known. */
  readonly rateError: Fraction | null;
  /** Standard deviation of one reading about the next of the same build, where it is known. */
  readonly scatter: Difference | null;
  /** Standard uncertainty of a reading from the marks that it is read on, where they are known. */
  readonly resolution: Difference | null;
  /** What the tool may be off: no aim lies nearer to an end than that. */
  readonly guard: Difference | null;
  /** What a new spring will lose by settling: it must read so much more than the low end, and no more than the high one. */
  readonly settling: Difference | null;
  readonly drawer: DrawerLayout;
}

/** What is to be fitted, and what to expect of it. */
export interface ShimChoice {
  /** One shim, or two on each other. */
  readonly shims: readonly Quantity[];
  /** What the gauge should show, before a new spring has settled. */
  readonly expected: Quantity;
  /** Where 95 of 100 readings fall; the same as expected where neither the rate's error nor the scatter is known. */
  readonly low: Quantity;
  readonly high: Quantity;
  /** That it lands in the window, 0 to 1. */
  readonly probability: number;
}

/**
 * Why nothing fits: the drawer (or the limit of use) ends before the window, begins behind it, or goes past it in one
 * step; the spring loses more than the window is wide; by these figures a shim would bring less than nothing.
 */
export type NothingFits =
  | { readonly reason: 'empty' | 'settles out' | 'absurd' }
  | { readonly reason: 'too thin'; readonly nearest: ShimChoice; readonly held: boolean }
  | { readonly reason: 'too thick'; readonly nearest: ShimChoice }
  | { readonly reason: 'too coarse'; readonly under: ShimChoice; readonly over: ShimChoice };

export type ShimAdvice = { readonly choice: ShimChoice } | { readonly nothing: NothingFits };

/** Two-sided 95 % of the normal distribution, in standard deviations. */
const ninetyFive = 1.959964;
/** An aim is kept where so much at most lands outside the window; nothing less sure is aimed at while something surer is there. */
const risk = 0.05;
/** Halvings of the window: the place is known to a part in 10¹⁸ of it. */
const halvings = 60;

/**
 * The shim, or two, that is fitted next: `expected = reading + rate · (total − now)`, at least `low + settling` and at
 * most `high`, with the doubt `√((total − now)² · rate error² + 2 · (scatter² + resolution²))`, since the reading before
 * and the reading after both scatter. The nearest to the aim of those that land with 95 %; with no aim, or where none is
 * so sure, the surest. Of those that are alike one shim before two. Which shims are inside is exact.
 *
 * The chance of landing has one peak over the window: for a thicker shim `b′/|a′| = (2ks² + (low − r)e²c) / (2ks² +
 * (high − r)e²c)` falls with the change c, and `exp((b² − a²)/2)` rises, a and b being the distances to the ends in
 * standard deviations, k the rate and e its error, s the scatter. So the best total is one of the two beside the peak,
 * and a drawer is gone through a few times, never pair by pair.
 */
export function shimAdvice(question: ShimQuestion): ShimAdvice {
  const { drawer } = question;
  const { low, high } = windowOf(question);
  if (low !== null && high !== null && low.compare(high) > 0) return { nothing: { reason: 'settles out' } };
  const any = thickestTo(drawer, null);
  if (any === null) return { nothing: { reason: 'empty' } };
  const from = low === null ? drawer.pieces[0]!.ticks : ticksFor(question, low, 'up');
  const to = high === null ? any.ticks : ticksFor(question, high, 'down');
  const found = bestIn(question, from, to);
  const [under, over] = [thickestTo(drawer, from - 1n), thinnestFrom(drawer, to + 1n)];
  const shown = (found === null ? [under, over] : [found]).map((one) => one && choiceOf(one, question));
  if (shown.includes('absurd')) return { nothing: { reason: 'absurd' } };
  const [first, second] = shown as (ShimChoice | null)[];
  if (found !== null) return { choice: first! };
  if (second == null) {
    const held = drawer.most !== null && thinnestFrom({ ...drawer, most: null }, from) !== null;
    return { nothing: { reason: 'too thin', nearest: first!, held } };
  }
  if (first == null) return { nothing: { reason: 'too thick', nearest: second } };
  return { nothing: { reason: 'too coarse', under: first, over: second } };
}

/** Where to aim: the aim of the question, no nearer to an end of the window than the tool and the scatter allow; null: the surest. */
export function safeAim(question: ShimQuestion): Fraction | null {
  const { aim } = question;
  if (aim === null) return null;
  const { low, high } = windowOf(question);
  const wanted = amount(aim).add(lossOf(question));
  const room = roomAt(question, wanted);
  const least = low?.add(room) ?? null;
  const most = high?.sub(room) ?? null;
  if (least !== null && most !== null && least.compare(most) > 0) return low!.add(high!).div(2);
  if (least !== null && wanted.compare(least) < 0) return least;
  return most !== null && wanted.compare(most) > 0 ? most : wanted;
}

/** How far from an end a reading is kept that is expected there: what the tool may be off, and two standard deviations. */
export function roomAt(question: ShimQuestion, expected: Fraction): Fraction {
  const { guard } = question;
  const room = Math.hypot(guard === null ? 0 : size(guard), 2 * doubtAt(question)(expected.valueOf()));
  return Number.isFinite(room) ? fractionOf(room) : new Fraction(0);
}

/** A number as it is, without the detour over its digits: those of a cubic millimeter in cubic meters have a power of ten. */
function fractionOf(value: number): Fraction {
  let [whole, parts] = [value, 1n];
  for (; !Number.isInteger(whole); whole *= 2) parts *= 2n;
  return new Fraction(BigInt(whole), parts);
}

/** What the gauge may show: a new spring loses some of it afterwards. */
export function windowOf(question: ShimQuestion) {
  const { low, high } = question;
  return { low: low === null ? null : amount(low).add(lossOf(question)), high: high === null ? null : amount(high) };
}

function lossOf({ settling }: ShimQuestion): Fraction {
  return settling === null ? new Fraction(0) : sizeOf(settling);
}

/** Thickness of what brings the reading there, in ticks. */
function ticksFor({ reading, now, rate, drawer }: ShimQuestion, there: Fraction, rounding: 'up' | 'down'): bigint {
  return ticksOf(amount(now).add(there.sub(amount(reading)).div(rate)), drawer.perMetre, rounding);
}

/** What a total brings, exactly. */
export function expectedOf({ reading, now, rate, drawer }: ShimQuestion, { ticks }: Total): Fraction {
  return amount(reading).add(rate.mul(new Fraction(ticks, drawer.perMetre).sub(amount(now))));
}

/** Standard deviation of a reading that is expected at a place. It is needed at hundreds of places. */
function doubtAt({ reading, rate, rateError, scatter, resolution }: ShimQuestion): (expected: number) => number {
  const [read, perShim, error] = [amount(reading).valueOf(), rate.valueOf(), rateError?.valueOf() ?? 0];
  const each = Math.hypot(scatter === null ? 0 : size(scatter), resolution === null ? 0 : size(resolution));
  return (expected) => Math.hypot(((expected - read) / perShim) * error, Math.SQRT2 * each);
}

/** That a reading which is expected there falls outside, 0 to 1: small chances are distinguished to the last digit. */
function missesAt(question: ShimQuestion): (expected: number) => number {
  const { low, high } = windowOf(question);
  const [least, most] = [low?.valueOf() ?? null, high?.valueOf() ?? null];
  const doubtOf = doubtAt(question);
  return (expected) => {
    const doubt = doubtOf(expected);
    const beyond = (by: number) => (doubt === 0 ? Number(by > 0) : normalCdf(by / doubt, 0, 1));
    return (least === null ? 0 : beyond(least - expected)) + (most === null ? 0 : beyond(expected - most));
  };
}

/** The best total from so many ticks to so many. Null: there is none. */
function bestIn(question: ShimQuestion, from: bigint, to: bigint): Total | null {
  const { drawer } = question;
  const aim = safeAim(question);
  const [first, last] = [thinnestFrom(drawer, from), thickestTo(drawer, to)];
  if (first === null || last === null || first.ticks > to) return null;
  // What a real figure is, as a place among the ticks.
  const place = (there: number, rounding: 'up' | 'down') => {
    const exact =
      amount(question.now).valueOf() + (there - amount(question.reading).valueOf()) / question.rate.valueOf();
    const scaled = exact * Number(drawer.perMetre);
    const whole = BigInt(rounding === 'up' ? Math.ceil(scaled) : Math.floor(scaled));
    return whole < from ? from : whole > to ? to : whole;
  };
  const [least, most] = [first, last].map((one) => expectedOf(question, one).valueOf()) as [number, number];
  const [misses, doubtOf] = [missesAt(question), doubtAt(question)];
  if (misses(least) + misses(most) === 0 && doubtOf(least) + doubtOf(most) === 0)
    return nearest(question, aim ?? middleOf(question), from, to);
  // The nearest of all is mostly sure enough: then nothing is searched for.
  const next = aim === null ? null : nearest(question, aim, from, to);
  if (next !== null && misses(expectedOf(question, next).valueOf()) <= risk) return next;
  const peak = lowest(misses, least, most);
  if (aim !== null && misses(peak) <= risk) {
    const [low, high] = [edge(misses, peak, least), edge(misses, peak, most)];
    const sure = { from: low === least ? from : place(low, 'up'), to: high === most ? to : place(high, 'down') };
    const found = nearest(question, aim, sure.from, sure.to);
    if (found !== null) return found;
  }
  const beside = [thickestTo(drawer, place(peak, 'down')), thinnestFrom(drawer, place(peak, 'up')), first, last];
  const inside = beside.filter((one): one is Total => one !== null && one.ticks >= from && one.ticks <= to);
  const off = (one: Total) => misses(expectedOf(question, one).valueOf());
  return inside.reduce((best, one) => (off(one) < off(best) ? one : best));
}

/** The total whose reading is nearest to a place. Null: none is between the ends. */
function nearest(question: ShimQuestion, aim: Fraction, from: bigint, to: bigint): Total | null {
  const { drawer } = question;
  const [under, over] = [ticksFor(question, aim, 'down'), ticksFor(question, aim, 'up')];
  const below = thickestTo(drawer, under > to ? to : under);
  const above = thinnestFrom(drawer, over < from ? from : over);
  const off = (one: Total) => expectedOf(question, one).sub(aim).abs();
  const inside = [below, above].filter((one): one is Total => one !== null && one.ticks >= from && one.ticks <= to);
  const [one, two] = inside;
  if (one === undefined || two === undefined) return one ?? null;
  const nearer = off(one).compare(off(two)) || one.shims.length - two.shims.length;
  return nearer <= 0 ? one : two;
}

function middleOf(question: ShimQuestion): Fraction {
  const { low, high } = windowOf(question);
  return low !== null && high !== null ? low.add(high).div(2) : (low ?? high ?? amount(question.reading));
}

/** Where a function with one valley is lowest. */
function lowest(of: (place: number) => number, from: number, to: number): number {
  let [low, high] = [from, to];
  for (let times = 0; times < 2 * halvings && high > low; times++) {
    const third = (high - low) / 3;
    if (of(low + third) <= of(high - third)) high -= third;
    else low += third;
  }
  return (low + high) / 2;
}

/** How far from the peak toward an end the risk is kept. */
function edge(misses: (place: number) => number, peak: number, end: number): number {
  if (misses(end) <= risk) return end;
  let [inside, outside] = [peak, end];
  for (let times = 0; times < halvings; times++) {
    const middle = (inside + outside) / 2;
    if (misses(middle) <= risk) inside = middle;
    else outside = middle;
  }
  return inside;
}

/** `absurd`: less than nothing of what has a zero, or more than can be written out. */
function choiceOf(total: Total, question: ShimQuestion): ShimChoice | 'absurd' {
  const { rateError, scatter } = question;
  // As the hand reads it.
  const { unit } = question.reading;
  const expected = expectedOf(question, total).valueOf();
  const doubt = rateError === null && scatter === null ? 0 : doubtAt(question)(expected);
  const [at, low, high] = [0, -ninetyFive, ninetyFive].map((shift) => quantityOf(expected + shift * doubt, unit));
  if (at == null || low == null || high == null || (expected < 0 && unitOf(unit).offset.equals(0))) return 'absurd';
  return { shims: total.shims, expected: at, low, high, probability: 1 - missesAt(question)(expected) };
}

function size(difference: Difference): number {
  return sizeOf(difference).valueOf();
}
