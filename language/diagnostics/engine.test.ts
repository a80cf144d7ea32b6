import { describe, expect, it } from 'vitest';
import { instead, procedureWith } from '../../tests/fixtures/sound-procedure.ts';
import { resolve } from '../db/resolve.ts';
import { checkFiles } from '../db/workspace.ts';
import { english, say } from '../say/say.ts';
import { parse } from '../syntax/parse.ts';
import { concessionFindings, declarationFindings, problemFindings, procedureFindings } from './engine.ts';
import { rules } from './index.ts';
import { type AnyRule, on } from './rule.ts';

/** The sound procedure with a joint left hand-tight, so that something is found besides. */
const text = procedureWith({ build: instead('      torque nut to nut-fit with TW-80\n', '') });

const fails = (): never => {
  throw new TypeError('Cannot read properties of undefined (reading “name”)');
};

const base = { severity: 'warning', since: '0.1.0', title: 'A rule that throws.' } as const;
const throwing: readonly AnyRule[] = [
  { ...base, code: 'throws-over-problems', problems: fails },
  { ...base, code: 'throws-over-concession', concession: fails },
  { ...base, code: 'throws-over-shop', shop: fails },
  { ...base, code: 'throws-over-family', family: fails },
  { ...base, code: 'throws-over-job', job: fails },
  { ...base, code: 'throws-over-procedure', procedure: fails },
  { ...base, code: 'throws-before-the-way', flow: fails },
  {
    ...base,
    code: 'throws-on-the-way',
    flow: () => ({ step: on(['torque', 'test'], fails), leave: fails, end: fails }),
  },
];

const job = 'job 1 of example {\n}\n';
const resolved = resolve([{ uri: 'a.rebuild', ast: parse(`${text}${job}`).ast }]);
const [procedure] = resolved.procedures;
const problem = { kind: 'syntax', code: 'out-of-place', message: say`A slip.`, source: procedure!.source } as const;
const allow = { rule: 'no-sign-off', because: 'x', source: procedure!.source, extent: procedure!.source };

it('of several problems of the text at one place, the first is reported, by its own rule', () => {
  const around = { concessionsIn: () => [], unread: [] };
  const second = { ...problem, code: 'written-twice', message: say`Another slip.` } as const;
  const told = (problems: (typeof problem | typeof second)[]) =>
    problemFindings(problems, around).diagnostics.map(({ rule, message }) => `${rule}: ${message}`);
  expect(told([problem, second])).toEqual(['out-of-place: A slip.']);
  expect(told([second, problem])).toEqual(['written-twice: Another slip.']);
});

function found(among: readonly AnyRule[]) {
  const around = { concessionsIn: () => [], unread: [] };
  return [
    problemFindings([problem], around, among),
    concessionFindings([allow], around, among),
    declarationFindings({ kind: 'shop', shop: resolved.shops[0]! }, around, among),
    declarationFindings({ kind: 'family', family: resolved.families[0]! }, around, among),
    declarationFindings({ kind: 'job', job: resolved.jobs[0]! }, around, among),
    procedureFindings(procedure!, around, among),
  ].flatMap(({ diagnostics }) => diagnostics);
}

describe('a rule that throws', () => {
  const without = found(rules);
  const all = found([...throwing, ...rules]);
  const defects = all.filter(({ rule }) => rule === 'internal-error');

  it('costs its own findings, and no others', () => {
    expect(without.map(({ rule }) => rule)).toContain('left-hand-tight');
    expect(all.filter((one) => !defects.includes(one))).toEqual(without);
  });

  it('is reported once as a defect of the tool, at the head of what it was shown, as an error', () => {
    expect(defects.map(({ message }) => /rule ([\w-]+)/u.exec(message)![1]).sort()).toEqual(
      throwing.map(({ code }) => code).sort(),
    );
    expect(new Set(defects.map(({ severity }) => severity))).toEqual(new Set(['error']));
    const { source } = defects.find(({ message }) => message.includes('throws-on-the-way'))!;
    expect(source).toEqual(procedure!.source);
    expect(defects[0]!.message).toBe(
      'This is a defect of Handtight, not of your text: the rule throws-over-problems stopped with “Cannot read properties of undefined (reading “name”)”, and what it looks for is not checked here. Everything else is. Please report it, with this file.',
    );
  });
});

it('a fix that throws costs its own finding', () => {
  const rule: AnyRule = {
    ...base,
    code: 'fix-throws',
    procedure: ({ source }, report) => report({ at: source, message: say`Found.`, data: 1 }),
    fix: fails,
  };
  const { diagnostics } = procedureFindings(procedure!, { concessionsIn: () => [], unread: [] }, [rule, ...rules]);
  const without = procedureFindings(procedure!, { concessionsIn: () => [], unread: [] }).diagnostics;
  expect(diagnostics.filter(({ rule: code }) => code !== 'internal-error')).toEqual(without);
  expect(diagnostics.at(-1)!.message).toContain('the rule fix-throws stopped');
});

describe('a declaration that cannot be read because something throws', () => {
  it('costs itself, and says so', () => {
    const { ast } = parse(text);
    const broken = ast.declarations.find(({ $type }) => $type === 'Procedure')!;
    Object.defineProperty(broken, 'heads', { get: fails });
    const { procedures, families, defects } = resolve([{ uri: 'a.rebuild', ast }]);
    expect(procedures).toEqual([]);
    expect(families).toHaveLength(1);
    expect(defects.map(({ what }) => english(what))).toContain('reading this procedure');
  });
});

describe('more ways than are followed', () => {
  const many = (of: (at: number) => string) => Array.from({ length: 90 }, (_, at) => of(at)).join('\n');
  const names = Array.from({ length: 90 }, (_, at) => `r${at} (once)`).join(', ');

  it('are an error at the procedure, so that no sheet of it is released', () => {
    const bomb = procedureWith({
      prove: instead(
        '      test opening',
        `${many((at) => `      test t${at} accept "ok" on fail ${names}`)}\n      test opening`,
      ),
      repairs: (sound) =>
        `${sound}\n${many((at) => `  repair r${at} {\n    relieve   disconnect inlet   clamp body   slacken nut\n    torque nut to nut-fit with TW-80\n    unclamp body   connect inlet   prime 6 strokes with gauge shut\n  }`)}\n`,
    });
    const { diagnostics, procedures } = checkFiles([{ uri: 'a.rebuild', text: bomb }]);
    const [told] = diagnostics.filter(({ rule }) => rule === 'too-many-ways');
    expect(told?.severity).toBe('error');
    expect(told?.source).toEqual(procedures[0]!.procedure.source);
    expect(told?.message).toMatch(
      /^There are too many paths through .+: every test can send the unit to every repair, and after \d+ steps some are still left\./u,
    );
    expect(procedures[0]!.diagnostics).toContain(told);
  });
});
