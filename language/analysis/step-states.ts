import equal from 'fast-deep-equal';
import type { Procedure, Step } from '../model/procedure.ts';
import { namedIn } from '../model/steps.ts';
import type { ControlFlowGraph } from './control-flow-graph.ts';
import { analyzeInPieces, finish } from './flow-analysis.ts';
import { FlowMemory } from './flow-memory.ts';
import { allSteps, type LocationLayout } from './locations.ts';
import type { Relations } from './relations.ts';
import type { AbstractState } from './state.ts';

/** What may be true around one step, over every path that leads to it and every part number that it is for. */
export interface StepState {
  readonly before: AbstractState;
  readonly after: AbstractState;
}

/** The states around each step of a procedure. */
export interface StepStates {
  readonly layout: LocationLayout;
  readonly relations: Relations;
  /** In the order of `allSteps`; null where no path leads to it. */
  readonly states: readonly (StepState | null)[];
  /** The step at which a location may have become what it is; -1: as received. In the order of `allSteps`. */
  readonly since: (state: AbstractState, location: number) => number;
}

/**
 * Runs the flow analysis of one procedure, and keeps what it knows at each step. Null: there is nothing to run.
 * @param memory of the procedure that was analyzed last
 */
export function buildStepStates(procedure: Procedure, memory = new FlowMemory()): StepStates | null {
  const { flows, facts } = finish(analyzeInPieces(procedure, memory));
  const [first] = flows;
  if (first === undefined) return null;
  const { graph } = first;
  const order = new Map(allSteps(procedure).map((step, index) => [step, index]));
  const before = new Map<Step, AbstractState>();
  const after = new Map<Step, AbstractState>();
  const put = (states: Map<Step, AbstractState>, step: Step, state: AbstractState) => {
    const known = states.get(step);
    if (known === undefined) states.set(step, state.copy());
    else known.join(state);
  };
  for (const flow of flows)
    flow.visit({
      step: (visit) => put(before, visit.step, visit.before),
      after: (visit, state) => put(after, visit.step, state),
    });
  memory.keep(flows, facts);
  return {
    layout: first.layout,
    relations: first.relations,
    states: [...order.keys()].map((step) => {
      const [one, other] = [before.get(step), after.get(step)];
      return one === undefined || other === undefined ? null : { before: one, after: other };
    }),
    since: (state, location) => stepOf(graph, state.provenance[location]!, order),
  };
}

/** A node of the flow graph is the same one for every part number. */
function stepOf(graph: ControlFlowGraph, node: number, order: ReadonlyMap<Step, number>): number {
  for (let at = node; at >= 0; at--) {
    const found = graph.nodes[at];
    if (found?.kind === 'step') return order.get(found.step) ?? -1;
  }
  return -1;
}

/** Most procedures whose last analysis is kept while they are being typed. */
const mostKept = 8;

/**
 * The last analysis of procedures that are being typed. What is known behind a step does not wait for the line that is
 * half typed below it: as long as the steps up to there are the same, it is as it was.
 */
export class KeptStates {
  private readonly kept = new Map<string, { readonly procedure: Procedure; readonly states: StepStates }>();

  keep(id: string, procedure: Procedure, states: StepStates) {
    this.kept.delete(id);
    this.kept.set(id, { procedure, states });
    for (const oldest of this.kept.keys()) {
      if (this.kept.size <= mostKept) return;
      this.kept.delete(oldest);
    }
  }

  /** Null: the steps up to the index are others, or what they are about is. */
  upTo(id: string, procedure: Procedure, index: number): StepStates | null {
    const known = this.kept.get(id);
    if (known === undefined) return null;
    const { family } = known.procedure;
    if (family !== procedure.family && !equal(family, procedure.family)) return null;
    const before = allSteps(known.procedure);
    const now = allSteps(procedure);
    // Nearly all are the same objects: an edit makes those again that it is about.
    for (let at = 0; at <= index; at++) if (!isAlike(before[at], now[at])) return null;
    return known.states;
  }
}

function isAlike(one: Step | undefined, other: Step | undefined): boolean {
  return one === other || (one !== undefined && other !== undefined && signature(one) === signature(other));
}

function signature(step: Step): string {
  return [step.number, step.key, ...namedIn(step).map(({ name }) => name), step.only?.join(' ') ?? ''].join(' ');
}
