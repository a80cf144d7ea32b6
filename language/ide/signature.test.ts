import { expect, test } from 'vitest';
import { askedAt, edited } from '../../tests/holder.ts';
import { english } from '../say/say.ts';
import { parse } from '../syntax/parse.ts';
import { signatureAt } from './signature.ts';
import { examples } from './verb-words.ts';

/** The label with what is being written in brackets. */
function shown(half: string): string | null {
  const { snapshot, file, position } = askedAt(edited('    slacken nut\n', `    ${half}<|>\n`));
  const found = signatureAt(snapshot, file, position, english);
  if (found === null) return null;
  const [from, to] = found.active === null ? [0, 0] : found.parameters[found.active]!;
  return from === to
    ? found.label
    : `${found.label.slice(0, from)}[${found.label.slice(from, to)}]${found.label.slice(to)}`;
}

test('what a verb acts on, and then what goes on from it', () => {
  expect(shown('slacken ')).toBe('slacken [PARTS] held by "…" with TOOL with air with marks aligned');
  expect(shown('slacken nut, ')).toBe('slacken [PARTS] held by "…" with TOOL with air with marks aligned');
  expect(shown('slacken nut held by ')).toBe('slacken PARTS [held by "…"] with TOOL with air with marks aligned');
  expect(shown('torque nut to ')).toMatch(/^torque PARTS \[to SPEC\] /u);
});

test('a clause or a name that is also a verb begins no step', () => {
  expect(shown('test opening read ')).toMatch(/^test TEST \[read KIND\]/u);
  expect(shown('remove cap, ')).toMatch(/^remove \[PARTS\]/u);
  expect(shown('across the set opening spread ')).toMatch(/^across the set TEST \[spread at most …\]/u);
  expect(shown('relieve   slacken ')).toMatch(/^slacken \[PARTS\]/u);
});

test('nothing in words, in remarks, and where no step is', () => {
  expect(shown('do "slacken ')).toBeNull();
  expect(shown('slacken nut // ')).toBeNull();
  expect(shown('nothing ')).toBeNull();
});

test.each(Object.entries(examples))('the example of %s is read', (_, example) => {
  expect(parse(`procedure p for f at s {\n stage t {\n${example}\n}\n}\n`).problems).toEqual([]);
});
