import LinearRegression from 'ml-regression-multivariate-linear';
import type { Point } from './fit-line.ts';

/** One slope for several units, each with a height of its own. */
export interface FittedSlope {
  readonly slope: number;
  /** Standard error of the slope. */
  readonly error: number;
  /** Standard deviation of the points about the lines. */
  readonly residual: number;
  /** Points less the slope and one height for each unit. */
  readonly freedom: number;
  readonly points: number;
  readonly units: number;
}

/**
 * Least squares with one slope and one height for each unit, since no two springs are alike: a column that is 1 for
 * a unit and 0 for the others stands for its height. A unit with one point says nothing of the slope. Null: fewer
 * than one point to spare, or no unit with two different places.
 */
export function fitSlope(units: readonly (readonly Point[])[]): FittedSlope | null {
  const told = units.filter((points) => points.some(({ x }) => x !== points[0]!.x));
  const all = told.flatMap((points, unit) => points.map((point) => ({ ...point, unit })));
  const freedom = all.length - told.length - 1;
  if (freedom < 1 || all.some(({ x, y }) => !Number.isFinite(x) || !Number.isFinite(y))) return null;
  const fit = new LinearRegression(
    all.map(({ x, unit }) => [x, ...told.map((_, index) => Number(index === unit))]),
    all.map(({ y }) => [y]),
    { intercept: false },
  );
  return {
    slope: fit.weights[0]![0]!,
    error: fit.stdErrors[0]!,
    residual: fit.stdError,
    freedom,
    points: all.length,
    units: told.length,
  };
}
