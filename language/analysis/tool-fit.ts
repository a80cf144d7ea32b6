import type Fraction from 'fraction.js';
import { permissibleError } from '../engineering/tool-error.ts';
import type { Asset } from '../model/shop.ts';
import { decimalValue } from '../quantities/decimal.ts';
import { asDifference, between, convertDifference, exactWindow, kindOfUnit, window } from '../quantities/index.ts';
import type { Difference, Kind, Limit, UnitName } from '../quantities/types.ts';

/** Play, run-out, drag: with only an upper end, the window begins at zero. */
const fromNothing: ReadonlySet<Kind> = new Set<Kind>(['length', 'force', 'torque', 'resistance']);

export interface Width {
  readonly width: Difference;
  /** Both ends are given; otherwise the window begins at zero. */
  readonly twoEnds: boolean;
}

/** The width of the window of a limit. Null if it is open on one side. */
export function widthOf(limit: Limit): Width | null {
  const { low, high } = window(limit);
  if (high === null) return null;
  if (low === null)
    return fromNothing.has(kindOfUnit(high.unit)) ? { width: asDifference(high), twoEnds: false } : null;
  const width = between(high, low);
  return width === null || width.number.startsWith('-') ? null : { width, twoEnds: true };
}

/** The error of a tool at a limit that it reads, and how often that error goes into half of the limit's width. */
export interface Fit extends Width {
  readonly error: Difference;
  /** Half the width divided by the error; null if the tool has no error. */
  readonly ratio: Fraction | null;
}

/** Null if the limit has no width, or the shop does not state the tool's error. */
export function fitOf(asset: Asset, limit: Limit): Fit | null {
  const room = widthOf(limit);
  const error = room === null ? null : permissibleError(asset, window(limit).high!);
  const width = room === null || error === null ? null : exactWidth(limit, error.unit);
  if (room === null || error === null || width === null) return null;
  const size = decimalValue(error.number);
  return { ...room, error, ratio: size.equals(0) ? null : width.div(2).div(size) };
}

/** The exact width of a limit in a unit: at an equal bound the last digit would decide. Null if it has none. */
export function exactWidth(limit: Limit, unit: UnitName): Fraction | null {
  const room = widthOf(limit);
  const exact = room === null ? null : exactWindow(limit, unit);
  if (room === null || exact === null) return null;
  return exact.low === null ? convertDifference(room.width, unit) : exact.high!.sub(exact.low);
}

/**
 * Whether a wrench's error fits inside the limits of a torque, at the best setting: for an error in percent there is a
 * setting s with low ≤ s·(1 − e) and s·(1 + e) ≤ high. A limit that is open on one side always has one.
 */
export function settingFits(asset: Asset, limit: Limit): boolean {
  const unit = window(limit).high?.unit;
  const exact = unit === undefined ? null : exactWindow(limit, unit);
  if (asset.within === null || unit === undefined || exact === null) return true;
  const { low: from, high: to } = exact;
  if (from === null || to === null) return true;
  if (asset.within.unit === '%') {
    const error = decimalValue(asset.within.number).div(100);
    return from.mul(error.add(1)).compare(to.mul(error.neg().add(1))) <= 0;
  }
  const error = convertDifference(asset.within, unit);
  return error === null || to.sub(from).compare(error.mul(2)) >= 0;
}

/** The finest step that can be read: half a mark of a scale, a whole digit of a display. Null if no marks are stated. */
export function readable({ graduated, digital }: Asset): Fraction | null {
  return graduated === null ? null : decimalValue(graduated.number).div(digital ? 1 : 2);
}
