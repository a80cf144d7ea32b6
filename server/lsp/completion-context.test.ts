import { expect, test } from 'vitest';
import { wantedAt } from './completion-context.ts';
import { placeAt } from './place.ts';

/** The words that are offered at the end of a text. */
const wordsAt = (text: string) => wantedAt(placeAt(text, text.length)).words;

test('a joint may be solid, of one of the classes that are known', () => {
  expect(wordsAt('family f {\n  joint stud to body "M8" ')).toContain('solid class');
  expect(wordsAt('family f {\n  joint stud to body "M8" solid class ')).toEqual(
    expect.arrayContaining(['4.6', '10.9']),
  );
  expect(wordsAt('family f {\n  joint stud to body "M8" solid class 8.8 ')).toContain('threads oiled');
});
