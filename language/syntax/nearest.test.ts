import { expect, test } from 'vitest';
import { isSlip, nearest } from './nearest.ts';

test('a slip of the keyboard is letters in another order, or one too many or too few', () => {
  for (const [written, meant] of [
    ['nozzel', 'nozzle'],
    ['opning', 'opening'],
    ['slaken', 'slacken'],
    ['springg', 'spring'],
  ] as const)
    expect(isSlip(written, meant), written).toBe(true);
});

test('another letter or figure in the same place may be another name', () => {
  for (const [written, meant] of [
    ['seat', 'seal'],
    ['shims-8', 'shims-9'],
    ['shims-18', 'shims-8'],
    ['TW-80', 'TW-08'],
    ['nut', 'nuts'],
    ['reuse', 'rinse'],
  ] as const)
    expect(isSlip(written, meant), written).toBe(false);
});

test('names that are equally near are in the order of their letters, on every machine', () => {
  expect(nearest('bore', ['borf', 'börd', 'borz', 'Bord'])).toEqual(['Bord', 'borf', 'borz']);
});
