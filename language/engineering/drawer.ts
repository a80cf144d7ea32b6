import Fraction from 'fraction.js';
import { amount } from '../quantities/index.ts';
import type { Quantity } from '../quantities/types.ts';
import type { Drawer } from './shim-stock.ts';

/** A size with at least one in the drawer. */
export interface Piece {
  readonly thickness: Quantity;
  /** Thickness in ticks of its drawer. */
  readonly ticks: bigint;
  /** How many there are; null: as many as are wanted. */
  readonly count: number | null;
}

/** A drawer made ready to be searched: sizes in whole ticks, thinnest first, so that comparing them is exact and quick. */
export interface DrawerLayout {
  readonly pieces: readonly Piece[];
  /** Ticks in a meter. */
  readonly perMetre: bigint;
  readonly stacks: boolean;
  /** What the total may never pass, in ticks; null: nothing is said. */
  readonly most: bigint | null;
}

/** What lies in the unit: one shim, or two on each other. */
export interface Total {
  readonly ticks: bigint;
  readonly shims: readonly Quantity[];
}

/** @param most limit of use of the total thickness: `never above 1.90 mm` */
export function layOut({ sizes, counts, stacks }: Drawer, most: Quantity | null): DrawerLayout {
  const there = sizes.flatMap((thickness, index) => {
    const count = counts[index] ?? null;
    return count === 0 ? [] : [{ thickness, size: amount(thickness), count }];
  });
  const perMetre = there.reduce((all, { size }) => leastCommon(all, size.d), 1n);
  const pieces = there
    .map(({ thickness, size, count }) => ({ thickness, ticks: (size.s * size.n * perMetre) / size.d, count }))
    .sort((a, b) => Number(a.ticks - b.ticks));
  return { pieces, perMetre, stacks, most: most === null ? null : ticksOf(amount(most), perMetre, 'down') };
}

/** A length in meters as whole ticks. */
export function ticksOf(metres: Fraction, perMetre: bigint, rounding: 'up' | 'down'): bigint {
  const exact = metres.mul(new Fraction(perMetre));
  const whole = rounding === 'up' ? exact.ceil() : exact.floor();
  return whole.s * whole.n;
}

/** The thickest that can be made and is no more than so many ticks (null: no end to it). Null: there is none. */
export function thickestTo({ pieces, stacks, most }: DrawerLayout, end: bigint | null): Total | null {
  const top = most === null ? end : end === null || end > most ? most : end;
  const place = top === null ? pieces.length : placeOver(pieces, top);
  let best: Total | null = place === 0 ? null : single(pieces[place - 1]!);
  if (!stacks) return best;
  for (let [thin, thick] = [0, pieces.length - 1]; thin <= thick; ) {
    const [a, b] = [pieces[thin]!, pieces[thick]!];
    if (top !== null && a.ticks + b.ticks > top) thick--;
    else {
      if ((best === null || a.ticks + b.ticks > best.ticks) && mayPair(a, b)) best = double(a, b);
      thin++;
    }
  }
  return best;
}

/** The thinnest that can be made and is no less than so many ticks. Null: there is none. */
export function thinnestFrom({ pieces, stacks, most }: DrawerLayout, start: bigint): Total | null {
  const next = pieces[placeOver(pieces, start - 1n)];
  let best: Total | null = next === undefined ? null : single(next);
  if (stacks) {
    for (let [thin, thick] = [0, pieces.length - 1]; thin <= thick; ) {
      const [a, b] = [pieces[thin]!, pieces[thick]!];
      if (a.ticks + b.ticks < start) thin++;
      else {
        if ((best === null || a.ticks + b.ticks < best.ticks) && mayPair(a, b)) best = double(a, b);
        thick--;
      }
    }
  }
  return best === null || (most !== null && best.ticks > most) ? null : best;
}

/** The same drawer with these shims taken out. */
export function without(laid: DrawerLayout, shims: readonly Quantity[]): DrawerLayout {
  const pieces = laid.pieces.flatMap((piece) => {
    const taken = shims.filter((shim) => shim === piece.thickness).length;
    if (piece.count === null || taken === 0) return piece;
    return piece.count > taken ? { ...piece, count: piece.count - taken } : [];
  });
  return { ...laid, pieces };
}

/** A size alone may be fitted twice only if there are two of it. */
function mayPair(a: Piece, b: Piece): boolean {
  return a !== b || a.count === null || a.count > 1;
}

function single({ ticks, thickness }: Piece): Total {
  return { ticks, shims: [thickness] };
}

function double(a: Piece, b: Piece): Total {
  return { ticks: a.ticks + b.ticks, shims: [a.thickness, b.thickness] };
}

/** Place of the first piece that is thicker. */
function placeOver(pieces: readonly Piece[], ticks: bigint): number {
  let [from, to] = [0, pieces.length];
  while (from < to) {
    const middle = (from + to) >> 1;
    if (pieces[middle]!.ticks <= ticks) from = middle + 1;
    else to = middle;
  }
  return from;
}

function leastCommon(a: bigint, b: bigint): bigint {
  let [x, y] = [a, b];
  while (y !== 0n) [x, y] = [y, x % y];
  return (a / x) * b;
}
