import { expect, test } from 'vitest';
import { canonical } from './printed-content.ts';

test('leaves words in quotes as they are', () => {
  expect(canonical('  a   "b  // c"\t d // e\r\n\r\n  "open // f\n')).toBe('a "b  // c" d\n"open // f');
});
