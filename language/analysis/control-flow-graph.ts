import type { FailEntry, Procedure, Repair, Stage, Step, StepOf } from '../model/procedure.ts';
import { type GateStep, isGate, isOfAll, isTest, namedIn } from '../model/steps.ts';
import type { Verb } from '../model/verbs.ts';
import { allSteps } from './locations.ts';

/** One node of a procedure as it is walked. */
export type FlowNode =
  | { readonly kind: 'enter'; readonly block: Stage | Repair }
  | { readonly kind: 'step'; readonly step: Step; readonly block: Stage | Repair; readonly group: TestGroup | null }
  /** After the last test of a stage: on with it if all passed, else one repair. */
  | { readonly kind: 'branch'; readonly group: TestGroup; readonly block: Stage | Repair }
  /** A step for other part numbers: it keeps its place, so that a node is the same one in every flow analysis. */
  | { readonly kind: 'nop'; readonly block: Stage | Repair }
  /** A repair at a station of its own is done there: the unit is back where it was sent from. */
  | { readonly kind: 'carryBack'; readonly block: Repair }
  /** A repair is done: back to the earliest gate not passed. */
  | { readonly kind: 'return'; readonly block: Repair }
  | { readonly kind: 'end'; readonly block: Stage | Repair };

/** Tests of one stage, which are all run before one repair is done. */
export interface TestGroup {
  readonly tests: StepOf<'test' | 'across'>[];
}

/** A procedure as a list of nodes: stages in order, the end, then each repair. */
export interface ControlFlowGraph {
  readonly procedure: Procedure;
  /** Part numbers that it is for; null: the procedure makes no difference between them. */
  readonly numbers: readonly string[] | null;
  /** Parts that only steps for other part numbers name: they are not on these. */
  readonly absent: ReadonlySet<string>;
  readonly nodes: readonly FlowNode[];
  /** Points of the gates, in order: where a unit may go back to. */
  readonly gates: readonly { readonly node: number; readonly step: GateStep }[];
  /** First node of each repair. */
  readonly repairs: ReadonlyMap<string, number>;
  /** Point of the decision that ends each gate's stage, or of the gate itself where it is judged at once. */
  readonly decisions: ReadonlyMap<number, number>;
}

/** Lays a procedure out, for the part numbers given. */
export function buildControlFlowGraph(procedure: Procedure, numbers: readonly string[] | null): ControlFlowGraph {
  const nodes: FlowNode[] = [];
  const gates: { node: number; step: GateStep }[] = [];
  const decisions = new Map<number, number>();
  const mine = (step: Step) =>
    step.only === null || numbers === null || step.only.some((number) => numbers.includes(number));

  const layStage = (stage: Stage) => {
    nodes.push({ kind: 'enter', block: stage });
    const tests = stage.steps.filter(waitsForOthers);
    const group: TestGroup = { tests: tests.filter(mine) };
    // All tests of a stage are run before one of those that wait is judged; one that stops is judged at once.
    const lastTest = stage.steps.findLast(isTest);
    const first = nodes.length;
    stage.steps.forEach((step) => {
      nodes.push(
        mine(step)
          ? { kind: 'step', step, block: stage, group: waitsForOthers(step) ? group : null }
          : { kind: 'nop', block: stage },
      );
      if (tests.length > 0 && step === lastTest) nodes.push({ kind: 'branch', group, block: stage });
    });
    const own = nodes.slice(first);
    const branch = first + own.findIndex((node) => node.kind === 'branch');
    for (const [place, node] of own.entries()) {
      const index = first + place;
      if (node.kind !== 'step' || !isGate(node.step)) continue;
      gates.push({ node: index, step: node.step });
      decisions.set(index, node.group === null ? index : branch);
    }
  };

  procedure.stages.forEach(layStage);
  const last = procedure.stages.at(-1);
  if (last !== undefined) nodes.push({ kind: 'end', block: last });
  const repairs = new Map<string, number>();
  for (const repair of procedure.repairs) {
    repairs.set(repair.name, nodes.length);
    const [ahead, behind] = [carriedFrom(repair), carriedBack(repair)];
    repair.steps.forEach((step, index) => {
      if (index === ahead) nodes.push({ kind: 'enter', block: repair });
      if (index === behind) nodes.push({ kind: 'carryBack', block: repair });
      nodes.push(mine(step) ? { kind: 'step', step, block: repair, group: null } : { kind: 'nop', block: repair });
    });
    if (repair.steps.length === ahead) nodes.push({ kind: 'enter', block: repair });
    nodes.push({ kind: 'return', block: repair });
  }
  return { procedure, numbers, absent: absentParts(procedure, mine), nodes, gates, repairs, decisions };
}

