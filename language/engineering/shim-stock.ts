import Fraction from 'fraction.js';
import { amount, kindOfUnit, sizeOf } from '../quantities/index.ts';
import type { Figure, Quantity } from '../quantities/types.ts';

/**
 * What one meter more of shim brings, in the base unit of what it sets: `figure / per` of a rate written in two
 * (`3 bar per 0.001 in`), or the figure itself (`96 bar per mm`). Null: it is no rate of a shim.
 */
export function shimRate(figure: Figure, per: Quantity | null): Fraction | null {
  if (per === null) return kindOfUnit(figure.unit) === 'setting rate' ? sizeOf(figure) : null;
  return kindOfUnit(per.unit) === 'length' && amount(per).compare(0) > 0 ? sizeOf(figure).div(amount(per)) : null;
}

/** What there is to choose from. */
export interface Drawer {
  readonly sizes: readonly Quantity[];
  /** How many there are of each size; null: as many as are wanted. */
  readonly counts: readonly (number | null)[];
  /** Whether two of them may be stacked where one is needed. */
  readonly stacks: boolean;
}

/** More sums than any drawer asks for: beyond, its stacks are not worked out one by one. */
const mostStacks = 20_000;

/**
 * All thicknesses that one shim of each drawer makes together, in meters, thinnest first; two of a drawer where it
 * stacks them, and never more of a size than there are. A drawer that is named twice gives two. Null: more than can be
 * looked through.
 */
export function stackedSizes(drawers: readonly Drawer[]): Fraction[] | null {
  let sums: Fraction[] = [];
  for (const [index, drawer] of [...new Set(drawers)].entries()) {
    const wanted = drawers.filter((other) => other === drawer).length;
    const own = ownStacks(drawer, wanted, drawer.stacks ? 2 * wanted : wanted);
    if (own === null || (index > 0 && sums.length * own.length > mostStacks)) return null;
    sums = index === 0 ? own : once(sums.flatMap((sum) => own.map((size) => sum.add(size))));
  }
  return sums;
}

/** What so many shims of one drawer make, from the least number to the most. Null: more than can be looked through. */
function ownStacks({ sizes, counts }: Drawer, least: number, most: number): Fraction[] | null {
  const there = sizes.flatMap((size, index) => {
    const count = counts[index] ?? most;
    return count === 0 ? [] : [{ size: amount(size), count: Math.min(count, most) }];
  });
  if (most === 1) return once(there.map(({ size }) => size));
  const even = evenSums(there, least, most);
  if (even !== null) return even;
  // Sums by the number of shims in them; of each further size none, one, or as many as there are.
  const made: Map<string, Fraction>[] = Array.from({ length: most + 1 }, () => new Map());
  made[0]!.set('0', new Fraction(0));
  let tried = 0;
  for (const { size, count } of there) {
    // From the most shims down, so that what a size has been added to is without it.
    for (let shims = most; shims > 0; shims--) {
      for (let copies = 1; copies <= Math.min(count, shims); copies++) {
        for (const sum of made[shims - copies]!.values()) {
          if (++tried > mostStacks) return null;
          const thickness = sum.add(size.mul(copies));
          made[shims]!.set(thickness.toFraction(), thickness);
        }
      }
    }
  }
  return once(made.slice(least).flatMap((sums) => [...sums.values()]));
}

/** What so many shims of a drawer with even steps make, where it has enough of each: even steps again. Null: it is none such. */
function evenSums(
  there: readonly { readonly size: Fraction; readonly count: number }[],
  least: number,
  most: number,
): Fraction[] | null {
  const sizes = once(there.map(({ size }) => size));
  const [first, second] = sizes;
  if (first === undefined || second === undefined || there.some(({ count }) => count < most)) return null;
  const step = second.sub(first);
  if (sizes.some((size, place) => !size.equals(first.add(step.mul(place))))) return null;
  const numbers = Array.from({ length: most - least + 1 }, (_, more) => least + more);
  return once(
    numbers.flatMap((shims) =>
      Array.from({ length: (sizes.length - 1) * shims + 1 }, (_, place) => first.mul(shims).add(step.mul(place))),
    ),
  );
}

/** Each thickness once, thinnest first. */
function once(sizes: readonly Fraction[]): Fraction[] {
  const sorted = [...sizes].sort((a, b) => a.compare(b));
  return sorted.filter((size, place) => place === 0 || size.compare(sorted[place - 1]!) !== 0);
}

/** The thickest that one shim of a drawer makes, or two where it stacks them, in meters. Null: there is none. */
export function thickest({ sizes, counts, stacks }: Drawer): Fraction | null {
  const there = sizes.flatMap((size, index) => Array<Fraction>(Math.min(counts[index] ?? 2, 2)).fill(amount(size)));
  const top = there.sort((a, b) => a.compare(b)).slice(stacks ? -2 : -1);
  return top.length === 0 ? null : top.reduce((sum, size) => sum.add(size));
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
