import type Fraction from 'fraction.js';
import { permissibleError } from '../calculations/tool-error.ts';
import type { Asset } from '../model/shop.ts';
import { decimalValue } from '../quantities/decimal.ts';
import { convertDifference, kindOfUnit, sub, window } from '../quantities/index.ts';
import type { Kind, Limit, Quantity } from '../quantities/types.ts';

/** Play, run-out, drag: with an upper end only, what is let through begins at nothing. */
const fromNothing: ReadonlySet<Kind> = new Set<Kind>(['length', 'force', 'torque', 'resistance']);

export interface Width {
  readonly width: Quantity;
  /** An end on either side; else from nothing up. */
  readonly twoEnds: boolean;
}

/** The width of what a limit lets through. Null: it is open on a side. */
export function widthOf(limit: Limit): Width | null {
  const { low, high } = window(limit);
  if (high === null) return null;
  if (low === null) return fromNothing.has(kindOfUnit(high.unit)) ? { width: high, twoEnds: false } : null;
  const width = sub(high, low);
  return width === null || width.number.startsWith('-') ? null : { width, twoEnds: true };
}

/** What a tool is good for at a limit that it reads, and how often that goes into half of its width. */
export interface Fit extends Width {
  readonly error: Quantity;
  /** Half the width over the error; null: the tool has none. */
  readonly ratio: Fraction | null;
}

/** Null: the limit has no width, or the shop does not say what the tool is good for. */
export function fitOf(asset: Asset, limit: Limit): Fit | null {
  const room = widthOf(limit);
  const error = room === null ? null : permissibleError(asset, window(limit).high!);
  const size = room === null || error === null ? null : convertDifference(error, room.width.unit);
  if (room === null || error === null || size === null) return null;
  const half = decimalValue(room.width.number).div(2);
  return { ...room, error, ratio: size.equals(0) ? null : half.div(size) };
}

/**
 * Whether a wrench's error fits inside the limits of a torque, set where it fits best: for an error in per cent there
 * is a setting s with low ≤ s·(1 − e) and s·(1 + e) ≤ high. A limit that is open on a side has one always.
 */
export function settingFits(asset: Asset, limit: Limit): boolean {
  const { low, high } = window(limit);
  if (asset.within === null || low === null || high === null) return true;
  const [from, to] = [convertDifference(low, high.unit), decimalValue(high.number)];
  if (from === null) return true;
  if (asset.within.unit === '%') {
    const error = decimalValue(asset.within.number).div(100);
    return from.mul(error.add(1)).compare(to.mul(error.neg().add(1))) <= 0;
  }
  const error = convertDifference(asset.within, high.unit);
  return error === null || to.sub(from).compare(error.mul(2)) >= 0;
}

/** The least that can be told apart: half a mark of a scale, a whole digit of a display. Null: the shop says no marks. */
export function readable({ graduated, digital }: Asset): Fraction | null {
  return graduated === null ? null : decimalValue(graduated.number).div(digital ? 1 : 2);
}
