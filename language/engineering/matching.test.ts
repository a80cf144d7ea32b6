import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fewestOpened, leastMost, leastSpread, type Readings } from './matching.ts';

/** Every way to give columns to rows, within their counts. */
function* ways(readings: Readings, counts: readonly number[], row = 0): Generator<number[]> {
  if (row === readings.length) {
    yield [];
    return;
  }
  for (const [column, value] of readings[row]!.entries()) {
    if (value === null || counts[column]! < 1) continue;
    const left = counts.map((count, index) => (index === column ? count - 1 : count));
    for (const rest of ways(readings, left, row + 1)) yield [column, ...rest];
  }
}

const valuesOf = (readings: Readings, choice: readonly number[]) =>
  choice.map((column, row) => readings[row]![column]!);
const spreadOf = (values: readonly number[]) => Math.max(...values) - Math.min(...values);

const drawers = fc.integer({ min: 1, max: 4 }).chain((columns) =>
  fc.record({
    readings: fc.array(
      fc.array(fc.option(fc.integer({ min: 0, max: 12 }), { freq: 4 }), { minLength: columns, maxLength: columns }),
      { minLength: 1, maxLength: 4 },
    ),
    counts: fc.array(fc.integer({ min: 0, max: 2 }), { minLength: columns, maxLength: columns }),
  }),
);

describe('matching a set', () => {
  it('finds the least spread that trying all ways finds, and says so when there is none', () => {
    fc.assert(
      fc.property(drawers, ({ readings, counts }) => {
        const all = [...ways(readings, counts)].map((choice) => spreadOf(valuesOf(readings, choice)));
        const found = leastSpread(readings, counts, 6);
        if (all.length === 0) {
          expect(found).toBeNull();
          return;
        }
        expect(spreadOf(valuesOf(readings, found!.choice))).toBe(Math.min(...all));
        for (const column of new Set(found!.choice))
          expect(found!.choice.filter((one) => one === column).length).toBeLessThanOrEqual(counts[column]!);
      }),
      { numRuns: 2000, seed: 4 },
    );
  });

  it('finds the least greatest value that trying all ways finds', () => {
    fc.assert(
      fc.property(drawers, ({ readings, counts }) => {
        const all = [...ways(readings, counts)].map((choice) => Math.max(...valuesOf(readings, choice)));
        const found = leastMost(readings, counts);
        if (all.length === 0) {
          expect(found).toBeNull();
          return;
        }
        expect(Math.max(...valuesOf(readings, found!.choice))).toBe(Math.min(...all));
        expect(found!.high).toBe(Math.min(...all));
      }),
      { numRuns: 2000, seed: 5 },
    );
  });

  it('gives 4 for the didactic 4 × 4 matrix, where the least sum may come with a 5', () => {
    const matrix = [
      [5, 2, 3, 4],
      [7, 8, 4, 5],
      [6, 3, 5, 6],
      [2, 2, 3, 5],
    ];
    expect(leastMost(matrix, [1, 1, 1, 1])!.high).toBe(4);
    // The least sum is 14, and one of the ways to it has a 5 in it.
    const sums = [...ways(matrix, [1, 1, 1, 1])].map((choice) => valuesOf(matrix, choice));
    const least = Math.min(...sums.map((values) => values.reduce((sum, value) => sum + value)));
    const worst = sums.filter((values) => values.reduce((sum, value) => sum + value) === least);
    expect(Math.max(...worst.map((values) => Math.max(...values)))).toBeGreaterThan(4);
  });

  it('takes the middle nearest to the aim where spreads are alike', () => {
    const readings = [[248, 252, 256]];
    expect(leastSpread(readings, [1, 1, 1], 254.5)!.low).toBe(256);
    expect(leastSpread(readings, [1, 1, 1], 249)!.low).toBe(248);
  });

  it('of no units is nothing', () => {
    expect(leastSpread([], [1], 0)).toBeNull();
  });
});

