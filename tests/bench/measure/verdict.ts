/** Whether a result is within its limits, and in which words that is said. */
import type { Comparison, Growth, Limit, Result } from '../bench.ts';
import { exponentOf } from './exponent.ts';

export type Verdict = 'met' | 'missed' | 'not measured' | 'no target';

export function verdictOf(result: Result): Verdict {
  if (result.kind === 'failure' || result.kind === 'skipped') return 'not measured';
  if (result.kind === 'growth') return verdictOfGrowth(result);
  if (result.limits.length === 0) return 'no target';
  const within = result.limits.map((limit) => isWithin(result, limit));
  if (within.includes(false)) return 'missed';
  return within.includes(null) ? 'not measured' : 'met';
}

/** Null where what it is compared with was not measured. */
function isWithin({ measured }: Comparison, limit: Limit): boolean | null {
  const ours = measured[0]!.spread[limit.of];
  if ('most' in limit) return ours <= limit.most;
  const other = measured.find(({ name }) => name === limit.than);
  return other === undefined ? null : ours <= limit.times * other.spread.median;
}

function verdictOfGrowth({ points, most }: Growth): Verdict {
  if (points.length < 2) return 'not measured';
  const { fitted, last } = exponentOf(points);
  return Math.max(fitted, last) <= most ? 'met' : 'missed';
}

/** Such as `≤ 1.5 × lone, p95 ≤ 3 × JSON server`. */
export function limitsInWords({ limits, unit }: Comparison): string {
  return limits
    .map((limit) => {
      const what = limit.of === 'p95' ? 'p95 ' : '';
      return 'most' in limit ? `${what}≤ ${limit.most} ${unit}` : `${what}≤ ${limit.times} × ${limit.than}`;
    })
    .join(', ');
}
