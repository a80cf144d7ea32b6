/** The parser reads what Langium's reads, whole, broken and edited. `npm run parse -- COUNT SEED` goes on with it. */
import { expect, it } from 'vitest';
import { parse } from '../../language/syntax/parse.ts';
import { contentsOf } from '../../language/syntax/place.ts';
import { wordsOf } from '../fuzz/seeds.ts';
import { statesOf, writtenTexts } from './cases.ts';
import { whatIsWrong } from './check.ts';

it('reads every text of library, corpus and pages as Langium does', () => {
  expect(writtenTexts.length).toBeGreaterThan(400);
  for (const text of writtenTexts) expect(whatIsWrong([text]), text).toBeNull();
});

it('reads texts that break off as Langium does', () => {
  let place = 0;
  for (const text of writtenTexts)
    for (const { to } of wordsOf(text)) {
      // Every 301st cut: all of them are tens of thousands.
      if (++place % 301 === 0) expect(whatIsWrong([text.slice(0, to)]), text.slice(0, to)).toBeNull();
    }
});

it('reads edited texts as Langium does, and from the parse before as from nothing', () => {
  for (let index = 0; index < 100; index++) {
    const states = statesOf(1, index);
    expect(whatIsWrong(states), `case ${index}`).toBeNull();
  }
});

it('takes over what an edit leaves as it is', () => {
  const stage = (name: string, steps: string) => `  stage ${name} {\n${steps}\n  }\n`;
  const text = `procedure p for f at s {\n${stage('one', '    fit shim')}${stage('two', '    fit spring\n    wash nut')}}\n`;
  const nodesOf = (type: string, parsed: ReturnType<typeof parse>) =>
    [...contentsOf(parsed.ast)].filter(({ $type }) => $type === type);
  const before = parse(text);
  const [one, two] = nodesOf('Stage', before);
  const lines = nodesOf('StepLine', before);
  const after = parse(text.replace('fit spring', 'fit spring,\n      shim'), before);
  expect(nodesOf('Stage', after)[0]).toBe(one);
  expect(nodesOf('Stage', after)[1]).not.toBe(two);
  expect(nodesOf('StepLine', after).map((line) => lines.includes(line))).toEqual([true, false, true]);
  // A tree is taken over once: what was taken is read again from nothing.
  expect(before.scanned).toBeNull();
  expect(nodesOf('Stage', parse(text, before))[0]).not.toBe(one);
});
