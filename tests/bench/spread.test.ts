import { expect, test } from 'vitest';
import { spreadOf } from './measure/spread.ts';

test('The median and the 95th percentile are those of the values, to a thousandth', () => {
  const hundred = spreadOf(Array.from({ length: 100 }, (_, index) => 100 - index));
  expect(hundred.median / 50).toBeCloseTo(1, 2);
  expect(hundred.p95 / 95).toBeCloseTo(1, 2);
  expect(hundred.least).toBeCloseTo(1, 2);
  expect(hundred.count).toBe(100);
  expect(spreadOf([0.02, 0.02, 9]).median / 0.02).toBeCloseTo(1, 2);
});
