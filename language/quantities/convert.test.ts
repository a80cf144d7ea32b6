import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  add,
  amount,
  asDifference,
  between,
  compare,
  convert,
  convertDifference,
  sizesOf,
  sub,
  toleranceOf,
} from './convert.ts';
import { decimalValue, written } from './decimal.ts';
import type { Difference, Figure, Quantity } from './types.ts';
import { units } from './unit-table.ts';

const q = (number: string, unit: Quantity['unit']): Figure => ({ number, unit });
const anyNumber = fc
  .tuple(fc.integer({ min: -99_999, max: 99_999 }), fc.integer({ min: 0, max: 6 }))
  .map(([digits, decimals]) => {
    const text = String(Math.abs(digits)).padStart(decimals + 1, '0');
    return (digits < 0 ? '-' : '') + (decimals === 0 ? text : `${text.slice(0, -decimals)}.${text.slice(-decimals)}`);
  });

test('there and back is exact, in every pair of units of one kind', () => {
  fc.assert(
    fc.property(anyNumber, fc.constantFrom(...units), fc.constantFrom(...units), (number, from, to) => {
      const there = convert(q(number, from.name), to.name);
      if (from.kind !== to.kind) {
        expect(there).toBeNull();
        return;
      }
      const back = there!.add(to.offset).mul(to.factor).div(from.factor).sub(from.offset);
      expect(back.equals(decimalValue(number))).toBe(true);
    }),
    { numRuns: 1000 },
  );
});

test('a written number has its value', () => {
  fc.assert(
    fc.property(anyNumber, (number) => {
      expect(written(decimalValue(number), 6)).toBe(
        Number(number)
          .toFixed(6)
          .replace(/^-(?=0\.0+$)/u, ''),
      );
    }),
  );
});

test('compare uses the amount and not the unit', () => {
  expect(compare(q('1', 'in'), q('25.4', 'mm'))).toBe(0);
  expect(compare(q('100', 'psi'), q('7', 'bar'))).toBe(-1);
  expect(compare(q('33', '°F'), q('0', '°C'))).toBe(1);
  expect(compare(q('1', 'bar'), q('1', 'mm'))).toBeNull();
});

describe('values and differences of temperature', () => {
  test('a value has the zero of its scale, a difference has none', () => {
    expect(convert(q('20', '°C'), '°F')!.toString()).toBe('68');
    expect(convertDifference(q('20', '°C'), '°F')!.toString()).toBe('36');
  });

  test('between two values in different units are degrees of the first', () => {
    expect(between(q('30', '°C'), q('68', '°F'))).toEqual(q('10', '°C'));
    expect(between(q('86', '°F'), q('293.15', 'K'))).toEqual(q('18', '°F'));
    expect(between(q('1', 'bar'), q('1', 'mm'))).toBeNull();
  });

  test('the compiler keeps them apart', () => {
    const value: Quantity = q('20', '°C');
    const difference: Difference = q('20', '°C');
    // @ts-expect-error a value is no difference
    convertDifference(value, '°F');
    // @ts-expect-error a difference is no value
    convert(difference, '°F');
    expect(convertDifference(asDifference(value), '°F')!.toString()).toBe('36');
  });
});

describe('sums', () => {
  test('keep the first unit and the finer digits', () => {
    expect(add(q('1.00', 'mm'), q('0.05', 'mm'))).toEqual(q('1.05', 'mm'));
    expect(add(q('1.00', 'mm'), q('1', 'mm'))).toEqual(q('2.00', 'mm'));
    expect(sub(q('250', 'bar'), q('2', 'MPa'))).toEqual(q('230', 'bar'));
    expect(sub(q('5', 'bar'), q('8', 'bar'))).toEqual(q('-3', 'bar'));
  });

  test('a temperature takes the second as a difference', () => {
    expect(add(q('20', '°C'), q('9', '°F'))).toEqual(q('25', '°C'));
    expect(add(q('20', '°C'), q('5', 'K'))).toEqual(q('25', '°C'));
  });

  test('an endless decimal is cut far below anything measured', () => {
    expect(add(q('0', 'bar'), q('1', 'psi'))).toEqual(q('0.068947572931684', 'bar'));
  });

  test('different kinds have none', () => {
    expect(add(q('1', 'bar'), q('1', 'N·m'))).toBeNull();
    expect(sub(q('1', 'rpm'), q('1', 'strokes/min'))).toBeNull();
  });
});

test('percent are of the nominal, or of themselves', () => {
  expect(toleranceOf(q('250', 'bar'), q('4', '%'))!.toFraction()).toBe('10');
  expect(toleranceOf(q('-20', 'bar'), q('10', '%'))!.toFraction()).toBe('2');
  expect(toleranceOf(q('50', '%'), q('5', '%'))!.toFraction()).toBe('5');
  expect(toleranceOf(q('50', '%'), q('5', 'bar'))).toBeNull();
});

describe('sizes', () => {
  test('of a stock of shims', () => {
    const sizes = sizesOf(q('1.00', 'mm'), q('1.95', 'mm'), q('0.05', 'mm'))!;
    expect(sizes).toHaveLength(20);
    expect(sizes.map((size) => size.number).slice(0, 3)).toEqual(['1.00', '1.05', '1.10']);
    expect(sizes.at(-1)).toEqual(q('1.95', 'mm'));
  });

  test('of a step in another unit', () => {
    expect(sizesOf(q('1.0', 'mm'), q('1.1', 'mm'), q('1', 'thou'))!.map((size) => size.number)).toEqual([
      '1.0',
      '1.0254',
      '1.0508',
      '1.0762',
    ]);
  });

  test('none where the ends are crossed, the step is nothing, or there are too many', () => {
    expect(sizesOf(q('2', 'mm'), q('1', 'mm'), q('0.1', 'mm'))).toBeNull();
    expect(sizesOf(q('1', 'mm'), q('2', 'mm'), q('0', 'mm'))).toBeNull();
    expect(sizesOf(q('1', 'mm'), q('2', 'mm'), q('0.00001', 'mm'))).toBeNull();
    expect(sizesOf(q('1', 'mm'), q('2', 'bar'), q('1', 'mm'))).toBeNull();
  });
});

test('an amount is in the base unit', () => {
  expect(amount(q('250', 'bar')).toFraction()).toBe('25000000');
  expect(amount(q('-40', '°F')).equals(amount(q('-40', '°C')))).toBe(true);
});
