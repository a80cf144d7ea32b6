import type { Replay, Way } from '../../language/analysis/flow-analysis.ts';
import type { CheckedProcedure, CheckResult } from '../../language/db/workspace.ts';
import { textOf } from '../../language/documents/renderers/index.ts';
import { sheetOf } from '../../language/documents/traveler/index.ts';
import type { Step } from '../../language/model/procedure.ts';
import { namedIn } from '../../language/model/steps.ts';

/**
 * Whether a workspace that was broken is the same in all that the replay knows and in all that is printed: on every way
 * the same states at every point (of two steps swapped, but for the one between them), and the same lines on the sheet
 * up to their order and numbers. Nothing was broken then.
 */
export function isEquivalent(sound: CheckResult, broken: CheckResult): boolean {
  return (
    sound.procedures.length === broken.procedures.length &&
    sound.procedures.every((one, index) => sameProcedure(one, broken.procedures[index]!))
  );
}

function sameProcedure(one: CheckedProcedure, other: CheckedProcedure): boolean {
  if (one.replays.length !== other.replays.length) return false;
  return (
    one.replays.every((replay, index) => sameReplay(replay, other.replays[index]!)) && linesOf(one) === linesOf(other)
  );
}

const known = new WeakMap<CheckedProcedure, string>();

/** The lines of the sheet without their numbers, sorted; the usual cautions follow from the steps. */
function linesOf(one: CheckedProcedure): string {
  let lines = known.get(one);
  if (lines === undefined) {
    const { procedure, findings } = one;
    const sheet = sheetOf(procedure, { job: null, number: null, paper: 'a4', draft: false, findings, hash: '' });
    const blocks = sheet.blocks
      .filter(({ kind }) => kind !== 'caution')
      .map((block) => (block.kind === 'step' ? { ...block, cautions: [] } : block));
    lines = textOf({ ...sheet, blocks })
      .map((line) => line.replaceAll(/\bR?\d+\.\d+[a-z]*\b|\bR\d+\b/gu, ''))
      .sort()
      .join('\n');
    known.set(one, lines);
  }
  return lines;
}

function sameReplay(one: Replay, other: Replay): boolean {
  const [steps, otherSteps] = [stepsOf(one), stepsOf(other)];
  if (steps.length !== otherSteps.length) return false;
  /** Points at which another step is in the other order; at the last of a run the two have come together again. */
  const differs = steps.map((step, at) => step !== otherSteps[at]);
  const between = (at: number) => differs[at] === true && differs[at + 1] === true;
  // A check that fails sends the unit to its repair with everything before it done: if two steps of a stage have
  // changed places, the state inside the repair may differ, and must be the same when the stage goes on.
  const places = placesOf(one);
  const inRepair = (at: number) => isRepair(one, places[at]!);
  const aside = differs.some((other, at) => other && inRepair(at)) ? () => false : inRepair;
  const [states, others] = [statesOf(one), statesOf(other)];
  if (states.size !== others.size) return false;
  return [...states].every(([key, { at, text }]) => {
    const there = others.get(key);
    return there !== undefined && (between(at) || aside(at) || there.text === text);
  });
}

function isRepair({ program }: Replay, at: number): boolean {
  return program.procedure.repairs.some((repair) => repair === program.points[at]!.block);
}

function stepsOf(replay: Replay): string[] {
  return placesOf(replay).map((at) => {
    const point = replay.program.points[at]!;
    return point.kind === 'step' ? wordsOf(point.step) : point.kind;
  });
}

/** The points of a replay, without those that are for other part numbers. */
function placesOf({ program }: Replay): number[] {
  return program.points.flatMap((point, at) => (point.kind === 'skip' ? [] : [at]));
}

/** The state after each step of each way, in words that do not depend on numbering. */
function statesOf(replay: Replay): Map<string, { readonly at: number; readonly text: string }> {
  const states = new Map<string, { at: number; text: string }>();
  const order = new Map(placesOf(replay).map((at, index) => [at, index]));
  replay.visit({
    after({ way, at }, state) {
      const text = replay.layout.cells
        .map((cell, index) => `${withoutNumber(cell.of)}.${cell.property}=${state.get(index)}`)
        .sort()
        .join(';');
      const place = order.get(at)!;
      states.set(`${wayKey(way)}@${place}`, { at: place, text });
    },
  });
  return states;
}

/** The name of a gate without the number that a check has behind it: numbers change when steps are swapped. */
function withoutNumber(name: string): string {
  return name.replace(/ \(R?\d+\.\d+[a-z]*\)$/u, '');
}

function wayKey(way: Way): string {
  return way.from === null ? '' : `${wayKey(way.from.way)}>${withoutNumber(way.from.gate.gate.id)}:${way.repair!.name}`;
}

function wordsOf(step: Step): string {
  const objects = namedIn(step)
    .map(({ name }) => name)
    .join();
  return `${step.verb} ${objects} ${step.text ?? ''}`;
}
