/** What is known of the unit at a place in the steps of a procedure. */
import { allSteps } from '../analysis/locations.ts';
import type { AbstractState } from '../analysis/state.ts';
import type { StepState, StepStates } from '../analysis/step-states.ts';
import type { Procedure, Step } from '../model/procedure.ts';
import { comparePositions } from '../model/ranges.ts';
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
  if (checked === null || checked.procedure.source.file !== file) return null;
  const { procedure } = checked;
  const text = textOf(file) ?? '';
  const from = positionAt(text, block.start);
  const to = positionAt(text, place.start);
  const steps = allSteps(procedure);
  // A repair that is written within a step of the block is not what the next step follows.
  const own = [...procedure.stages, ...procedure.repairs].find(({ name }) => name === block.head[1])?.steps ?? [];
  const index = steps.findLastIndex(
    (step) =>
      own.includes(step) &&
      step.source.file === file &&
      comparePositions(from, step.source.range.start) <= 0 &&
      comparePositions(step.source.range.end, to) <= 0,
  );
  // The first step of a stage follows the last of the stage before it.
  const stage = procedure.stages.findIndex(({ name }) => name === block.head[1]);
  const before = procedure.stages.slice(0, Math.max(0, stage)).reduce((count, one) => count + one.steps.length, -1);
  const upTo = Math.max(index, before);
  const states = upTo < 0 ? checked.states : checked.statesUpTo(upTo);
  if (states === null) return null;
  const known = (step: Step | undefined, side: keyof StepState): AbstractState | null =>
    (step === undefined ? null : states.states[steps.indexOf(step)]?.[side]) ?? null;
  const last = steps[index] ?? null;
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
