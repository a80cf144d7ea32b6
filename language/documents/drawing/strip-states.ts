import type { FlowAnalysis } from '../../analysis/flow-analysis.ts';
import { place } from '../../analysis/locations.ts';
import type { AbstractState } from '../../analysis/state.ts';
import type { Stage } from '../../model/procedure.ts';
import type { DrawnFamily } from './once-each.ts';

/** Where a part is: on the unit, off it, on a face as its cover, thrown away; `some`: copies differ, or it is not known. */
export type Presence = 'on' | 'off' | 'guard' | 'discarded' | 'some';

export interface StripRow {
  /** Null: before the first stage. */
  readonly stage: Stage | null;
  /** By the part that is drawn. */
  readonly presences: ReadonlyMap<string, Presence>;
}

/** The unit as it is received, and at the end of each stage, on the way on which all tests pass. */
export function stripStates(flow: FlowAnalysis, drawn: DrawnFamily): StripRow[] {
  const { procedure } = flow.graph;
  const ends = new Map<Stage, ReadonlyMap<string, Presence>>();
  let received: ReadonlyMap<string, Presence> | null = null;
  flow.visit({
    step({ before, path }) {
      if (path.id === 0) received ??= presencesOf(before, drawn);
    },
    after({ block, path }, state) {
      // A state is good only while it is visited; the last step of a stage leaves what is read of it.
      if (path.id === 0 && !('tries' in block)) ends.set(block, presencesOf(state, drawn));
    },
  });
  if (received === null) return [];
  const rows: StripRow[] = [{ stage: null, presences: received }];
  // A stage in which nothing is done for these part numbers leaves the unit as it was.
  for (const stage of procedure.stages) rows.push({ stage, presences: ends.get(stage) ?? rows.at(-1)!.presences });
  return rows;
}

function presencesOf(state: AbstractState, drawn: DrawnFamily): Map<string, Presence> {
  const found = new Map<string, Presence>();
  for (const [name, cells] of state.layout.parts) {
    const part = drawn.standsFor(name);
    const presence = presenceOf(state.get(cells.place));
    const before = found.get(part);
    found.set(part, before === undefined || before === presence ? presence : 'some');
  }
  return found;
}

function presenceOf(bits: number): Presence {
  const within = (mask: number) => (bits & ~mask) === 0;
  if (within(place.in | place.trial)) return 'on';
  if (within(place.gone)) return 'discarded';
  if (within(place.guard)) return 'guard';
  // Off in any way: in the basket, or in its sub-assembly.
  return within(place.off | place.sub | place.gone) ? 'off' : 'some';
}
