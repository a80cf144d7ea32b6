import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { formatLimit, formatNumber, formatQuantity } from './format.ts';
import { quantityPattern } from './patterns.ts';
import { readQuantity } from './read-quantity.ts';
import type { Figure, Limit, NominalLimit, Quantity, UnitName } from './types.ts';
import { units } from './unit-table.ts';

const q = (number: string, unit: UnitName): Figure => ({ number, unit });
const nominal = (value: Quantity, plus: Figure | null, minus: Figure | null): NominalLimit => ({
  form: 'nominal',
  nominal: value,
  plus,
  minus,
});

test('a quantity', () => {
  expect(formatQuantity(q('250', 'bar'))).toBe('250\u00A0bar');
  expect(formatQuantity(q('90', '°'))).toBe('90°');
  expect(formatQuantity(q('5', '%'))).toBe('5\u00A0%');
  expect(formatQuantity(q('-20', '°C'))).toBe('−20\u00A0°C');
  expect(formatQuantity(q('12', 'cam °'))).toBe('12\u00A0cam\u00A0°');
  expect(formatQuantity(q('1', 'drops'))).toBe('1\u00A0drop');
  expect(formatQuantity(q('25855', 'kPa'))).toBe('25\u202F855\u00A0kPa');
  expect(formatQuantity(q('25855', 'kPa'), { thousands: false })).toBe('25855\u00A0kPa');
});

test('thousands from five digits on, and only before the point', () => {
  expect(['3750', '12345.67891', '1000000', '-12345'].map((number) => formatNumber(number))).toEqual([
    '3750',
    '12\u202F345.67891',
    '1\u202F000\u202F000',
    '−12\u202F345',
  ]);
});

describe('a limit', () => {
  test.each<[Limit, string]>([
    [nominal(q('250', 'bar'), q('8', 'bar'), q('0', 'bar')), '250 bar +8 −0'],
    [nominal(q('60', 'N·m'), q('5', 'N·m'), q('5.0', 'N·m')), '60 N·m ±5'],
    [nominal(q('60', 'N·m'), null, null), '60 N·m'],
    [nominal(q('60', 'N·m'), q('4', '%'), q('4', '%')), '60 N·m ±4 %'],
    [nominal(q('1.20', 'mm'), q('0.05', 'mm'), q('0.00', 'mm')), '1.20 mm +0.05 −0'],
    [{ form: 'range', low: q('55', 'N·m'), high: q('65', 'N·m') }, '55 to 65 N·m'],
    [{ form: 'range', low: q('-1', 'bar'), high: q('5', 'bar') }, '−1 to 5 bar'],
    [{ form: 'range', low: q('85', '°'), high: q('95', '°') }, '85° to 95°'],
    [{ form: 'at least', least: q('20', 's') }, 'at least 20 s'],
    [{ form: 'at most', most: q('2', 'bar') }, 'at most 2 bar'],
    [{ form: 'tolerance', plus: q('4', '%'), minus: q('4', '%') }, '±4 %'],
    [{ form: 'tolerance', plus: q('8', 'bar'), minus: q('0', 'bar') }, '+8 bar −0 bar'],
    [
      {
        form: 'then',
        first: nominal(q('40', 'N·m'), null, null),
        angle: nominal(q('90', '°'), q('5', '°'), q('5', '°')),
      },
      '40 N·m then 90° ±5°',
    ],
    [
      {
        ...nominal(q('45', 'N·m'), q('5', 'N·m'), q('5', 'N·m')),
        pair: nominal(q('33', 'lbf·ft'), q('4', 'lbf·ft'), q('4', 'lbf·ft')),
      },
      '45 N·m ±5 (33 lbf·ft ±4)',
    ],
  ])('%j is %s', (limit, expected) => expect(formatLimit(limit).replaceAll('\u00A0', ' ')).toBe(expected));
});

test('what is printed lexes as one token and reads back', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 0, max: 9_999_999 }),
      fc.integer({ min: 0, max: 3 }),
      fc.constantFrom(...units),
      (digits, decimals, row) => {
        const quantity = q((digits / 10 ** decimals).toFixed(decimals), row.name);
        const printed = formatQuantity(quantity);
        expect(new RegExp(quantityPattern, 'uy').exec(`${printed} `)?.[0]).toBe(printed);
        expect(readQuantity(printed)).toEqual({ quantity });
      },
    ),
  );
});
