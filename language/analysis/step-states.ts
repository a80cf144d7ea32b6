import type { Procedure, Step } from '../model/procedure.ts';
import { analyzeFlow, type FlowAnalysis } from './flow-analysis.ts';
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

/** Runs the flow analysis of one procedure, and keeps what it knows at each step. Null: there is nothing to run. */
export function buildStepStates(procedure: Procedure): StepStates | null {
  const flows = analyzeFlow(procedure);
  const [first] = flows;
  if (first === undefined) return null;
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
  return {
    layout: first.layout,
    relations: first.relations,
    states: [...order.keys()].map((step) => {
      const [one, other] = [before.get(step), after.get(step)];
      return one === undefined || other === undefined ? null : { before: one, after: other };
    }),
    since: (state, location) => stepOf(first, state.provenance[location]!, order),
  };
}

/** A node of the flow graph is the same one for every part number. */
function stepOf({ graph }: FlowAnalysis, node: number, order: ReadonlyMap<Step, number>): number {
  for (let at = node; at >= 0; at--) {
    const found = graph.nodes[at];
    if (found?.kind === 'step') return order.get(found.step) ?? -1;
  }
  return -1;
}
