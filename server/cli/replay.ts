import pc from 'picocolors';
import { becauseText, cautionsByStep } from '../../language/analysis/cautions/index.ts';
import type { Replay, Way } from '../../language/analysis/flow-analysis.ts';
import { wayWords } from '../../language/analysis/prose.ts';
import type { Source } from '../../language/model/source.ts';
import { isGate } from '../../language/model/steps.ts';
import { openProcedure } from './procedure.ts';
import { say, sayData } from './say.ts';
import { visibleJson } from './visible.ts';

/** A state as it is written: what may be true, by thing and property. */
type Written = Readonly<Record<string, readonly string[]>>;

interface ReplayedStep {
  readonly number: string;
  readonly key: string;
  /** Verb and all objects. */
  readonly words: string;
  /** The path that leads to it; empty on the first path. */
  readonly way: string;
  readonly file: string;
  readonly range: Source['range'];
  /** The usual cautions of the step, and what each follows from. */
  readonly cautions: readonly { readonly topic: string; readonly word: string; readonly because: string }[];
  readonly before: Written;
  readonly after: Written;
}

/** Shows a procedure's replay: each step with what it changes, or as JSON with the state before and after. */
export async function replayCommand(
  name: string,
  options: { format: 'text' | 'json'; workspace: string },
): Promise<number> {
  const { found } = await openProcedure(name, options.workspace);
  const replays = found.replays.map((replay) => ({ numbers: replay.program.numbers, steps: stepsOf(replay) }));
  if (options.format === 'json') {
    sayData(`${visibleJson({ procedure: found.procedure.name, replays }, 1)}\n`);
    return 0;
  }
  for (const { numbers, steps } of replays) {
    if (numbers !== null) say(`${pc.bold(`For ${numbers.join(', ')}`)}\n\n`);
    let way = '';
    for (const step of steps) {
      if (step.way !== way) say(`\n${pc.bold(step.way === '' ? 'First path' : step.way)}\n`);
      way = step.way;
      say(`${pc.cyan(step.number.padEnd(7))}${step.words}\n`);
      for (const [cell, values] of Object.entries(step.after)) {
        const before = step.before[cell]!;
        if (before.join() !== values.join())
          say(`         ${cell}: ${pc.dim(before.join(' or '))} → ${values.join(' or ')}\n`);
      }
    }
  }
  return 0;
}

/** Each step of a replay, with the state before and after it in words. */
export function stepsOf(replay: Replay): ReplayedStep[] {
  const { layout, program } = replay;
  const cautions = cautionsByStep(program.procedure);
  const steps: ReplayedStep[] = [];
  const words = (values: Int32Array): Written =>
    Object.fromEntries(
      layout.cells.map((cell, index) => [`${cell.of} ${cell.property}`, layout.wordsOf(index, values[index]!)]),
    );
  const said = (way: Way) => wayWords(program.procedure, way).replace(/^./u, (first) => first.toUpperCase());
  let before: Written = {};
  replay.visit({
    step: (visit) => {
      before = words(visit.before.values);
    },
    after: ({ step, way }, state) => {
      steps.push({
        number: step.number,
        key: step.key,
        words: [
          step.verb,
          isGate(step) && step.objects.length === 0 ? step.gate.id : step.objects.map(({ name }) => name).join(', '),
        ]
          .join(' ')
          .trim(),
        way: said(way),
        file: step.source.file,
        range: step.source.range,
        cautions: cautions(step).map(({ topic, word, because }) => ({ topic, word, because: becauseText(because) })),
        before,
        after: words(state.values),
      });
    },
  });
  return steps;
}
