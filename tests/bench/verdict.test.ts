import { expect, test } from 'vitest';
import type { Comparison, Growth, Limit } from './bench.ts';
import { limitsInWords, verdictOf } from './measure/verdict.ts';

const spread = (median: number) => ({ median, p95: median * 2, least: median, count: 9 });
const compared = (limits: readonly Limit[], ...others: readonly string[]): Comparison => ({
  kind: 'comparison',
  work: 'an edit',
  unit: 'ms',
  measured: ['ours', ...others].map((name, index) => ({ name, spread: spread(index === 0 ? 10 : 5) })),
  limits,
});
const grown = (exponent: number, most: number): Growth => ({
  kind: 'growth',
  work: 'an edit',
  of: 'steps',
  unit: 'ms',
  points: [10, 100, 1000].map((size) => ({ size, value: size ** exponent })),
  most,
});

test('A limit is held against what was measured beside it', () => {
  expect(verdictOf(compared([{ of: 'median', times: 2, than: 'peer' }], 'peer'))).toBe('met');
  expect(verdictOf(compared([{ of: 'median', times: 1.9, than: 'peer' }], 'peer'))).toBe('missed');
  expect(verdictOf(compared([{ of: 'p95', times: 3.9, than: 'peer' }], 'peer'))).toBe('missed');
  expect(verdictOf(compared([{ of: 'p95', most: 20 }]))).toBe('met');
  expect(verdictOf(compared([{ of: 'p95', most: 19 }]))).toBe('missed');
});

test('Without what it is compared with nothing is met, and what is missed is said all the same', () => {
  const limits: Limit[] = [{ of: 'median', times: 9, than: 'peer' }];
  expect(verdictOf(compared(limits))).toBe('not measured');
  expect(verdictOf(compared([...limits, { of: 'median', most: 1 }]))).toBe('missed');
  expect(verdictOf(compared([]))).toBe('no target');
});

test('Growth is held by its exponent', () => {
  expect(verdictOf(grown(1, 1.2))).toBe('met');
  expect(verdictOf(grown(2, 1.2))).toBe('missed');
  expect(verdictOf({ ...grown(1, 1.2), points: [{ size: 1, value: 1 }] })).toBe('not measured');
});

test('Limits are written as they are read', () => {
  const limits: Limit[] = [
    { of: 'median', times: 1.5, than: 'lone' },
    { of: 'p95', most: 5 },
  ];
  expect(limitsInWords(compared(limits))).toBe('≤ 1.5 × lone, p95 ≤ 5 ms');
});
