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
  expect(wordsAt('family f {\n  part spring "Spring" on shim from ')).toEqual(['below', 'above']);
  expect(wantedAt(placeAt('family f {\n  part shim "Shim" chosen from ', 47)).words).toEqual([]);
});

test('a test has points, places and a working out; names that are made up there are not offered', () => {
  const at = (text: string) => {
    const whole = `procedure p for f at s {\n stage t {\n${text}`;
    return wantedAt(placeAt(whole, whole.length));
  };
  const full = 'test delivery read volume at oil 40 °C ±2, air 2 bar\n point full "Full load" ';
  expect(at(full).words).toEqual(expect.arrayContaining(['at', 'for', 'within', 'spread at most', 'point', 'on fail']));
  expect(at(full).words).not.toContain('above');
  expect(at('test delivery point ')).toMatchObject({ names: [], words: [] });
  expect(at(`${full}at 1000 rpm, rack 9.0 mm ±0.05 `).words).not.toContain('at');
  expect(at(`${full}within `)).toMatchObject({ names: ['spec'], words: ['at least', 'at most'] });
  expect(at(`${full}spread at most 1 mL\n point idle above `).words).toEqual(['full']);
  expect(at(`${full}spread at most 1 mL\n on fail `).names).toContain('repair');

  expect(at('test phasing at each cylinder within 60 cam ° ±0.5 ').words).toContain('per place in order');
  expect(at('test phasing at each cylinder within 60 cam ° ±0.5 per place ').words).toEqual(['in order']);
  expect(at('test phasing within 60 cam ° ±0.5 ').words).not.toContain('per place in order');

  expect(at('test lift worked out as before "Before" ').words).toEqual(['less', 'plus']);
  expect(at('test lift worked out as before less ')).toMatchObject({ names: [], words: [] });
  expect(at('test lift worked out as before less later ').words).toContain('within');
});

test('what is written down in words has a form', () => {
  const wordsOf = (text: string) => wordsAt(`procedure p for f at s {\n stage t {\nrecord trim "Trim code" ${text}`);
  expect(wordsOf('')).toContain('as');
  expect(wordsOf('as 6 ')).toEqual(['letters or digits', 'letters', 'digits']);
  expect(wordsOf('as 6 letters ')).toContain('or digits');
  expect(wordsOf('as 6 letters or ')).toEqual(['digits']);
  expect(wordsOf('as "good", "worn" ')).toEqual(expect.arrayContaining(['or', 'note']));
  expect(wordsOf('as "good" or "worn" note ')).toEqual([]);
});

test('behind a repair it says whose it is, and that all is read again where there are points or places', () => {
  const at = (text: string) => {
    const whole = `procedure p for f at s {\n stage t {\n${text}`;
    return wantedAt(placeAt(whole, whole.length));
  };
  const points = 'test delivery read volume\n point full "Full load" at 1000 rpm within 92 mL\n on fail reset (once) ';
  expect(at(points).words).toEqual(expect.arrayContaining(['of the furthest out', 'then all again']));
  expect(at(`${points}then `).words).toEqual(['all again']);
  expect(at(`${points}of the furthest out `).words).toContain('then all again');
  expect(at(`${points}then all again `).words).not.toContain('of the furthest out');
  expect(at(`${points}then all again, `).names).toContain('repair');
  expect(at(`${points}of the furthest out, `).names).toContain('repair');
  expect(at('test lift read length at each cylinder on fail renew shim (once) ').words).toContain('then all again');
  expect(at('test opening read pressure within 250 bar on fail reshim (once) ').words).not.toContain('then all again');
});
