import { expect, test } from 'vitest';
import { placeAt } from './place.ts';
import { wantedAt } from './wanted-at.ts';

/** The words that are offered at the end of a text. */
const wordsAt = (text: string) => wantedAt(placeAt(text, text.length)).words;

test('a joint may be solid, of one of the classes that are known', () => {
  expect(wordsAt('family f {\n  joint stud to body "M8" ')).toContain('solid class');
  expect(wordsAt('family f {\n  joint stud to body "M8" solid class ')).toEqual(
    expect.arrayContaining(['4.6', '10.9']),
  );
  expect(wordsAt('family f {\n  joint stud to body "M8" solid class 8.8 ')).toContain('threads oiled');
});

test('a unit of a job takes results: tests, parts, and the words that say what was done', () => {
  const at = (text: string) => {
    const whole = `job 7 of p at s {\n  unit 1 number A {\n    ${text}`;
    return wantedAt(placeAt(whole, whole.length));
  };
  expect(at('')).toMatchObject({
    names: ['test', 'spec', 'part'],
    words: expect.arrayContaining(['as found', 'renewed']),
  });
  expect(at('as found ').names).toEqual(['test', 'spec']);
  expect(at('renewed ').names).toEqual(['part']);
  expect(at('opening 253 bar on ').names).toContain('gauge');
  expect(at('shim ').words).toEqual(expect.arrayContaining(['out', 'in']));
  expect(at('seat-leak ').words).toEqual(expect.arrayContaining(['pass', 'fail']));
});

test('a part may be drawn as one of the shapes, and go in from below', () => {
  expect(wordsAt('family f {\n  part spring "Spring" on shim ')).toEqual(
    expect.arrayContaining(['drawn as', 'from below']),
  );
  expect(wordsAt('family f {\n  part spring "Spring" on shim drawn as ')).toEqual(
    expect.arrayContaining(['spring', 'ball', 'o-ring']),
  );
  expect(wordsAt('family f {\n  part spring "Spring" on shim from ')).toEqual(['below']);
  expect(wantedAt(placeAt('family f {\n  part shim "Shim" chosen from ', 47)).words).toEqual([]);
});
