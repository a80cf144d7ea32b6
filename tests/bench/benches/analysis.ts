import { analyzeFlow } from '../../../language/analysis/flow-analysis.ts';
import { resolve } from '../../../language/db/resolve.ts';
import { ProcedureMemory, procedureFindings } from '../../../language/diagnostics/engine.ts';
import { rules } from '../../../language/diagnostics/index.ts';
import { StepPass } from '../../../language/diagnostics/step-pass.ts';
import type { Procedure } from '../../../language/model/procedure.ts';
import { parse } from '../../../language/syntax/parse.ts';
import { libraryFiles } from '../../library.ts';
import type { Bench } from '../bench.ts';
import { processorTime } from '../measure/side-by-side.ts';

const files = libraryFiles();
const { uri, text } = files.find((file) => file.uri.includes('one-spring/procedure'))!;
const around = { concessionsIn: () => [], unread: [] };

/** The stages of a block's name, as they are written. */
function stage(name: string): string {
  return new RegExp(`^ {2}stage ${name} [^]*?^ {2}\\}\\n`, 'mu').exec(text)![0];
}

/** What can be done over and over between the first build and the tests, with no gate in it. */
const round = [
  stage('teardown').replace(/ *discard .*\n| *cap bore\n/gu, ''),
  stage('clean').replace(/ *uncap .*\n/u, ''),
  stage('last-wash'),
  stage('build').replace(/ *check needle .*\n *on fail .*\n/u, ''),
].join('');

/** The one-spring procedure, taken apart, washed and built again so many times. */
function procedureOf(rounds: number): Procedure {
  const at = text.indexOf('  stage prove');
  const more = Array.from({ length: rounds }, (_, index) => round.replace(/^( {2}stage \S+)/gmu, `$1-${index}`));
  const long = `${text.slice(0, at)}${more.join('')}${text.slice(at)}`;
  const trees = files.map((file) => ({ uri: file.uri, ast: parse(file.uri === uri ? long : file.text).ast }));
  return resolve(trees).procedures.find((one) => one.source.file === uri)!;
}

/** After an edit: a step in the middle comes and goes, all else is the same. */
function edited(procedure: Procedure, isThere: boolean): Procedure {
  if (isThere) return { ...procedure };
  const stages = [...procedure.stages];
  const builds = stages.filter(({ name }) => name.startsWith('build'));
  const middle = stages.indexOf(builds[Math.floor(builds.length / 2)]!);
  const one = stages[middle]!;
  stages[middle] = { ...one, steps: one.steps.filter(({ verb }) => verb !== 'clamp') };
  return { ...procedure, stages };
}

const middle = (times: readonly number[]) => [...times].sort((a, b) => a - b)[Math.floor(times.length / 2)]!;

const phases = ['flow analysis', 'rules on the procedure', 'first check', 'check after an edit'] as const;

const analysis: Bench = {
  title: 'the flow analysis and the rules of one procedure, by the number of steps: processor time',
  inProcess: true,
  async *run({ quick }) {
    const measured: { readonly steps: number; readonly times: readonly number[] }[] = [];
    // The first of the two short ones is for the compiler.
    const sizes: readonly (readonly [rounds: number, runs: number])[] = quick
      ? [
          [0, 20],
          [0, 20],
          [25, 3],
        ]
      : [
          [0, 60],
          [0, 60],
          [25, 7],
          [270, 3],
        ];
    for (const [rounds, runs] of sizes) measured.push(phaseTimes(rounds, runs));
    for (const [phase, work] of phases.entries())
      yield {
        kind: 'growth',
        work,
        of: 'steps',
        unit: 'ms',
        points: measured.slice(1).map(({ steps, times }) => ({ size: steps, value: times[phase]! })),
        most: 1.2,
      };
  },
};
export default analysis;

/** Medians of the phases, by name. */
function phaseTimes(rounds: number, runs: number): { readonly steps: number; readonly times: readonly number[] } {
  const procedure = procedureOf(rounds);
  const steps = [...procedure.stages, ...procedure.repairs].reduce((sum, block) => sum + block.steps.length, 0);
  const memory = new ProcedureMemory();
  const times = phases.map((): number[] => []);
  for (let run = 0; run < runs; run++) {
    // Nothing is known of an object that was not there before.
    const fresh = { ...edited(procedure, true), stages: structuredClone(procedure.stages) };
    const next = edited(procedure, run % 2 === 0);
    const work = [
      () => void analyzeFlow(fresh),
      () => {
        const steps = new StepPass(fresh, new WeakMap());
        for (const rule of rules) {
          rule.procedure?.(fresh, () => {});
          steps.show(rule, () => {});
        }
      },
      () => void procedureFindings({ ...fresh }, around),
      () => void procedureFindings(next, around, rules, memory),
    ];
    for (const [phase, one] of work.entries()) times[phase]!.push(processorTime(one));
  }
  return { steps, times: times.map(middle) };
}
