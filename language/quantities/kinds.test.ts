import { expect, test } from 'vitest';
import { kindAdmits, kindOf, kindsOf } from './kinds.ts';

test('a word of the language stands for a kind, and may cover several', () => {
  expect(kindOf('pressure')).toBe('pressure');
  expect(kindOf('rate')).toBe('setting rate');
  expect(kindsOf('rate')).toEqual(['setting rate', 'screw rate']);
  expect(kindsOf('count')).toEqual(['drops', 'strokes', 'turns']);
});

test('a unit is admitted where its word was written', () => {
  expect(kindAdmits(kindOf('rate'), 'bar per turn')).toBe(true);
  expect(kindAdmits(kindOf('speed'), 'strokes/min')).toBe(true);
  expect(kindAdmits(kindOf('count'), 'turns')).toBe(true);
  expect(kindAdmits('pressure', 'N·m')).toBe(false);
  expect(kindAdmits('screw rate', 'bar per mm')).toBe(false);
});
