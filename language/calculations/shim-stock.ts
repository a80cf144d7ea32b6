import type Fraction from 'fraction.js';
import { amount, kindOfUnit } from '../quantities/index.ts';
import type { Quantity } from '../quantities/types.ts';

/**
 * What one metre more of shim brings, in the base unit of what it sets: `figure / per` of a rate written in two
 * (`3 bar per 0.001 in`), or the figure itself (`96 bar per mm`). Null: it is no rate of a shim.
 */
export function shimRate(figure: Quantity, per: Quantity | null): Fraction | null {
  if (per === null) return kindOfUnit(figure.unit) === 'setting rate' ? amount(figure) : null;
  return kindOfUnit(per.unit) === 'length' && amount(per).compare(0) > 0 ? amount(figure).div(amount(per)) : null;
}

/** More thicknesses than any drawer has, of which the stacks are not worked out one by one. */
const mostStacks = 20_000;

/**
 * All thicknesses that one shim of each stock makes together, in metres, thinnest first. Null: more than can be
 * looked through.
 */
export function stackedSizes(stocks: readonly (readonly Quantity[])[]): Fraction[] | null {
  let sums: Fraction[] = [];
  for (const [index, sizes] of stocks.entries()) {
    const own = sizes.map(amount);
    if (index > 0 && sums.length * own.length > mostStacks) return null;
    const all = index === 0 ? own : sums.flatMap((sum) => own.map((size) => sum.add(size)));
    const sorted = all.sort((a, b) => a.compare(b));
    sums = sorted.filter((size, place) => place === 0 || size.compare(sorted[place - 1]!) !== 0);
  }
  return sums;
}

/** The widest step between one thickness and the next. Null: there is one only, or none. */
export function widestStep(sizes: readonly Fraction[]): { readonly from: Fraction; readonly to: Fraction } | null {
  let widest: { from: Fraction; to: Fraction } | null = null;
  for (let place = 1; place < sizes.length; place++) {
    const [from, to] = [sizes[place - 1]!, sizes[place]!];
    if (widest === null || to.sub(from).compare(widest.to.sub(widest.from)) > 0) widest = { from, to };
  }
  return widest;
}
