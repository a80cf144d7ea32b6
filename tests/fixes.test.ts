/** Every fix, applied: the finding is gone, nothing new is found, and nothing else of the text has changed. */
import { dirname } from 'node:path';
import { expect, test } from 'vitest';
import { Workspace } from '../language/db/workspace.ts';
import { blank } from '../language/diagnostics/edits.ts';
import { type Diagnostic, type Fix, fullMessage } from '../language/model/diagnostic.ts';
import { isProblemCode } from '../language/syntax/problem-code.ts';
import { wholeExample } from './fixtures/example-base.ts';
import { applyFix, filled, pages } from './fixtures/example-pages.ts';
import { libraryFiles } from './library.ts';

interface Case {
  readonly where: string;
  readonly uri: string;
  readonly text: string;
  readonly fix: Fix;
  readonly diagnostic: Diagnostic;
  /** Findings of a text in the place of the file. */
  readonly check: (text: string) => readonly Diagnostic[];
}

/** What a fix may bring to light: a name that could not be read hid what is wrong with it, a fail path what is wrong on it. */
const hides = (rule: string) => rule === 'unknown-name' || rule === 'gate-without-fail-path' || isProblemCode(rule);

/** What could not be judged while something was missing, or what the author has to say next. */
const leadsTo: Readonly<Record<string, readonly string[]>> = {
  // With a stock and a rate the next shim is calculated from the one that comes out.
  'nothing-to-choose-from': ['shim-not-measured'],
  'rate-missing': ['shim-not-measured'],
  // An adjuster that is named can be seen to be locked.
  'set-by-what': ['set-while-locked'],
  'old-part-refitted': ['new-part-not-washed'],
  // What goes on as a guard comes off again, and the other way around.
  'bare-lapped-face': ['guard-in-the-wash', 'part-left-out'],
  'cannot-see': ['bare-lapped-face'],
  'guard-in-the-wash': ['bare-lapped-face'],
  'leaves-wet': ['parts-left-loose'],
  // A setting that was open hid what else was done with it.
  'setting-not-locked': ['spring-not-backed-off', 'joint-slackened-then-left'],
  // What is backed off is unlocked first.
  'spring-not-backed-off': ['set-while-locked'],
  // A joint is torqued in the vise.
  'left-hand-tight': ['not-clamped'],
  'union-left-hand-tight': ['not-clamped'],
  'torque-missing': ['spec-unused'],
  // A tool that is named needs the dates of its calibration.
  'tool-not-written-down': ['calibration-not-dated'],
  // What is connected is disconnected again.
  'not-on-the-tester': ['left-connected'],
  // What is looked at or tested can fail.
  'lapped-face-not-checked': ['gate-without-fail-path', 'cannot-see'],
  'part-not-checked': ['gate-without-fail-path'],
  'not-checked-free': ['gate-without-fail-path'],
  // What a test needs is said when there is one.
  'gate-missing': [
    'gate-without-fail-path',
    'gate-before-prime',
    'not-on-the-tester',
    'reading-not-taken-yet',
    'speed-not-stated',
    'gauge-open-while-pulsing',
    'source-missing',
    'shim-step-too-coarse',
    'opened-under-pressure',
    'gate-stale',
  ],
  'pressure-missing': ['back-leak-underdetermined'],
};

function counts(diagnostics: readonly Diagnostic[]): Map<string, number> {
  const count = new Map<string, number>();
  for (const { rule } of diagnostics) count.set(rule, (count.get(rule) ?? 0) + 1);
  return count;
}

