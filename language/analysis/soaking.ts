import type { ControlFlowGraph } from './control-flow-graph.ts';
import type { AbstractState } from './state.ts';

/** Parts that were put to soak and are kept where the unit is stay in the bath on purpose when the unit goes on. */
export function isLeftToSoak({ nodes: points }: ControlFlowGraph, state: AbstractState, part: string): boolean {
  const cells = state.part(part);
  const point = points[state.since(cells.wet)];
  const staysHere = state.get(cells.where) === state.get(state.layout.unit.station);
  return staysHere && point?.kind === 'step' && point.step.verb === 'soak';
}