/** Done where the unit is before it is carried to a repair's own station. */
const before: ReadonlySet<Verb> = new Set<Verb>(['relieve', 'disconnect', 'unclamp', 'cap']);
/** Done when it is carried back. */
const after: ReadonlySet<Verb> = new Set<Verb>(['uncap', 'connect', 'prime']);

/** How many of a repair's first steps are done where the unit was sent from. */
function carriedFrom({ station, steps }: Repair): number {
  const first = steps.findIndex((step) => !before.has(step.verb));
  return station === null ? 0 : first < 0 ? steps.length : first;
}

/** The index from which a repair's last steps are done where the unit was sent from; past its end where none is. */
function carriedBack(repair: Repair): number {
  const last = repair.steps.findLastIndex((step) => !after.has(step.verb));
  return repair.station === null ? repair.steps.length : Math.max(last + 1, carriedFrom(repair));
}

function absentParts(procedure: Procedure, mine: (step: Step) => boolean): ReadonlySet<string> {
  const here = new Set<string>();
  const elsewhere = new Set<string>();
  const steps = allSteps(procedure);
  // Where every step is for all part numbers, none is elsewhere.
  if (steps.every(mine)) return elsewhere;
  for (const step of steps) {
    if (isOfAll(step)) continue;
    const named = mine(step) ? here : elsewhere;
    for (const { kind, name } of namedIn(step)) if (kind === 'part') named.add(name);
  }
  return new Set([...elsewhere].filter((part) => !here.has(part)));
}

/** A test is judged with the other tests of its stage; a check, or a test that stops, at once. */
export function waitsForOthers(step: Step): step is StepOf<'test' | 'across'> {
  return isTest(step) && !step.gate.stopIfFails;
}

/**
 * Part numbers put together by the steps that are for them. One list of null where no step is for some only:
 * specs do not change the flow analysis.
 */
export function variants(procedure: Procedure): (readonly string[] | null)[] {
  const lists = [...procedure.stages, ...procedure.repairs].flatMap((block) =>
    block.steps.flatMap((step) => (step.only === null ? [] : [step.only])),
  );
  if (lists.length === 0) return [null];
  const bySteps = new Map<string, string[]>();
  for (const number of procedure.numbers) {
    const key = lists.map((list) => (list.includes(number.name) ? '1' : '0')).join('');
    bySteps.set(key, [...(bySteps.get(key) ?? []), number.name]);
  }
  return bySteps.size === 0 ? [null] : [...bySteps.values()];
}

/** Entries of a fail list that may be next, given the one-try repairs that are spent. */
export function nextEntries(
  entries: readonly FailEntry[],
  tries: (repair: string) => number | null,
  spent: (repair: string) => boolean,
): FailEntry[] {
  const next: FailEntry[] = [];
  for (const entry of entries) {
    if (tries(entry.repair) === 1) {
      if (spent(entry.repair)) continue;
      next.push(entry);
      return next;
    }
    next.push(entry);
    if (tries(entry.repair) === null && entry.as !== 'verdict') return next;
  }
  return next;
}
