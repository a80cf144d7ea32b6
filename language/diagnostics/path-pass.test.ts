import { describe, expect, it } from 'vitest';
import { corpusFiles } from '../../tests/corpus/files.ts';
import { instead, procedureWith } from '../../tests/fixtures/sound-procedure.ts';
import { libraryFiles } from '../../tests/library.ts';
import { analyzeFlow, type FlowAnalysis, type Visit } from '../analysis/flow-analysis.ts';
import { resolve } from '../db/resolve.ts';
import type { Procedure } from '../model/procedure.ts';
import { say } from '../say/say.ts';
import { parse } from '../syntax/parse.ts';
import { ProcedureMemory, procedureFindings } from './engine.ts';
import { rules } from './index.ts';
import { PathPass, ShownBefore } from './path-pass.ts';
import { type AnyRule, on, type PathChecks } from './rule.ts';

const around = { concessionsIn: () => [], unread: [] };
const proceduresIn = (files: readonly { uri: string; text: string }[]) =>
  resolve(files.map(({ uri, text }) => ({ uri, ast: parse(text).ast }))).procedures;
const sound = (texts = {}) => proceduresIn([{ uri: 'a.rebuild', text: procedureWith(texts) }])[0]!;

const base = { code: 'probe', severity: 'warning', since: '0.1.0', title: 'A probe.' } as const;

/** What a rule is shown in a procedure, by the numbers of the steps. */
function shownTo(procedure: Procedure, checks: (shown: string[]) => PathChecks, memory = new ProcedureMemory()) {
  const shown: string[] = [];
  const rule: AnyRule = { ...base, flow: () => checks(shown) };
  procedureFindings(procedure, around, [rule], memory);
  return shown;
}

describe('a rule of the paths', () => {
  it('is shown the steps with its verbs', () => {
    const verbs = shownTo(sound(), (shown) => ({
      step: on(['torque', 'test'], ({ step }) => void shown.push(step.verb)),
    }));
    expect(new Set(verbs)).toEqual(new Set(['torque', 'test']));
  });

  const oneSpring = proceduresIn(libraryFiles()).find(({ name }) => name === 'rebuild-one-spring')!;
  const looking = (look: (visit: Visit<'prime'>) => unknown) =>
    shownTo(oneSpring, (shown) => ({
      step: on(['prime'], (visit) => {
        look(visit);
        shown.push(visit.step.number);
      }),
    })).length;

  it('is shown a step once for all states and paths that are the same in what it looked at', () => {
    const steps = [...oneSpring.stages, ...oneSpring.repairs].flatMap((block) => block.steps);
    const primes = steps.filter(({ verb }) => verb === 'prime').length;
    expect(looking(() => {})).toBe(primes);
    expect(looking(({ path }) => path.id)).toBeGreaterThan(primes);
    expect(looking(({ before }) => before.since(before.part('nozzle').age))).toBeGreaterThan(primes);
  });

  it('is not shown again after an edit what did not change, unless it looks around or reported something', () => {
    const [procedure] = [sound()];
    const after = { ...procedure, stages: [...procedure.stages] };
    const again = (more: Partial<PathChecks>, report = false) => {
      const memory = new ProcedureMemory();
      const run = (one: Procedure) => {
        const shown: string[] = [];
        const rule: AnyRule = {
          ...base,
          flow: (_, tell) => ({
            ...more,
            step: on(['torque'], ({ step }) => {
              shown.push(step.number);
              if (report) tell({ at: step, message: say`Found.` });
            }),
          }),
        };
        const { diagnostics } = procedureFindings(one, around, [rule], memory);
        return { shown, found: diagnostics.length };
      };
      const before = run(procedure);
      return { before, after: run(after) };
    };
    expect(again({}).before.shown.length).toBeGreaterThan(0);
    expect(again({}).after.shown).toEqual([]);
    const wide = again({ looksAround: true });
    expect(wide.after).toEqual(wide.before);
    const reporting = again({}, true);
    expect(reporting.after).toEqual(reporting.before);
  });
});

/** A flow analysis that takes note when somebody looks at its nodes, gates or part numbers, or at the steps around. */
function watched(flow: FlowAnalysis, looked: () => void): FlowAnalysis {
  const noting = <T extends object>(of: T, keys: readonly (keyof T)[], more: Partial<T> = {}) =>
    Object.defineProperties(
      { ...of, ...more },
      Object.fromEntries(
        keys.map((key) => [
          key,
          {
            get() {
              looked();
              return of[key];
            },
          },
        ]),
      ),
    ) as T;
  const procedure = noting(flow.graph.procedure, ['stages', 'repairs']);
  const graph = noting(flow.graph, ['nodes', 'gates', 'decisions', 'repairs', 'numbers'], { procedure });
  return new Proxy(flow, { get: (target, key) => (key === 'graph' ? graph : Reflect.get(target, key, target)) });
}

it('a rule that looks at other steps, gates or part numbers says so', () => {
  const procedures = [...proceduresIn(libraryFiles(true)), ...proceduresIn(corpusFiles())];
  const silent = new Set<string>();
  for (const flow of procedures.flatMap((procedure) => analyzeFlow(procedure)))
    for (const rule of rules) {
      let [looks, reports] = [0, 0];
      const checks = rule.flow?.(
        watched(flow, () => looks++),
        () => reports++,
      );
      if (checks === undefined || checks.looksAround === true) continue;
      // What it looks at for the words of a finding is no matter: that is found again.
      const pass = new PathPass(flow, new ShownBefore());
      pass.add(checks, () => {});
      flow.visit(pass);
      if (looks > 0 && reports === 0 && (checks.step ?? checks.leave ?? checks.end) !== undefined)
        silent.add(rule.code);
    }
  expect([...silent]).toEqual([]);
});

describe('a procedure that is checked after each edit', () => {
  /** All but one step, or two steps swapped, or other words in one. */
  const edits = (procedure: Procedure): Procedure[] =>
    procedure.stages.flatMap((stage, index) =>
      stage.steps.flatMap((step, at) => {
        const stages = (steps: typeof stage.steps) => procedure.stages.with(index, { ...stage, steps });
        const next = stage.steps[at + 1];
        return [
          { ...procedure, stages: stages(stage.steps.filter((one) => one !== step)) },
          { ...procedure, stages: stages(stage.steps.with(at, { ...step, note: 'Other words' })) },
          ...(next === undefined
            ? []
            : [{ ...procedure, stages: stages(stage.steps.with(at, next).with(at + 1, step)) }]),
        ];
      }),
    );

  it.each(['one-spring', 'pintle', 'like'])('has the findings of one that is checked afresh: %s', (name) => {
    const procedure = proceduresIn(libraryFiles()).find(({ source }) => source.file.includes(`/${name}/`))!;
    const memory = new ProcedureMemory();
    let found = 0;
    for (const one of edits(procedure).filter((_, index) => index % 9 === 0)) {
      const fresh = procedureFindings(one, around);
      expect(procedureFindings(one, around, rules, memory)).toEqual(fresh);
      found += fresh.diagnostics.length;
    }
    expect(found).toBeGreaterThan(0);
  });

  it('drops what is kept when the parts, the specs or the gates are others', () => {
    const memory = new ProcedureMemory();
    const variants = [
      sound(),
      sound({ build: instead('      torque nut to nut-fit with TW-80\n', '') }),
      ...proceduresIn(libraryFiles()),
      sound(),
    ];
    for (const one of variants)
      expect(procedureFindings(one, around, rules, memory)).toEqual(procedureFindings(one, around));
  });
});
