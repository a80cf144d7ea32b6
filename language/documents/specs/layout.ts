import type { Language } from '../../i18n/index.ts';
import type { LimitUse, PartNumber, Procedure, Repair, Stage, Step } from '../../model/procedure.ts';
import type { Source } from '../../model/source.ts';
import { failEntries } from '../../model/steps.ts';
import { type HeldFigure, heldFigures, type Which } from '../figures/held.ts';
import type { LimitFigure } from '../figures/limit-figure.ts';
import type { Where } from '../figures/scales.ts';
import { stepFigures } from '../figures/step-figures.ts';
import { buildPrintContext, type PrintContext } from '../print-context.ts';
import { type CompletedCell, limitCell, lineOf, missing, wordsCell } from './cells.ts';
import type { SpecCell, SpecFigure, SpecLine } from './model.ts';

/** Makes the cell of one part number; null: the figure is not for it. */
export type Cells = (number: PartNumber | null) => SpecCell | null;

/** What specifications are laid out from. */
export interface Layout {
  readonly procedure: Procedure;
  readonly setting: PrintContext;
  /** Every step with the station that it is done at, stages first. */
  readonly done: readonly CompletedCell[];
  /** One column each; null: there are no part numbers. */
  readonly numbers: readonly (PartNumber | null)[];
  /** Specs that some figure is from: what is left over is shown with the others. */
  readonly used: Set<string>;
}

export function layoutOf(procedure: Procedure, language: Language): Layout {
  const setting = buildPrintContext(procedure, {
    job: null,
    number: null,
    language,
    paper: 'a4',
    draft: false,
    diagnostics: [],
    hash: '',
  });
  const doneIn = (where: Stage | Repair, stations: readonly Where[]) =>
    where.steps.map((step): CompletedCell => ({ step, figures: stepFigures(setting, step, where), where, stations }));
  return {
    procedure,
    setting,
    done: [
      ...procedure.stages.flatMap((where) => doneIn(where, [where])),
      ...procedure.repairs.flatMap((where) => {
        const senders = where.station === null ? sendersOf(procedure, where.name) : [];
        return doneIn(where, senders.length === 0 ? [where] : senders);
      }),
    ],
    numbers: procedure.numbers.length === 0 ? [null] : procedure.numbers,
    used: new Set(),
  };
}

/** Stages that send a unit to a repair; the repair is done at their stations. */
function sendersOf({ stages }: Procedure, repair: string): Stage[] {
  return stages.filter(({ steps }) => steps.some((step) => failEntries(step).some((entry) => entry.repair === repair)));
}

export function figure(layout: Layout, what: string, { step }: CompletedCell, cells: Cells): SpecFigure {
  return {
    what,
    steps: [step.number],
    line: lineOf(step.source),
    cells: layout.numbers.map((number) => (isFor(step, number) ? cells(number) : null)),
  };
}

/** A figure that no step says. */
export function stated(
  layout: Layout,
  what: string,
  source: Source,
  cells: Cells,
  steps: readonly string[] = [],
): SpecFigure {
  return { what, steps, line: lineOf(source), cells: layout.numbers.map(cells) };
}

export function nothing(layout: Layout, done: CompletedCell, what: string, text: string): SpecFigure {
  const cell = wordsCell('', lineOf(done.step.source), [missing('value', text)]);
  return figure(layout, what, done, () => cell);
}

/** The limit of a step through its spec, or as it is written there. */
export function limit(layout: Layout, done: CompletedCell, use: LimitUse, which: Which): Cells {
  const { setting, used } = layout;
  const { words } = setting;
  const { step } = done;
  const held = heldAt(setting, done, use).filter((one) => one.which === which);
  const judged = true;
  if (use.form === 'limit') {
    const [only] = held;
    return () =>
      only?.figure == null
        ? null
        : limitCell(setting, done, only.figure, step.sourceText, lineOf(step.source), { judged });
  }
  used.add(use.spec);
  return (number) => {
    const { value, figure: of } = held.find((one) => one.number === (number?.name ?? null)) ?? noFigure;
    if (value === null) return null;
    const line = lineOfSpec(layout, use.spec, number, which);
    if (of !== null) return limitCell(setting, done, of, value.sourceText, line, { judged });
    if (which !== 'rebuilt') return null;
    return value.notRequired
      ? wordsCell(
          words.limits.notRequired,
          line,
          value.sourceText === null ? [missing('source', words.specs.missing.source)] : [],
          value.sourceText,
        )
      : wordsCell('', line, [missing('value', words.specs.missing.limit)]);
  };
}

const noFigure = { value: null, figure: null };

/** The limits of a use that is the step's own, or of another: an adjuster is held to the spec that it sets. */
export function heldAt(
  setting: PrintContext,
  { step, where, figures }: CompletedCell,
  use: LimitUse,
): readonly HeldFigure[] {
  const own = figures.use;
  const isOwn = own === use || (own?.form === 'spec' && use.form === 'spec' && own.spec === use.spec);
  return isOwn ? figures.held : heldFigures(setting, step, where, use);
}

/** The line of a number's value: with the number if it has one of its own, else with the spec. */
export function lineOfSpec(layout: Layout, name: string, number: PartNumber | null, which: Which): SpecLine {
  const own = number?.values.find(({ spec }) => spec === name);
  const spec = layout.procedure.specs.find((other) => other.name === name)!;
  const written = own !== undefined && (own[which] !== null || own.notRequired || spec[which] === null);
  return lineOf(written ? own.source : spec.source);
}

/** A limit that is written in the step, and something is passed by. */
export function written(layout: Layout, done: CompletedCell, what: string, of: LimitFigure): SpecFigure {
  const { step } = done;
  const cell = limitCell(layout.setting, done, of, step.sourceText, lineOf(step.source), { judged: true });
  return figure(layout, what, done, () => cell);
}

/** A figure that the work is done at, in words. */
export function condition(
  layout: Layout,
  done: CompletedCell,
  what: string,
  of: LimitFigure,
  value: string,
): SpecFigure {
  const { step } = done;
  const cell = limitCell(layout.setting, done, of, step.sourceText, lineOf(step.source), { judged: false, value });
  return figure(layout, what, done, () => cell);
}

export function specOf(layout: Layout, name: string | null, source: Source): LimitUse | null {
  const spec = layout.procedure.specs.find((other) => other.name === name);
  return spec === undefined ? null : { form: 'spec', spec: spec.name, source };
}

function isFor({ only }: Step, number: PartNumber | null): boolean {
  return only === null || (number !== null && only.includes(number.name));
}

/** What a cell says, wherever it is written. */
export function cellKey(cell: SpecCell | null): string {
  return JSON.stringify(cell === null ? null : { ...cell, line: 0 });
}

/**
 * Figures of the same thing that are equal for each number that both are for are given once, with the steps of both: a
 * joint is torqued in a stage and in every repair that opens it.
 */
export function merged(figures: readonly SpecFigure[]): SpecFigure[] {
  const made: SpecFigure[] = [];
  for (const figure of figures) {
    const index = made.findIndex(
      ({ what, cells }) =>
        what === figure.what &&
        cells.every((cell, column) => {
          const other = figure.cells[column]!;
          return cell === null || other === null || cellKey(cell) === cellKey(other);
        }),
    );
    const known = made[index];
    if (known === undefined) made.push(figure);
    else
      made[index] = {
        ...known,
        steps: [...new Set([...known.steps, ...figure.steps])],
        cells: known.cells.map((cell, column) => cell ?? figure.cells[column]!),
      };
  }
  return made;
}
