import { expect, it } from 'vitest';
import { libraryFiles } from '../../tests/library.ts';
import { resolve } from '../db/resolve.ts';
import type { Procedure, Step } from '../model/procedure.ts';
import { parse } from '../syntax/parse.ts';
import { analyzeFlow, analyzeInPieces, type FlowAnalysis, finish } from './flow-analysis.ts';
import { FlowMemory } from './flow-memory.ts';
import { allSteps } from './locations.ts';

const { procedures } = resolve(libraryFiles().map(({ uri, text }) => ({ uri, ast: parse(text).ast })));

/** The procedure with others in the place of one of its steps. */
function withInstead(procedure: Procedure, of: Step, steps: readonly Step[]): Procedure {
  const edited = <B extends { readonly steps: readonly Step[] }>(block: B): B =>
    block.steps.includes(of)
      ? { ...block, steps: block.steps.flatMap((step) => (step === of ? steps : [step])) }
      : block;
  return { ...procedure, stages: procedure.stages.map(edited), repairs: procedure.repairs.map(edited) };
}

/** All that a visitor can know: each step on each path, with its state and the provenance of that. */
function shownIn(flows: readonly FlowAnalysis[]): string[] {
  const shown: string[] = [];
  for (const flow of flows)
    flow.visit({
      step: ({ step, block, path, at, before: { values, provenance } }) =>
        shown.push(`${at} ${step.text} ${block.name} ${path.id} ${path.repair?.steps.length} ${values} ${provenance}`),
    });
  return shown;
}

/** Edits of every so-and-so-many-th step. */
function* edits(every: number): Generator<{ readonly before: Procedure; readonly step: Step }> {
  for (const before of procedures)
    for (const [index, step] of allSteps(before).entries()) if (index % every === 5) yield { before, step };
}

function analyzed(memory: FlowMemory, procedure: Procedure): readonly FlowAnalysis[] {
  const { flows, facts } = finish(analyzeInPieces(procedure, memory));
  memory.keep(flows, facts);
  return flows;
}

it('after an edit all paths have the states that are found from nothing', () => {
  for (const { before, step } of edits(37))
    for (const instead of [[{ ...step, text: 'Other words.' }], [], [step, { ...step }]]) {
      const memory = new FlowMemory();
      analyzed(memory, before);
      const after = withInstead(before, step, instead);
      expect(shownIn(analyzed(memory, after))).toEqual(shownIn(analyzeFlow(after)));
    }
});

it('an edit of words alone is not analyzed again, unless a gate is worded', () => {
  let kept = 0;
  for (const { before, step } of edits(7)) {
    const memory = new FlowMemory();
    const first = analyzed(memory, before);
    const worded = analyzed(memory, withInstead(before, step, [{ ...step, text: 'Other words.' }]));
    if (worded.every((flow, index) => flow === first[index])) kept++;
    expect(analyzed(memory, withInstead(before, step, []))[0]).not.toBe(worded[0]);
  }
  expect(kept).toBeGreaterThan(40);
});
