import { describe, expect, test } from 'vitest';
import type { Figure, Limit, NominalLimit, Quantity } from './types.ts';
import { isEmpty, window } from './window.ts';

const q = (number: string, unit: Quantity['unit']): Figure => ({ number, unit });
const nominal = (value: Quantity, plus: Figure | null, minus: Figure | null): NominalLimit => ({
  form: 'nominal',
  nominal: value,
  plus,
  minus,
});

describe('windows', () => {
  test('250 bar +8 -0', () => {
    expect(window(nominal(q('250', 'bar'), q('8', 'bar'), q('0', 'bar')))).toEqual({
      low: q('250', 'bar'),
      high: q('258', 'bar'),
      nominal: q('250', 'bar'),
    });
  });

  test('60 N·m ±4 %', () => {
    const limit = nominal(q('60', 'N·m'), q('4', '%'), q('4', '%'));
    expect(window(limit)).toMatchObject({ low: q('57.6', 'N·m'), high: q('62.4', 'N·m') });
  });

  test('decimals of 0.1 and 0.2 add up', () => {
    expect(window(nominal(q('0.1', 'mm'), q('0.2', 'mm'), q('0.20', 'mm')))).toMatchObject({
      low: q('-0.10', 'mm'),
      high: q('0.3', 'mm'),
    });
  });

  test('a tolerance in another unit with an endless decimal is cut to the inside', () => {
    const { low, high } = window(nominal(q('1', 'bar'), q('1', 'psi'), q('1', 'psi')));
    expect(low).toEqual(q('0.931052427068317', 'bar'));
    expect(high).toEqual(q('1.068947572931683', 'bar'));
  });

  test('no tolerance written is no window', () => {
    expect(window(nominal(q('60', 'N·m'), null, null))).toEqual({ low: null, high: null, nominal: q('60', 'N·m') });
  });

  test('the other forms', () => {
    expect(window({ form: 'at least', least: q('20', 's') })).toEqual({ low: q('20', 's'), high: null, nominal: null });
    expect(window({ form: 'at most', most: q('2', 'bar') })).toEqual({ low: null, high: q('2', 'bar'), nominal: null });
    expect(window({ form: 'range', low: q('55', 'N·m'), high: q('65', 'N·m') })).toEqual({
      low: q('55', 'N·m'),
      high: q('65', 'N·m'),
      nominal: null,
    });
    expect(window({ form: 'tolerance', plus: q('4', '%'), minus: q('4', '%') })).toEqual({
      low: null,
      high: null,
      nominal: null,
    });
    const first = nominal(q('40', 'N·m'), q('5', 'N·m'), q('5', 'N·m'));
    const angle = nominal(q('90', '°'), q('5', '°'), q('5', '°'));
    expect(window({ form: 'then', first, angle })).toMatchObject({ low: q('35', 'N·m'), high: q('45', 'N·m') });
  });
});

describe('empty limits', () => {
  test.each<[Limit, boolean]>([
    [{ form: 'range', low: q('65', 'N·m'), high: q('55', 'N·m') }, true],
    [{ form: 'range', low: q('55', 'N·m'), high: q('55', 'N·m') }, false],
    [{ form: 'range', low: q('400', 'psi'), high: q('35', 'bar') }, false],
    [{ form: 'range', low: q('1', 'in'), high: q('20', 'mm') }, true],
    [nominal(q('250', 'bar'), q('8', 'bar'), q('0', 'bar')), false],
    [nominal(q('250', 'bar'), null, null), false],
    [{ form: 'at least', least: q('20', 's') }, false],
  ])('%j: %s', (limit, empty) => expect(isEmpty(limit)).toBe(empty));
});
