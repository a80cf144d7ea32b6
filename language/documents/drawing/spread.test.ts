import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { spread, type Wish } from './spread.ts';

const at = (...tops: number[]): Wish[] => tops.map((wish) => ({ wish, height: 4 }));
const cost = (wishes: readonly Wish[], tops: readonly number[]) =>
  wishes.reduce((sum, { wish }, index) => sum + (tops[index]! - wish) ** 2, 0);

describe('labels at the side', () => {
  it('are where they should be, push each other apart evenly, and stay on the page', () => {
    expect(spread(at(10, 20), 0, 100, 1)).toEqual([10, 20]);
    expect(spread(at(10, 10), 0, 100, 1)).toEqual([7.5, 12.5]);
    expect(spread(at(10, 10, 10), 0, 100, 1)).toEqual([5, 10, 15]);
    expect(spread(at(0, 0), 0, 100, 1)).toEqual([0, 5]);
    expect(spread(at(98, 99), 0, 100, 1)).toEqual([91, 96]);
    expect(spread([], 0, 100, 1)).toEqual([]);
  });
  it('run over the lower edge where there is no room, and never over each other', () => {
    expect(spread(at(0, 0, 0), 0, 10, 1)).toEqual([0, 5, 10]);
  });
  it('keep their order and their bounds, and cannot be placed better', () => {
    const wish = fc.record({ wish: fc.integer({ min: -20, max: 220 }), height: fc.integer({ min: 1, max: 20 }) });
    fc.assert(
      fc.property(
        fc.array(wish, { minLength: 1, maxLength: 8 }),
        fc.array(fc.integer({ min: -3, max: 3 }), { minLength: 8, maxLength: 8 }),
        (wishes, moves) => {
          const tops = spread(wishes, 0, 200, 1);
          const isLegal = (some: readonly number[]) =>
            some.every(
              (top, index) =>
                top >= -1e-9 &&
                top + wishes[index]!.height <= 200 + 1e-9 &&
                (index === 0 || top + 1e-9 >= some[index - 1]! + wishes[index - 1]!.height + 1),
            );
          expect(isLegal(tops)).toBe(true);
          const other = tops.map((top, index) => top + moves[index]! * 0.7);
          if (isLegal(other)) expect(cost(wishes, other)).toBeGreaterThanOrEqual(cost(wishes, tops) - 1e-6);
        },
      ),
      { numRuns: 2000, seed: 3 },
    );
  });
});
