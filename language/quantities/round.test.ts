import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { amount, compare } from './convert.ts';
import { formatLimit } from './format.ts';
import { pairAgrees } from './pairs.ts';
import { inUnit, roundTo, windowInSteps } from './round.ts';
import type { Figure, Limit, NominalLimit, Quantity, UnitName } from './types.ts';
import { units } from './unit-table.ts';
import { window } from './window.ts';

const q = (number: string, unit: UnitName): Figure => ({ number, unit });
const nominal = (value: Quantity, plus: Figure | null, minus: Figure | null): NominalLimit => ({
  form: 'nominal',
  nominal: value,
  plus,
  minus,
});

describe('rounding one quantity', () => {
  test('nearest takes the even digit at a half, on both sides of nothing', () => {
    expect(roundTo(q('2.5', 'bar'), 'bar', 0, 'nearest')).toEqual(q('2', 'bar'));
    expect(roundTo(q('3.5', 'bar'), 'bar', 0, 'nearest')).toEqual(q('4', 'bar'));
    expect(roundTo(q('-2.5', 'bar'), 'bar', 0, 'nearest')).toEqual(q('-2', 'bar'));
    expect(roundTo(q('-0.4', 'bar'), 'bar', 0, 'nearest')).toEqual(q('0', 'bar'));
    expect(roundTo(q('250', 'bar'), 'psi', -1, 'nearest')).toEqual(q('3630', 'psi'));
  });

  test('up and down are toward more and less', () => {
    expect(roundTo(q('-2.5', 'bar'), 'bar', 0, 'up')).toEqual(q('-2', 'bar'));
    expect(roundTo(q('-2.5', 'bar'), 'bar', 0, 'down')).toEqual(q('-3', 'bar'));
    expect(roundTo(q('1', 'in'), 'mm', 2, 'up')).toEqual(q('25.40', 'mm'));
  });

  test('another kind has none', () => expect(roundTo(q('1', 'in'), 'bar', 2, 'up')).toBeNull());
});

describe('on the marks of a tool', () => {
  test('250 bar +8 -0 on a psi gauge with 50 psi marks', () => {
    const limit = nominal(q('250', 'bar'), q('8', 'bar'), q('0', 'bar'));
    expect(windowInSteps(limit, q('50', 'psi'))).toEqual({
      low: q('3650', 'psi'),
      high: q('3700', 'psi'),
      nominal: q('3650', 'psi'),
    });
  });

  test('a step that is no power of ten', () => {
    const limit: Limit = { form: 'range', low: q('1.01', 'mm'), high: q('1.19', 'mm') };
    expect(windowInSteps(limit, q('0.05', 'mm'))).toMatchObject({ low: q('1.05', 'mm'), high: q('1.15', 'mm') });
  });

  test('no mark inside: the ends come out crossed', () => {
    const { low, high } = windowInSteps(
      { form: 'range', low: q('1.01', 'mm'), high: q('1.02', 'mm') },
      q('0.05', 'mm'),
    )!;
    expect(compare(low!, high!)).toBe(1);
  });

  test('kinds that differ, and a step of nothing', () => {
    expect(windowInSteps({ form: 'at least', least: q('1', 's') }, q('1', 'bar'))).toBeNull();
    expect(windowInSteps({ form: 'at least', least: q('1', 's') }, q('0', 's'))).toBeNull();
  });
});

