import { expect, it } from 'vitest';
import { fullMessage, shortMessage } from './diagnostic.ts';

it('joins the parts of a report, whole and for a list of problems', () => {
  const parts = {
    message: 'The nut is still tight.',
    why: 'it turns the body with it.',
    help: 'Slacken it.',
    when: 'Only for A-220.',
  };
  expect(fullMessage(parts)).toBe('The nut is still tight: it turns the body with it. Slacken it. Only for A-220.');
  expect(shortMessage(parts)).toBe('The nut is still tight. Only for A-220. Slacken it.');
  expect(fullMessage({ message: 'The nut is still tight. Slacken it.' })).toBe('The nut is still tight. Slacken it.');
});
