/** What is known of the unit at a place in the steps of a procedure. */
import { allSteps } from '../analysis/locations.ts';
import type { AbstractState } from '../analysis/state.ts';
import type { StepState, StepStates } from '../analysis/step-states.ts';
import type { Procedure, Step } from '../model/procedure.ts';
import { comparePositions } from '../model/ranges.ts';
import type { Position } from '../model/source.ts';
import { stepBlocks } from '../syntax/keywords.ts';
import type { Place } from './completion/place.ts';
import { positionAt } from './offset.ts';
import type { Snapshot } from './snapshot.ts';

/** The state before a statement, and what is written there. */
export interface StateAt {
  readonly procedure: Procedure;
  readonly states: StepStates;
  readonly state: AbstractState;
  /** The step before it in its block. */
  readonly last: Step | null;
}

/** The state where the statement around a place begins; null where it is in no step of a procedure, or none is known. */
export function stateAt({ result, textOf }: Snapshot, file: string, place: Place): StateAt | null {
  const [outer] = place.blocks;
  const block = place.blocks.findLast(({ word }) => word !== 'only' && stepBlocks.includes(word));
  if (outer?.word !== 'procedure' || block === undefined || block.word === 'sequence') return null;
  const checked = result.procedureOf(outer.head[1] ?? '');
  if (checked === null || checked.procedure.source.file !== file || checked.states === null) return null;
  const { procedure, states } = checked;
  const text = textOf(file) ?? '';
  const from = positionAt(text, block.start);
  const to = positionAt(text, place.start);
  const steps = allSteps(procedure);
  const isIn = ({ source }: Step, start: Position, end: Position) =>
    source.file === file &&
    comparePositions(start, source.range.start) <= 0 &&
    comparePositions(source.range.end, end) <= 0;
  const known = (step: Step | undefined, side: keyof StepState): AbstractState | null =>
    (step === undefined ? null : states.states[steps.indexOf(step)]?.[side]) ?? null;
  const last = steps.findLast((step) => isIn(step, from, to) && known(step, 'after') !== null) ?? null;
  const state = last === null ? stateAtStart(procedure, block.head[1], known) : known(last, 'after');
  return state === null ? null : { procedure, states, state, last };
}

/** Where a block begins: before its first step, or after the stage before it. */
function stateAtStart(
  { stages, repairs }: Procedure,
  name: string | undefined,
  known: (step: Step | undefined, side: keyof StepState) => AbstractState | null,
): AbstractState | null {
  const block = [...stages, ...repairs].find((one) => one.name === name);
  const own = known(block?.steps[0], 'before');
  if (own !== null) return own;
  const before = stages.slice(
    0,
    Math.max(
      0,
      stages.findIndex((stage) => stage.name === name),
    ),
  );
  return before.reduceRight<AbstractState | null>((found, stage) => found ?? known(stage.steps.at(-1), 'after'), null);
}
