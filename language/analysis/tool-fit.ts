import type Fraction from 'fraction.js';
import { permissibleError } from '../engineering/tool-error.ts';
import type { Asset } from '../model/shop.ts';
import { decimalValue } from '../quantities/decimal.ts';
import { asDifference, between, convertDifference, exactWindow, kindOfUnit, window } from '../quantities/index.ts';
import type { Difference, Kind, Limit, UnitName } from '../quantities/types.ts';

/** Play, run-out, drag: with an upper end only, what is let through begins at nothing. */
const fromNothing: ReadonlySet<Kind> = new Set<Kind>(['length', 'force', 'torque', 'resistance']);

export interface Width {
  readonly width: Difference;
  /** An end on either side; else from nothing up. */
  readonly twoEnds: boolean;
}

/** The width of what a limit lets through. Null: it is open on a side. */
export function widthOf(limit: Limit): Width | null {
  const { low, high } = window(limit);
  if (high === null) return null;
  if (low === null)
    return fromNothing.has(kindOfUnit(high.unit)) ? { width: asDifference(high), twoEnds: false } : null;
  const width = between(high, low);
  return width === null || width.number.startsWith('-') ? null : { width, twoEnds: true };
}

/** What a tool is good for at a limit that it reads, and how often that goes into half of its width. */
export interface Fit extends Width {
  readonly error: Difference;
  /** Half the width over the error; null: the tool has none. */
  readonly ratio: Fraction | null;
}

/** Null: the limit has no width, or the shop does not say what the tool is good for. */
export function fitOf(asset: Asset, limit: Limit): Fit | null {
  const room = widthOf(limit);
  const error = room === null ? null : permissibleError(asset, window(limit).high!);
  const width = room === null || error === null ? null : exactWidth(limit, error.unit);
  if (room === null || error === null || width === null) return null;
  const size = decimalValue(error.number);
  return { ...room, error, ratio: size.equals(0) ? null : width.div(2).div(size) };
}

/** The width of a limit in a unit, with nothing cut: at an equal bound the last digit would decide. Null: it has none. */
export function exactWidth(limit: Limit, unit: UnitName): Fraction | null {
  const room = widthOf(limit);
  const exact = room === null ? null : exactWindow(limit, unit);
  if (room === null || exact === null) return null;
  return exact.low === null ? convertDifference(room.width, unit) : exact.high!.sub(exact.low);
}

/**
 * Whether a wrench's error fits inside the limits of a torque, set where it fits best: for an error in per cent there
 * is a setting s with low ≤ s·(1 − e) and s·(1 + e) ≤ high. A limit that is open on a side has one always.
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

/** The least that can be told apart: half a mark of a scale, a whole digit of a display. Null: the shop says no marks. */
export function readable({ graduated, digital }: Asset): Fraction | null {
  return graduated === null ? null : decimalValue(graduated.number).div(digital ? 1 : 2);
}
