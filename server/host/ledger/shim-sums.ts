import type { RecordResult } from '../../../language/archive/record.ts';
import { decimalsOf } from '../../../language/quantities/decimal.ts';

/** What the readings of one unit say of its shim: sums about their means, which add up over units. */
export interface ShimSums {
  readonly points: number;
  /** Of millimeters with millimeters, of millimeters with readings, of readings with readings. */
  readonly xx: number;
  readonly xy: number;
  readonly yy: number;
  /** What the last digits cannot show: the variance of a figure that is rounded there, times the points. */
  readonly blurX: number;
  readonly blurY: number;
  /** Of the readings. */
  readonly unit: string;
}

/**
 * Null: fewer than two shims were read with. A reading as found is that of a dirty, worn unit, and does not show what the shim
 * brings. For least squares with one slope and a height of its own for each unit.
 */
export function shimSums(results: readonly RecordResult[], part: string, test: string): ShimSums | null {
  let now: string | null = null;
  let unit: string | null = null;
  let early: string[] = [];
  const points: { readonly x: string; readonly y: string }[] = [];
  for (const { role, name, value } of results) {
    if (value === null) continue;
    if (name === part && (role === 'shim in' || role === 'shim out') && value.unit === 'mm') {
      // What was read before the first shim came out was read with that one.
      if (role === 'shim out') for (const y of early) points.push({ x: value.number, y });
      early = [];
      now = value.number;
    }
    if (name !== test || (role !== 'as left' && role !== 'earlier')) continue;
    unit ??= value.unit;
    if (unit !== value.unit) continue;
    if (now === null) early.push(value.number);
    else points.push({ x: now, y: value.number });
  }
  if (unit === null || points.every(({ x }) => Number(x) === Number(points[0]!.x))) return null;
  const mean = (of: 'x' | 'y') => points.reduce((sum, one) => sum + Number(one[of]), 0) / points.length;
  const [middle, height] = [mean('x'), mean('y')];
  const sum = (of: (dx: number, dy: number) => number) =>
    points.reduce((all, { x, y }) => all + of(Number(x) - middle, Number(y) - height), 0);
  const blur = (of: 'x' | 'y') => points.reduce((all, one) => all + 10 ** (-2 * decimalsOf(one[of])) / 12, 0);
  return {
    points: points.length,
    xx: sum((dx) => dx * dx),
    xy: sum((dx, dy) => dx * dy),
    yy: sum((_, dy) => dy * dy),
    blurX: blur('x'),
    blurY: blur('y'),
    unit,
  };
}