function expectFixed({ where, text, fix, diagnostic, check }: Case): void {
  const before = check(text);
  const put = applyFix(text, fix);
  const name = `${where} ${diagnostic.rule}: ${fix.title}`;
  if (put.includes(blank)) {
    expect(fix.safe, `${name} is not safe`).toBe(false);
    const line = put.slice(0, put.indexOf(blank)).split('\n').length - 1;
    const told = check(put).filter(({ rule, source }) => isProblemCode(rule) && source.range.start.line === line);
    expect(told, `${name} is reported until it is written`).not.toEqual([]);
  }
  const after = check(filled(put));
  const isGone =
    (counts(after).get(diagnostic.rule) ?? 0) < counts(before).get(diagnostic.rule)! ||
    after.every((one) => fullMessage(one) !== fullMessage(diagnostic));
  expect(isGone, `${name} is gone`).toBe(true);
  if (!hides(diagnostic.rule)) {
    // A blank that was there before hides what is wrong with its step too.
    const known = counts(text.includes(blank) ? check(filled(text)) : before);
    const news = [...counts(after)].filter(
      ([rule, count]) => count > (known.get(rule) ?? 0) && leadsTo[diagnostic.rule]?.includes(rule) !== true,
    );
    expect(news, `${name} brings nothing new`).toEqual([]);
  }
  expect(put.match(/^[ \t]+$/gmu) ?? [], `${name} leaves no blanks`).toEqual(text.match(/^[ \t]+$/gmu) ?? []);
  expect(put.match(/[ \t]+$/gmu)?.length ?? 0, name).toBeLessThanOrEqual(text.match(/[ \t]+$/gmu)?.length ?? 0);
  // Text outside the replacement stays, in its order.
  const rest = applyFix(text, { ...fix, edits: fix.edits.map((edit) => ({ ...edit, text: '\u0000' })) });
  const pattern = rest
    .split(/[\s\u0000]+/u)
    .map((part) => part.replace(/[.*+?^${}()|[\]\\]/gu, '\\$&'))
    .join('[^]*?');
  expect(new RegExp(`^${pattern}$`, 'u').test(put), `${name} changes nothing else`).toBe(true);
}

function casesOf(where: string, uri: string, text: string, check: Case['check']): Case[] {
  return check(text).flatMap((diagnostic) =>
    diagnostic.fix === undefined || diagnostic.source.file !== uri
      ? []
      : [{ where, uri, text, fix: diagnostic.fix, diagnostic, check }],
  );
}

const examples = pages().flatMap((page) =>
  page.examples
    .filter(({ kind }) => kind === 'bad')
    .flatMap(({ text, line }) => {
      const checker = new Workspace();
      const check = (whole: string) => checker.check([{ uri: 'example', text: whole }]).diagnostics;
      return casesOf(`${page.code}:${line}`, 'example', wholeExample(text).text, check);
    }),
);

test('fixes of the bad examples', () => {
  expect(examples.length).toBeGreaterThan(50);
  for (const one of examples) expectFixed(one);
});

/** A procedure of the library with each of its steps left out in turn. */
test.each(['one-spring', 'pintle'])('fixes of %s with a step left out', (folder) => {
  const uri = `procedures/${folder}/procedure.rebuild`;
  // With what it is made of: the others are not changed by a step that it lacks.
  const made = ['procedures', 'procedures/shared', `procedures/${folder}`];
  const files = libraryFiles().filter((file) => made.includes(dirname(file.uri)));
  const checker = new Workspace();
  const check = (whole: string) =>
    checker.check(files.map((file) => (file.uri === uri ? { uri, text: whole } : file))).diagnostics;
  const { text } = files.find((file) => file.uri === uri)!;
  const lines = text.split('\n');
  const steps = lines.flatMap((line, index) => (/^ {4}[a-z][^{}]*$/u.test(line) ? [index] : []));
  expect(steps.length).toBeGreaterThan(50);
  let applied = 0;
  for (const left of steps) {
    const cut = lines.filter((_, index) => index !== left).join('\n');
    for (const one of casesOf(`${uri} without line ${left + 1}`, uri, cut, check)) {
      expectFixed(one);
      applied++;
    }
  }
  expect(applied).toBeGreaterThan(3);
});