describe('a limit in another unit', () => {
  test.each<[Limit, UnitName, string | null]>([
    [nominal(q('250', 'bar'), q('8', 'bar'), q('0', 'bar')), 'psi', '3630 psi +110 −0'],
    [{ form: 'range', low: q('18', 'lbf·in'), high: q('20', 'lbf·in') }, 'N·m', '2.04 to 2.25 N·m'],
    [{ form: 'at least', least: q('20000', 'kPa') }, 'psi', 'at least 2910 psi'],
    [{ form: 'at most', most: q('3600', 'psi') }, 'bar', 'at most 248.2 bar'],
    [{ form: 'range', low: q('0.009', 'in'), high: q('0.010', 'in') }, 'mm', '0.23 to 0.25 mm'],
    [nominal(q('80', '°C'), q('5', '°C'), q('5', '°C')), '°F', '176 °F ±9'],
    [nominal(q('250', 'bar'), null, null), 'psi', '3630 psi'],
    [{ form: 'tolerance', plus: q('5', 'N·m'), minus: q('5', 'N·m') }, 'lbf·ft', '±3.6 lbf·ft'],
    [{ form: 'tolerance', plus: q('4', '%'), minus: q('4', '%') }, 'lbf·ft', '±4 %'],
    [nominal(q('5', 'bar'), q('0', 'bar'), q('0', 'bar')), 'psi', null],
    [nominal(q('5', 'bar'), null, null), 'mm', null],
  ])('%j in %s is %s', (limit, unit, expected) => {
    const result = inUnit(limit, unit);
    expect(result === null ? null : formatLimit(result).replaceAll('\u00A0', ' ').replaceAll('\u202F', ' ')).toBe(
      expected,
    );
  });

  test('one that is in the unit already comes back as it is, and of two steps only the torque turns', () => {
    const limit = nominal(q('40', 'N·m'), q('4', '%'), q('4', '%'));
    expect(inUnit(limit, 'N·m')).toBe(limit);
    const angle = nominal(q('90', '°'), q('5', '°'), q('5', '°'));
    expect(inUnit({ form: 'then', first: limit, angle }, 'lbf·ft')).toMatchObject({
      first: { nominal: { unit: 'lbf·ft' } },
      angle,
    });
  });
});

const anyLimit = fc
  .record({
    unit: fc.constantFrom(...units),
    digits: fc.integer({ min: 1, max: 99_999 }),
    width: fc.integer({ min: 1, max: 999 }),
    minus: fc.integer({ min: 0, max: 999 }),
    decimals: fc.integer({ min: 0, max: 4 }),
    form: fc.constantFrom('nominal', 'per cent', 'range', 'at least', 'at most'),
  })
  .map(({ unit, digits, width, minus, decimals, form }): { limit: Limit; unit: (typeof units)[number] } => {
    const text = (value: number) => q((value / 10 ** decimals).toFixed(decimals), unit.name);
    switch (form) {
      case 'nominal':
        return { unit, limit: nominal(text(digits), text(width), text(minus)) };
      case 'per cent':
        return { unit, limit: nominal(text(digits), q(String(width % 50), '%'), q(String((minus % 50) + 1), '%')) };
      case 'range':
        return { unit, limit: { form: 'range', low: text(digits), high: text(digits + width) } };
      case 'at least':
        return { unit, limit: { form: 'at least', least: text(digits) } };
      default:
        return { unit, limit: { form: 'at most', most: text(digits) } };
    }
  });

/** Whether everything that the second lets through, the first lets through too. */
function looser(exact: Limit, converted: Limit): boolean {
  const [a, b] = [window(exact), window(converted)];
  const below = a.low !== null && (b.low === null || amount(b.low).compare(amount(a.low)) < 0);
  const above = a.high !== null && (b.high === null || amount(b.high).compare(amount(a.high)) > 0);
  return below || above;
}

test('a converted limit never loosens', () => {
  fc.assert(
    fc.property(anyLimit, fc.nat(), ({ limit, unit }, pick) => {
      const others = units.filter((row) => row.kind === unit.kind);
      const converted = inUnit(limit, others[pick % others.length]!.name);
      expect(converted === null || !looser(limit, converted)).toBe(true);
    }),
    { numRuns: 1000 },
  );
});

test('a window on the marks of a tool never loosens', () => {
  fc.assert(
    fc.property(
      anyLimit,
      fc.nat(),
      fc.constantFrom('0.001', '0.05', '0.2', '1', '5', '20'),
      ({ limit, unit }, pick, step) => {
        const others = units.filter((row) => row.kind === unit.kind);
        const marks = windowInSteps(limit, q(step, others[pick % others.length]!.name))!;
        const exact = window(limit);
        if (exact.low !== null) expect(compare(marks.low!, exact.low)).toBeGreaterThanOrEqual(0);
        if (exact.high !== null) expect(compare(marks.high!, exact.high)).toBeLessThanOrEqual(0);
      },
    ),
  );
});

test('a converted limit agrees with the one it came from', () => {
  fc.assert(
    fc.property(anyLimit, fc.nat(), ({ limit, unit }, pick) => {
      const others = units.filter((row) => row.kind === unit.kind);
      const pair = inUnit(limit, others[pick % others.length]!.name);
      if (pair !== null) expect(pairAgrees({ ...limit, pair } as Limit)).toBeNull();
    }),
    { numRuns: 1000 },
  );
});
