import type { Repair, Stage, Step } from '../../model/procedure.ts';
import { failEntries } from '../../model/steps.ts';
import { type PrintContext, shownSteps } from '../print-context.ts';
import { findPaths } from './paths.ts';

/** Stages that a unit goes through again after a repair: each time is a line of one log. */
export interface LogGroup {
  /** In order, with none between them left out. */
  readonly stages: readonly Stage[];
  readonly repairs: readonly Repair[];
}

/** Where repairs and results are. */
export interface Arrangement {
  readonly groups: readonly LogGroup[];
  /** Repairs of a step or two, in the check that asks for them first. */
  readonly embedded: ReadonlyMap<Repair, Step>;
  /** All other repairs, after the stage that asks for them first. */
  readonly after: ReadonlyMap<Stage, readonly Repair[]>;
}

/** Most steps of a repair that is in the row of a check. */
const mostEmbedded = 2;

export function arrange(setting: PrintContext): Arrangement {
  const { procedure } = setting;
  const { stages, repairs } = procedure;
  const asksFor = (step: Step, repair: Repair) => failEntries(step).some((entry) => entry.repair === repair.name);
  const askers = (repair: Repair) =>
    [...stages, ...repairs].flatMap((place) => shownSteps(setting, place)).filter((step) => asksFor(step, repair));
  const embedded = new Map<Repair, Step>();
  for (const repair of repairs) {
    const steps = shownSteps(setting, repair);
    const [first, ...others] = askers(repair);
    const small = steps.length > 0 && steps.length <= mostEmbedded && steps.every(({ verb }) => !recording.has(verb));
    const inStages = [first, ...others].every((step) =>
      stages.some((stage) => step !== undefined && stage.steps.includes(step)),
    );
    if (first !== undefined && small && inStages && [first, ...others].every((step) => looks.has(step!.verb)))
      embedded.set(repair, first);
  }
  const groups = groupsOf(setting, embedded);
  const after = new Map<Stage, Repair[]>();
  const grouped = (repair: Repair) => groups.some((group) => group.repairs.includes(repair));
  for (const repair of repairs) {
    if (
      embedded.has(repair) ||
      grouped(repair) ||
      (repair.steps.length > 0 && shownSteps(setting, repair).length === 0)
    )
      continue;
    const stage = stages.find(({ steps }) => steps.some((step) => asksFor(step, repair))) ?? stages.at(-1);
    if (stage !== undefined) after.set(stage, [...(after.get(stage) ?? []), repair]);
  }
  return { groups, embedded, after };
}

const looks: ReadonlySet<string> = new Set(['check', 'measure']);
/** What is written down while a repair is done needs boxes of its own. */
const recording: ReadonlySet<string> = new Set([
  'choose',
  'torque',
  'lock',
  'read',
  'measure',
  'record',
  'set',
  'check',
  'test',
  'hold-for',
]);

function groupsOf(setting: PrintContext, embedded: ReadonlyMap<Repair, Step>): LogGroup[] {
  const { stages, repairs } = setting.procedure;
  const { resumes } = findPaths(setting.procedure);
  const reached = (steps: readonly Step[]): Repair[] => {
    const found: Repair[] = [];
    const add = (among: readonly Step[]) => {
      for (const { repair: name } of among.flatMap(failEntries)) {
        const repair = repairs.find((one) => one.name === name);
        if (repair === undefined || found.includes(repair) || embedded.has(repair)) continue;
        found.push(repair);
        add(repair.steps);
      }
    };
    add(steps);
    return found;
  };
  const runs: { from: number; to: number; repairs: Repair[] }[] = [];
  stages.forEach((stage, index) => {
    const tests = shownSteps(setting, stage).filter(({ verb }) => verb === 'test');
    const own = reached(tests);
    if (own.length === 0) return;
    const back = own
      .flatMap(({ name }) => resumes.get(name) ?? [])
      .flatMap((step) => (step === null ? [] : [stages.findIndex(({ steps }) => steps.includes(step))]))
      .filter((at) => at >= 0);
    const run = { from: Math.min(index, ...back), to: index, repairs: own };
    const before = runs.at(-1);
    if (before !== undefined && run.from <= before.to)
      runs[runs.length - 1] = {
        from: Math.min(before.from, run.from),
        to: index,
        repairs: [...new Set([...before.repairs, ...own])],
      };
    else runs.push(run);
  });
  return runs.map((run) => ({
    stages: stages.slice(run.from, run.to + 1),
    // In their order, from the least to the most thorough.
    repairs: repairs.filter((repair) => run.repairs.includes(repair)),
  }));
}
