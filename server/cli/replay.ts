import pc from 'picocolors';
import { cautionsByStep } from '../../language/analysis/cautions/index.ts';
import type { FlowAnalysis, PathContext } from '../../language/analysis/flow-analysis.ts';
import { pathWords } from '../../language/analysis/prose.ts';
import type { Source } from '../../language/model/source.ts';
import { isGate } from '../../language/model/steps.ts';
import { capital, either, propertyTerm, stateTerm, term } from '../../language/say/say.ts';
import { worded, words } from './messages.ts';
import { openProcedure } from './procedure.ts';
import { say, sayData } from './say.ts';
import { visibleJson } from './visible.ts';

/** A state as it is written: what may be true, by thing and property. */
type Written = Readonly<Record<string, readonly string[]>>;

export interface ReplayedStep {
  readonly number: string;
  readonly key: string;
  /** Verb and all objects. */
  readonly words: string;
  /** The path that leads to it; empty on the first path. */
  readonly path: string;
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
  const flows = found.flows.map((flow) => ({ numbers: flow.graph.numbers, steps: stepsOf(flow) }));
  if (options.format === 'json') {
    sayData(`${visibleJson({ procedure: found.procedure.name, flows }, 1)}\n`);
    return 0;
  }
  for (const { numbers, steps } of flows) {
    if (numbers !== null) say(`${pc.bold(worded`For ${numbers.join(', ')}`)}\n\n`);
    let path = '';
    for (const step of steps) {
      if (step.path !== path) say(`\n${pc.bold(step.path === '' ? worded`First path` : step.path)}\n`);
      path = step.path;
      say(`${pc.cyan(step.number.padEnd(7))}${step.words}\n`);
      for (const [cell, values] of Object.entries(step.after)) {
        const before = step.before[cell]!;
        if (before.join() !== values.join())
          say(`         ${cellText(cell)}: ${pc.dim(valuesText(cell, before))} → ${valuesText(cell, values)}\n`);
      }
    }
  }
  return 0;
}

/** What a location is of, and which of its properties, in the language of the command: `part shim place`. */
export function cellText(cell: string): string {
  const [kind, ...rest] = cell.split(' ');
  const [name, property] = kind === 'unit' ? [[], rest] : [[rest[0]!], rest.slice(1)];
  return [words(term(kind!)), ...name, words(propertyTerm(property.join(' ')))].join(' ');
}

/** What may be true there. Where something is, is called by its name. */
export function valuesText(cell: string, values: readonly string[]): string {
  const isPlace = / (?:stays with|station)$/u.test(cell);
  return words(either(values.map((value) => (isPlace && value !== 'the unit' ? value : stateTerm(value)))));
}

/** Each step of a flow analysis, with the state before and after it in words. */
export function stepsOf(flow: FlowAnalysis): ReplayedStep[] {
  const { layout, graph: program } = flow;
  const cautions = cautionsByStep(program.procedure);
  const steps: ReplayedStep[] = [];
  const written = (values: Int32Array): Written =>
    Object.fromEntries(
      layout.locations.map((cell, index) => [`${cell.of} ${cell.property}`, layout.wordsOf(index, values[index]!)]),
    );
  const said = (path: PathContext) => words(capital(pathWords(program.procedure, path) ?? ''));
  let before: Written = {};
  flow.visit({
    step: (visit) => {
      before = written(visit.before.values);
    },
    after: ({ step, path }, state) => {
      steps.push({
        number: step.number,
        key: step.key,
        words: [
          step.verb,
          isGate(step) && step.objects.length === 0 ? step.gate.id : step.objects.map(({ name }) => name).join(', '),
        ]
          .join(' ')
          .trim(),
        path: said(path),
        file: step.source.file,
        range: step.source.range,
        cautions: cautions(step).map(({ topic, word, because }) => ({ topic, word, because: words(because) })),
        before,
        after: written(state.values),
      });
    },
  });
  return steps;
}
