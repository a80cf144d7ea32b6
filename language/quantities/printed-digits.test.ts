import { expect, test } from 'vitest';
import { digitOf, lastPlace } from './printed-digits.ts';

test('the last digit that a number means', () => {
  expect(['0.20', '250', '20000', '3600', '25855', '0', '5.0'].map(lastPlace)).toEqual([-2, 0, 2, 1, 0, 0, -1]);
});

test('the digit of a printed number; the first two figures always count, and a third after a 1', () => {
  expect(
    ['0.20', '45', '20', '250', '3750', '25855', '20000', '100', '0'].map((number) => digitOf(number).valueOf()),
  ).toEqual([0.01, 1, 1, 10, 10, 1, 1000, 1, 1]);
});
