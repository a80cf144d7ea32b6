import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { nearUnits, refusedUnits } from './near-units.ts';
import { numberPattern, quantityPattern } from './patterns.ts';
import { readQuantity } from './read-quantity.ts';
import { readUnit } from './read-unit.ts';
import { units } from './unit-table.ts';

const token =
  (pattern: string) =>
  (text: string): string | null => {
    const sticky = new RegExp(pattern, 'uy');
    return sticky.exec(text)?.[0] ?? null;
  };
const quantity = token(quantityPattern);
const number = token(numberPattern);

const spellings = units.flatMap((row) =>
  [row.name, ...row.spellings].map((spelling) => ({ spelling, unit: row.name })),
);

describe('a quantity is one token', () => {
  test.each(spellings)('$spelling lexes whole and reads as $unit', ({ spelling, unit }) => {
    for (const blank of [' ', '', '\u00A0', '\u202F']) {
      for (const after of ['', ' ', '\n', ',', ')', ' within 4 %', '..']) {
        const text = `12.5${blank}${spelling}`;
        expect(quantity(text + after)).toBe(text);
        expect(readQuantity(text)).toEqual({ quantity: { number: '12.5', unit } });
      }
    }
  });

  test.each([...nearUnits, ...refusedUnits])('the near miss $written lexes whole', ({ written }) => {
    expect(quantity(`45 ${written} x`)).toBe(`45 ${written}`);
    expect(readUnit(written)).not.toHaveProperty('unit');
  });

  test('no near miss or refused unit is also a spelling', () => {
    const accepted = new Set<string>(spellings.map((row) => row.spelling));
    expect([...nearUnits, ...refusedUnits].filter((row) => accepted.has(row.written))).toEqual([]);
  });

  test('any number with any spelling lexes whole and reads back', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 99_999 }),
        fc.integer({ min: 0, max: 999 }),
        fc.constantFrom(...spellings),
        (whole, part, row) => {
          const digits = `${whole}.${part}`;
          expect(quantity(`${digits} ${row.spelling} ±5`)).toBe(`${digits} ${row.spelling}`);
          expect(readQuantity(`${digits} ${row.spelling}`)).toEqual({ quantity: { number: digits, unit: row.unit } });
        },
      ),
    );
  });

  test.each([
    ['80 N·m ±5', '80 N·m'],
    ['45 N⋅m ±5', '45 N⋅m'],
    ['45 N m to', '45 N m'],
    ['20 bar below reading', '20 bar'],
    ['3 bar per 0.001 in', '3 bar'],
    ['3 bar per mm, ', '3 bar per mm'],
    ['0.001 in in 6..20 s', '0.001 in'],
    ['3,750 psi', '3,750 psi'],
    ['1.2.3 mm', '1.2.3 mm'],
    ['1e999 bar', '1e999 bar'],
    ['90°', '90°'],
    ['6 BAR', '6 BAR'],
    ['3 in deep', '3 in'],
    ['20 min in service', '20 min'],
  ])('%s', (text, expected) => {
    expect(quantity(text)).toBe(expected);
  });

  test.each([
    '16..80 N·m',
    '45 N·mm',
    '45 N.mm',
    '8 s-bend',
    '8 bars2',
    '2 thousand',
    '12 mm2',
    '5 mm/rev',
    '0 in service',
    '3 in cross pattern',
    '250\nbar',
    '3 times',
    '1.5x',
  ])('%s does not begin with a quantity', (text) => expect(quantity(text)).toBeNull());
});

describe('a number', () => {
  test.each([
    ['16..80 N·m', '16'],
    ['3 times', '3'],
    ['0 in service', '0'],
    ['3,750', '3,750'],
    ['8/-0', '8'],
    ['25\u202F855', '25\u202F855'],
    ['5e-3', '5e-3'],
  ])('%s', (text, expected) => expect(number(text)).toBe(expected));

  test.each(['1.5x', '20x1', '45N', 'x'])('%s is none', (text) => expect(number(text)).toBeNull());
});

test('matching ends on long runs of digits, points and commas', () => {
  // Tried from every digit, a pattern that goes back over what it has read would need years.
  const long = `${'1.2,'.repeat(5000)}x`;
  expect(quantity(long)).toBeNull();
  expect(number(long)).toHaveLength(4 * 5000 - 1);
});
