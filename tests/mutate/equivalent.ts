import type { FlowAnalysis, PathContext } from '../../language/analysis/flow-analysis.ts';
import type { CheckedProcedure, CheckResult } from '../../language/db/workspace.ts';
import { renderText } from '../../language/documents/renderers/index.ts';
import { buildSheet } from '../../language/documents/traveler/index.ts';
import type { Step } from '../../language/model/procedure.ts';
import { namedIn } from '../../language/model/steps.ts';

/**
 * Whether a workspace that was broken is the same in all that the flow analysis knows and in all that is printed: on every way
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
  if (one.flows.length !== other.flows.length) return false;
  return one.flows.every((flow, index) => sameReplay(flow, other.flows[index]!)) && linesOf(one) === linesOf(other);
}

const known = new WeakMap<CheckedProcedure, string>();

/** The lines of the sheet without their numbers, sorted; the usual cautions follow from the steps. */
function linesOf(one: CheckedProcedure): string {
  let lines = known.get(one);
  if (lines === undefined) {
    const { procedure, diagnostics } = one;
    const sheet = buildSheet(procedure, { job: null, number: null, paper: 'a4', draft: false, diagnostics, hash: '' });
    const blocks = sheet.blocks
      .filter(({ kind }) => kind !== 'safety')
      .map((block) =>
        block.kind === 'step'
          ? { ...block, cautions: [], alert: '' }
          : block.kind === 'place' || block.kind === 'repairs'
            ? { ...block, danger: null, warnings: [] }
            : block,
      );
    lines = renderText({ ...sheet, blocks })
      .map((line) => line.replaceAll(/\bR?\d+\.\d+[a-z]*\b|\bR\d+\b/gu, ''))
      .sort()
      .join('\n');
    known.set(one, lines);
  }
  return lines;
}

function sameReplay(one: FlowAnalysis, other: FlowAnalysis): boolean {
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

function isRepair({ graph: program }: FlowAnalysis, at: number): boolean {
  return program.procedure.repairs.some((repair) => repair === program.nodes[at]!.block);
}

function stepsOf(flow: FlowAnalysis): string[] {
  return placesOf(flow).map((at) => {
    const point = flow.graph.nodes[at]!;
    return point.kind === 'step' ? wordsOf(point.step) : point.kind;
  });
}

/** The points of a flow analysis, without those that are for other part numbers. */
function placesOf({ graph: program }: FlowAnalysis): number[] {
  return program.nodes.flatMap((node, at) => (node.kind === 'nop' ? [] : [at]));
}

/** The state after each step of each way, in words that do not depend on numbering. */
function statesOf(flow: FlowAnalysis): Map<string, { readonly at: number; readonly text: string }> {
  const states = new Map<string, { at: number; text: string }>();
  const order = new Map(placesOf(flow).map((at, index) => [at, index]));
  flow.visit({
    after({ path, at }, state) {
      const text = flow.layout.locations
        .map((cell, index) => `${withoutNumber(cell.of)}.${cell.property}=${state.get(index)}`)
        .sort()
        .join(';');
      const place = order.get(at)!;
      states.set(`${wayKey(path)}@${place}`, { at: place, text });
    },
  });
  return states;
}

/** The name of a gate without the number that a check has behind it: numbers change when steps are swapped. */
function withoutNumber(name: string): string {
  return name.replace(/ \(R?\d+\.\d+[a-z]*\)$/u, '');
}

function wayKey(path: PathContext): string {
  return path.from === null
    ? ''
    : `${wayKey(path.from.path)}>${withoutNumber(path.from.gate.gate.id)}:${path.repair!.name}`;
}

function wordsOf(step: Step): string {
  const objects = namedIn(step)
    .map(({ name }) => name)
    .join();
  return `${step.verb} ${objects} ${step.text ?? ''}`;
}