describe('opening the fewest', () => {
  const sets = fc.integer({ min: 1, max: 3 }).chain((columns) =>
    fc.integer({ min: 1, max: 4 }).chain((units) =>
      fc.record({
        stays: fc.array(fc.option(fc.integer({ min: 0, max: 12 }), { freq: 3 }), {
          minLength: units,
          maxLength: units,
        }),
        readings: fc.array(
          fc.array(fc.option(fc.integer({ min: 0, max: 12 }), { freq: 4 }), { minLength: columns, maxLength: columns }),
          { minLength: units, maxLength: units },
        ),
        counts: fc.array(fc.integer({ min: 0, max: 2 }), { minLength: columns, maxLength: columns }),
        limit: fc.integer({ min: 0, max: 8 }),
      }),
    ),
  );

  /** Every way to leave a unit or to give it a column. */
  function* openings(
    stays: readonly (number | null)[],
    readings: Readings,
    counts: readonly number[],
    row = 0,
  ): Generator<(number | null)[]> {
    if (row === stays.length) {
      yield [];
      return;
    }
    if (stays[row] !== null) for (const rest of openings(stays, readings, counts, row + 1)) yield [null, ...rest];
    for (const [column, value] of readings[row]!.entries()) {
      if (value === null || counts[column]! < 1) continue;
      const left = counts.map((count, index) => (index === column ? count - 1 : count));
      for (const rest of openings(stays, readings, left, row + 1)) yield [column, ...rest];
    }
  }

  it('opens as few as trying all ways does, and finds the least spread among those', () => {
    let kept = 0;
    fc.assert(
      fc.property(sets, ({ stays, readings, counts, limit }) => {
        const all = [...openings(stays, readings, counts)].map((choice) => {
          const values = choice.map((column, unit) => (column === null ? stays[unit]! : readings[unit]![column]!));
          return { opened: choice.filter((column) => column !== null).length, spread: spreadOf(values) };
        });
        const found = fewestOpened(stays, readings, counts, 6, (low, high) => high - low <= limit);
        if (all.length === 0) {
          expect(found).toBeNull();
          return;
        }
        const good = all.filter(({ spread }) => spread <= limit);
        const opened = Math.min(...good.map((one) => one.opened));
        const least = (of: typeof all) => Math.min(...of.map(({ spread }) => spread));
        const values = found!.choice.map((column, unit) => (column === null ? stays[unit]! : readings[unit]![column]!));
        expect(found!.kept).toBe(good.length > 0);
        expect([found!.low, found!.high]).toEqual([Math.min(...values), Math.max(...values)]);
        expect(found!.choice.filter((column) => column !== null)).toHaveLength(found!.opened);
        if (good.length === 0) {
          expect(spreadOf(values)).toBe(least(all));
          return;
        }
        kept++;
        expect(found!.opened).toBe(opened);
        expect(spreadOf(values)).toBe(least(good.filter((one) => one.opened === opened)));
        for (const column of new Set(found!.choice))
          if (column !== null)
            expect(found!.choice.filter((one) => one === column).length).toBeLessThanOrEqual(counts[column]!);
      }),
      { numRuns: 4000, seed: 7 },
    );
    expect(kept).toBeGreaterThan(1000);
  });

  const any = () => true;

  it('opens none of a set that is within its spread, though a shim would bring less', () => {
    const readings = [[254], [254], [254]];
    expect(fewestOpened([252, 255, 253], readings, [3], 254, (low, high) => high - low <= 5)).toEqual({
      choice: [null, null, null],
      low: 252,
      high: 255,
      opened: 0,
      kept: true,
    });
  });

  it('opens the one furthest out', () => {
    const readings = [[254], [254], [254], [254]];
    const within = (low: number, high: number) => high - low <= 5;
    expect(fewestOpened([250, 254, 255, 256], readings, [4], 254, within)!.choice).toEqual([0, null, null, null]);
    // Either end would do, and leaves the same: the one further from the others.
    expect(fewestOpened([250, 253, 256], [[253], [253], [253]], [3], 254, within)!.opened).toBe(1);
    expect(fewestOpened([], [], [1], 254, any)).toBeNull();
  });
});
