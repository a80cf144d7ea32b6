import LinearRegression from 'ml-regression-multivariate-linear';
import type { Point, Resolution } from './fit-line.ts';

/** One slope for several units, each with a height of its own. */
export interface FittedSlope {
  readonly slope: number;
  /** Standard error of the slope. */
  readonly error: number;
  /** Standard deviation of a point about the lines, what its figures cannot show included. */
  readonly residual: number;
  /** Points less the slope and one height for each unit. */
  readonly freedom: number;
  readonly points: number;
  readonly units: number;
}

/**
 * Least squares with one slope and one height for each unit, since no two springs are alike: a column that is 1 for
 * a unit and 0 for the others stands for its height. A unit with one point says nothing about the slope. Null: fewer
 * than one point to spare, or no unit with two different places. Scatter and resolution as in `fitLine`.
 */
export function fitSlope(
  units: readonly (readonly Point[])[],
  resolution: Resolution = { x: 0, y: 0 },
): FittedSlope | null {
  const told = units.filter((points) => points.some(({ x }) => x !== points[0]!.x));
  const all = told.flatMap((points, unit) => points.map((point) => ({ ...point, unit })));
  const freedom = all.length - told.length - 1;
  if (freedom < 1 || all.some(({ x, y }) => !Number.isFinite(x) || !Number.isFinite(y))) return null;
  const fit = new LinearRegression(
    all.map(({ x, unit }) => [x, ...told.map((_, index) => Number(index === unit))]),
    all.map(({ y }) => [y]),
    { intercept: false },
  );
  const slope = fit.weights[0]![0]!;
  const residual = Math.hypot(fit.stdError, resolution.y, slope * resolution.x);
  const squares = told.reduce((sum, points) => {
    const middle = points.reduce((all, { x }) => all + x, 0) / points.length;
    return points.reduce((all, { x }) => all + (x - middle) ** 2, sum);
  }, 0);
  return {
    slope,
    error: residual / Math.sqrt(squares),
    residual,
    freedom,
    points: all.length,
    units: told.length,
  };
}
