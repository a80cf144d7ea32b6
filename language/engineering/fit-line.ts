import tQuantile from '@stdlib/stats-base-dists-t-quantile';
import LinearRegression from 'ml-regression-multivariate-linear';

export interface Point {
  readonly x: number;
  readonly y: number;
}

/** Standard uncertainties of the figures themselves: what lies between two marks, or two digits, nobody reads. */
export interface Resolution {
  readonly x: number;
  readonly y: number;
}

/** A straight line through points, with how sure it is. Standard uncertainties (one standard deviation). */
export interface FittedLine {
  readonly slope: number;
  readonly intercept: number;
  readonly slopeError: number;
  readonly interceptError: number;
  /** Of slope and intercept: without it a prediction is thought far less sure than it is. */
  readonly covariance: number;
  /** Standard deviation of a point about the line, what its figures cannot show included. */
  readonly residual: number;
  /** Points less the two figures that were fitted. */
  readonly freedom: number;
}

/**
 * Least squares through points, by `ml-regression-multivariate-linear`. The scatter is that of the points about the line
 * and that of their resolution, in quadrature (JCGM 100:2008, 4.3.7 and 5.1.2): three readings that lie on a line by the
 * digits are not exact for that. Null for fewer than three points, all at one place, or one that is no number: they give no
 * line.
 */
export function fitLine(points: readonly Point[], resolution: Resolution = exact): FittedLine | null {
  if (points.length < 3 || points.some(({ x, y }) => !Number.isFinite(x) || !Number.isFinite(y))) return null;
  if (points.every(({ x }) => x === points[0]!.x)) return null;
  const fit = new LinearRegression(
    points.map(({ x }) => [x]),
    points.map(({ y }) => [y]),
  );
  const slope = fit.weights[0]![0]!;
  const residual = Math.hypot(fit.stdError, resolution.y, slope * resolution.x);
  const middle = points.reduce((sum, { x }) => sum + x, 0) / points.length;
  const squares = points.reduce((sum, { x }) => sum + (x - middle) ** 2, 0);
  return {
    slope,
    intercept: fit.weights[1]![0]!,
    slopeError: residual / Math.sqrt(squares),
    interceptError: residual * Math.sqrt(1 / points.length + middle ** 2 / squares),
    covariance: (-middle * residual ** 2) / squares,
    residual,
    freedom: points.length - 2,
  };
}

/** Figures with nothing between their digits. */
const exact: Resolution = { x: 0, y: 0 };

/** The line at a place, and the standard uncertainty of the line itself there (not of a new point). */
export function lineAt(line: FittedLine, x: number): { readonly value: number; readonly uncertainty: number } {
  const variance = line.interceptError ** 2 + (x * line.slopeError) ** 2 + 2 * x * line.covariance;
  return { value: line.intercept + line.slope * x, uncertainty: Math.sqrt(Math.max(0, variance)) };
}

/** Where a new point at a place falls, with a probability such as 0.95: Student's t over the line's own doubt and the scatter. */
export function newPointAt(
  line: FittedLine,
  x: number,
  probability: number,
): { readonly low: number; readonly high: number } {
  const { value, uncertainty } = lineAt(line, x);
  const half = tQuantile((1 + probability) / 2, line.freedom) * Math.hypot(uncertainty, line.residual);
  return { low: value - half, high: value + half };
}
