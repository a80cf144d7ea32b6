import { expect, test } from 'vitest';
import { exponentOf } from './measure/exponent.ts';

const pointsOf = (law: (size: number) => number) => [1, 10, 100, 1000].map((size) => ({ size, value: law(size) }));

test('A power law has its exponent, whatever it is multiplied by', () => {
  for (const exponent of [0, 1, 1.5, 2]) {
    const { fitted, last } = exponentOf(pointsOf((size) => 7 * size ** exponent));
    expect(fitted).toBeCloseTo(exponent, 9);
    expect(last).toBeCloseTo(exponent, 9);
  }
});

test('What it costs to begin hides in the fit, and not in the last two sizes', () => {
  const { fitted, last } = exponentOf(pointsOf((size) => 10_000 + size ** 2));
  expect(fitted).toBeLessThan(1);
  expect(last).toBeGreaterThan(1.6);
});
