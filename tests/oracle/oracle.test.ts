/**
 * The flow analysis against every concrete run of small random procedures: it may find more, and never less. The full count:
 * `npm run oracle -- 10000 [seed]`.
 */
import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { resolve } from '../../language/db/resolve.ts';
import { parse } from '../../language/syntax/parse.ts';
import { type Comparison, compare } from './compare.ts';
import { knownMissed } from './deviations.ts';
import { interpret } from './interpreter.ts';
import { procedureTexts, shopText } from './random.ts';

const rulesOf = (diagnostics: readonly string[]) => [
  ...new Set(diagnostics.map((diagnostic) => diagnostic.split(' ')[0]!)),
];

describe('random procedures', () => {
  let compared: readonly (Comparison & { readonly text: string })[] = [];

  beforeAll(() => {
    const texts = fc.sample(procedureTexts, { seed: 20_261_125, numRuns: 300 });
    compared = texts.map((text) => ({ text, ...compare(text) }));
  });

  it('are read', () => {
    expect(compared.flatMap(({ unread }) => unread)).toEqual([]);
    expect(compared.filter(({ complete }) => !complete)).toEqual([]);
  });

  it('have slips: the oracle finds all that it knows', () => {
    expect(compared.filter(({ found }) => found > 0).length).toBeGreaterThan(150);
  });

  it('hold nothing that the replay misses', () => {
    const news = compared.filter(({ missed }) => rulesOf(missed).some((rule) => knownMissed[rule] === undefined));
    expect(news.map(({ missed, text }) => `${missed.join('\n')}\n${text}`)).toEqual([]);
  });

  it('get few extra findings: one in ten at most has more than concrete runs show, tries apart', () => {
    expect(compared.filter(({ replayOnly }) => replayOnly.length > 0).length).toBeLessThan(30);
  });
});

describe('the oracle', () => {
  const family = `family holder "Holder" {
    part body "Body"
    part nozzle "Nozzle" on body
    part nut "Nut" on body holds nozzle
    port inlet on body
    joint nut to body
  }
  `;
  const found = (body: string, counts = true) => {
    const text = `${family}procedure p "P" for holder at bench {\n spec opening pressure 250 bar ±5 source "x"\n${body}\n}\n`;
    const trees = [shopText, text].map((one, index) => ({ uri: `${index}`, ...parse(one) }));
    const { procedures, problems } = resolve(trees);
    expect([...trees.flatMap((tree) => tree.problems), ...problems]).toEqual([]);
    return [...interpret(procedures[0]!, { deviations: new Set(), counts }).diagnostics];
  };
  const prove = (fail: string, more = '') =>
    `stage prove at tester {\n connect inlet\n prime 6 strokes\n test opening read pressure within opening on fail ${fail}\n ${more}\n relieve\n disconnect inlet\n cap inlet\n sign-off by "Lead"\n}\n`;

  it('finds nothing in a sound procedure', () => {
    expect(found(`${prove('again (twice)')}repair again { tag }`)).toEqual([]);
  });

  it('counts tries per repair: the third of two is not done', () => {
    // What is clamped in the first try is clamped already in the second.
    const body = (tries: string) => `${prove(`again ${tries}`)}repair again { relieve\n clamp body }`;
    expect(found(body('(once)'))).not.toContain('still-clamped again/clamp body');
    expect(found(body('(twice)'))).toContain('still-clamped again/clamp body');
  });

  it('tries the entries of a list in order, and holds the unit when it is used up', () => {
    const body = `${prove('first (once), second')}repair first { cap inlet }\nrepair second { uncap inlet\n connect inlet\n prime 6 strokes\n }`;
    expect(found(body)).toContain('left-connected first/cap inlet');
    expect(found(`stage s at tester {\n check nut "whole"\n discard nut\n sign-off by "Lead"\n}`)).not.toContain(
      'no-sign-off procedure',
    );
  });

  it('runs all tests of a stage, then the most thorough repair once', () => {
    const body = (stop: string) =>
      `${prove(`light${stop}`, 'slacken nut held by "spanner"\n test leak with gauge shut accept "dry" on fail thorough')}repair light { clamp body\n relieve }\nrepair thorough { relieve\n unclamp body }`;
    expect(found(body(''))).toContain('still-clamped thorough/unclamp body');
    expect(found(body(' stop if fails'))).toContain('still-clamped prove/sign-off');
  });

  it('goes back to the earliest gate not passed on this build', () => {
    const body = `stage one at tester {\n connect inlet\n prime 6 strokes\n test opening read pressure within opening\n}\nstage two at tester {\n test leak with gauge shut accept "dry" on fail again\n relieve\n disconnect inlet\n}\nrepair again { relieve\n disconnect inlet\n slacken nut held by "spanner" }`;
    expect(found(body)).toContain('not-on-the-tester one/test opening');
    expect(found(body.replace('slacken nut held by "spanner"', 'tag'))).not.toContain(
      'not-on-the-tester one/test opening',
    );
  });
});
