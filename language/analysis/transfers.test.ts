import { expect, it } from 'vitest';
import { corpusFiles } from '../../tests/corpus/files.ts';
import { libraryFiles } from '../../tests/library.ts';
import { resolve } from '../db/resolve.ts';
import { parse } from '../syntax/parse.ts';
import { Effects } from './effects.ts';
import { analyzeFlow } from './flow-analysis.ts';
import { type AbstractState, StatePool } from './state.ts';

const proceduresIn = (files: readonly { uri: string; text: string }[]) =>
  resolve(files.map(({ uri, text }) => ({ uri, ast: parse(text).ast }))).procedures;

it('what is kept of the effect of a step is what the step does, on every path', () => {
  let passed = 0;
  const wrong: string[] = [];
  for (const procedure of [...proceduresIn(libraryFiles(true)), ...proceduresIn(corpusFiles())])
    for (const flow of analyzeFlow(procedure)) {
      const effects = new Effects(procedure, flow.graph.absent);
      const states = new StatePool(flow.layout);
      let worked: AbstractState | null = null;
      flow.visit({
        step({ step, before, at }) {
          worked = states.copy(before);
          effects.apply(step, worked, at);
        },
        after({ step, path }, state) {
          passed++;
          if (`${worked!.values};${worked!.provenance}` !== `${state.values};${state.provenance}`)
            wrong.push(`${procedure.name} ${step.number} on path ${path.id}`);
          states.giveBack(worked!);
        },
      });
    }
  expect(wrong).toEqual([]);
  expect(passed).toBeGreaterThan(5_000);
});
