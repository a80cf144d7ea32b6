import type { CheckedProcedure, CheckResult } from '../../language/check.ts';
import type { Step } from '../../language/model/procedure.ts';
import type { Replay, Way } from '../../language/replay/replay.ts';

/**
 * Whether a workspace with two steps swapped is the same in all that the replay knows: on every way the same states
 * at every point, but for the one between the two. The sheet is then the same up to order.
 */
export function commutes(sound: CheckResult, swapped: CheckResult): boolean {
  return sound.procedures.every((one, index) => {
    const other = swapped.procedures[index];
    return other !== undefined && sameProcedure(one, other);
  });
}

function sameProcedure(one: CheckedProcedure, other: CheckedProcedure): boolean {
  if (one.replays.length !== other.replays.length) return false;
  return one.replays.every((replay, index) => sameReplay(replay, other.replays[index]!));
}

function sameReplay(one: Replay, other: Replay): boolean {
  const [steps, otherSteps] = [stepsOf(one), stepsOf(other)];
  if (steps.length !== otherSteps.length) return false;
  /** Points at which another step stands in the other order; at the last of a run the two have come together again. */
  const differs = steps.map((step, at) => step !== otherSteps[at]);
  const between = (at: number) => differs[at] === true && differs[at + 1] === true;
  const [states, others] = [statesOf(one), statesOf(other)];
  if (states.size !== others.size) return false;
  return [...states].every(([key, { at, text }]) => {
    const there = others.get(key);
    return there !== undefined && (between(at) || there.text === text);
  });
}

function stepsOf(replay: Replay): string[] {
  return replay.program.points.map((point) => (point.kind === 'step' ? wordsOf(point.step) : point.kind));
}

/** The state after each step of each way, in words that do not depend on numbering. */
function statesOf(replay: Replay): Map<string, { readonly at: number; readonly text: string }> {
  const states = new Map<string, { at: number; text: string }>();
  replay.visit({
    after({ way, at }, state) {
      const text = replay.layout.cells
        .map((cell, index) => `${withoutNumber(cell.of)}.${cell.property}=${state.get(index)}`)
        .sort()
        .join(';');
      states.set(`${wayKey(way)}@${at}`, { at, text });
    },
  });
  return states;
}

/** The name of a gate without the number that a check has behind it: numbers change when steps are swapped. */
function withoutNumber(name: string): string {
  return name.replace(/ \(R?\d+\.\d+[a-z]*\)$/u, '');
}

function wayKey(way: Way): string {
  return way.from === null
    ? ''
    : `${wayKey(way.from.way)}>${withoutNumber(way.from.gate.gate!.name)}:${way.repair!.name}`;
}

function wordsOf(step: Step): string {
  const objects = [...step.objects, ...step.withObjects].map(({ name }) => name).join();
  return `${step.verb} ${objects} ${step.text ?? ''}`;
}
