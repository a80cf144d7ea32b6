import { createHistogram } from 'node:perf_hooks';

/** Where the values of some measurements lie, in their unit. */
export interface Spread {
  readonly median: number;
  readonly p95: number;
  readonly least: number;
  readonly count: number;
}

/** Node's histogram counts whole numbers: millionths of a millisecond or of a megabyte. It is exact to a thousandth. */
const scale = 1e6;

export function spreadOf(values: readonly number[]): Spread {
  const histogram = createHistogram();
  for (const value of values) histogram.record(Math.max(1, Math.round(value * scale)));
  const at = (percent: number) => histogram.percentile(percent) / scale;
  return { median: at(50), p95: at(95), least: histogram.min / scale, count: values.length };
}
