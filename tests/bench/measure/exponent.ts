import MultivariateLinearRegression from 'ml-regression-multivariate-linear';
import type { Growth } from '../bench.ts';

/**
 * The exponent of a power law through some points, by least squares of the logarithms; and that of the last two sizes alone,
 * where what it costs to begin has the least part.
 */
export function exponentOf(points: Growth['points']): { readonly fitted: number; readonly last: number } {
  const logs = points.map(({ size, value }) => [Math.log(size), Math.log(value)] as const);
  const fit = new MultivariateLinearRegression(
    logs.map(([size]) => [size]),
    logs.map(([, value]) => [value]),
  );
  const [[beforeSize, beforeValue], [size, value]] = [logs.at(-2)!, logs.at(-1)!];
  return { fitted: fit.weights[0]![0]!, last: (value - beforeValue) / (size - beforeSize) };
}
