import { expect, test } from 'vitest';
import { offsetAt } from './offset.ts';

test.each([
  ['ab\ncd\nef', 1, 1, 4],
  ['ab\r\ncd\r\nef', 1, 1, 5],
  ['ab\rcd', 1, 0, 3],
  ['ab\ncd', 0, 9, 2],
  ['ab\r\ncd', 0, 9, 2],
  ['ab\ncd', 1, 9, 5],
  ['ab\ncd', 7, 0, 5],
  ['', 0, 0, 0],
])('%j, line %i, character %i is offset %i', (text, line, character, offset) => {
  expect(offsetAt(text, { line, character })).toBe(offset);
});
