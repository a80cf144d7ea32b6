/** The window that is printed lies inside the true one, whatever the units, and says no more digits than the tool has marks. */
import fc from 'fast-check';
import type Fraction from 'fraction.js';
import { describe, expect, it } from 'vitest';
import { decimalValue, exactText } from './decimal.ts';
import {
  convert,
  type Difference,
  english,
  type Figure,
  type Limit,
  type Quantity,
  type UnitName,
  window,
} from './index.ts';
import { shownLimit } from './shown-limit.ts';

const units = ['bar', 'psi', 'kPa', 'MPa'] as const;
const digits = (most: number, decimals: number) =>
  fc.tuple(fc.integer({ min: 1, max: most }), fc.integer({ min: 0, max: decimals })).map(([size, places]) => {
    const text = String(size).padStart(places + 1, '0');
    return places === 0 ? text : `${text.slice(0, -places)}.${text.slice(-places)}`;
  });
const figure = (number: fc.Arbitrary<string>, unit: UnitName): fc.Arbitrary<Figure> =>
  number.map((text) => ({ number: text, unit }));

const limits: fc.Arbitrary<Limit> = fc.constantFrom(...units).chain((unit) => {
  const big: fc.Arbitrary<Quantity> = figure(digits(400_000, 3), unit);
  const wide: fc.Arbitrary<Difference> = figure(digits(9_000, 3), unit);
  const share: fc.Arbitrary<Difference> = figure(digits(20, 1), '%');
  const nominal = fc
    .tuple(big, fc.oneof(wide, share), fc.oneof(wide, share))
    .map(([middle, plus, minus]) => ({ form: 'nominal' as const, nominal: middle, plus, minus }));
  return fc.oneof(
    nominal,
    fc.tuple(big, wide).map(([low, width]) => ({
      form: 'range' as const,
      low,
      high: { number: exactText(decimalValue(low.number).add(decimalValue(width.number))), unit },
    })),
    big.map((least) => ({ form: 'at least' as const, least })),
    big.map((most) => ({ form: 'at most' as const, most })),
  );
});

const tools = fc.record({
  unit: fc.constantFrom(...units),
  mark: fc.constantFrom('0.001', '0.005', '0.02', '0.05', '0.1', '0.5', '1', '2', '5', '10', '50'),
  digital: fc.boolean(),
  marked: fc.boolean(),
});

/** The ends in a printed value; null: there is none on that side. */
function endsIn(value: string): { low: Fraction | null; high: Fraction | null } {
  const numbers = value
    .replace(/(\d)\u202f(?=\d)/gu, '$1')
    .replace('−', '-')
    .match(/-?\d+(?:\.\d+)?/gu)!
    .map(decimalValue);
  if (value.startsWith('at least')) return { low: numbers[0]!, high: null };
  if (value.startsWith('at most')) return { low: null, high: numbers[0]! };
  return { low: numbers[0]!, high: numbers[1] ?? numbers[0]! };
}

describe('a window as it is printed for a tool', () => {
  it('lies inside the true one, on what can be read of the tool', () => {
    let onMarks = 0;
    fc.assert(
      fc.property(limits, tools, (limit, { unit, mark, digital, marked }) => {
        const step = decimalValue(mark);
        const finest = digital ? step : step.div(2);
        const { value } = shownLimit(limit, {
          unit,
          mark: marked ? { number: mark, unit } : null,
          least: marked ? { number: exactText(finest), unit } : null,
          setToNominal: false,
          wording: english,
        });
        const exact = window(limit);
        const [low, high] = [exact.low, exact.high].map((end) => (end === null ? null : convert(end, unit)!));
        // Nothing that is printed holds for a window that has no room in it.
        if (low != null && high != null && low.compare(high) >= 0) return;
        const printed = endsIn(value);
        if (low != null) expect(printed.low!.compare(low), `${value} under ${low}`).toBeGreaterThanOrEqual(0);
        if (high != null) expect(printed.high!.compare(high), `${value} over ${high}`).toBeLessThanOrEqual(0);
        const room = low == null || high == null || high.sub(low).compare(step.mul(3)) >= 0;
        if (!marked || !room) return;
        onMarks++;
        for (const end of [printed.low, printed.high])
          if (end !== null) expect(end.div(finest).d, `${value} on marks of ${mark} ${unit}`).toBe(1n);
      }),
      { numRuns: 2000, seed: 11 },
    );
    expect(onMarks).toBeGreaterThan(300);
  });
});
