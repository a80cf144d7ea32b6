import { type Language, type OwnWords, type Words, wordsIn } from '../i18n/index.ts';
import type { Diagnostic, Job, PartNumber, Procedure, Stage, Step, Unit } from '../model/index.ts';
import type { Paper, SheetForm, UnitHead } from './model.ts';

/** What prints alone: the table of specs, the drawings, or a repair by its number. */
export type SheetPart = 'specs' | 'drawing' | `R${number}`;

export interface SheetOptions {
  /** The work order to print for; null: a blank sheet. */
  readonly job: Job | null;
  /** One part number's limits (and, with a job, its units); null: all of them side by side. */
  readonly number: string | null;
  /** What of it is printed; the card, which has all, unless said otherwise. */
  readonly form?: SheetForm;
  /** One unit of the job, by its place; else all. */
  readonly unit?: string | null;
  /** Of an instruction: the stages at one station; else all. */
  readonly station?: string | null;
  /** One thing alone. */
  readonly part?: SheetPart | null;
  readonly paper: Paper;
  /** Requested as a draft; errors make it one anyway. */
  readonly draft: boolean;
  readonly diagnostics: readonly Diagnostic[];
  /** Of the fixed words; English unless said otherwise. */
  readonly language?: Language;
  /** What the sheet is called; the language's own word unless said otherwise. */
  readonly word?: string | null;
  /** What the shop calls kinds of part; the language's own words unless said otherwise. */
  readonly kinds?: OwnWords;
  /** Hash of the content that it is printed from, hex. */
  readonly hash: string;
}

/** What the sheet is printed for, worked out once. */
export interface PrintContext {
  readonly procedure: Procedure;
  readonly options: SheetOptions;
  /** The fixed words, in the requested language. */
  readonly words: Words;
  readonly units: readonly Unit[];
  readonly columns: readonly UnitHead[];
  /** Part numbers whose limits are shown, in the procedure's order. */
  readonly numbers: readonly PartNumber[];
}

/** Units of a blank sheet where a set is worked together. */
const usualSet = 6;

export function buildPrintContext(procedure: Procedure, options: SheetOptions): PrintContext {
  const units = (options.job?.units ?? []).filter(
    ({ number, place }) =>
      (options.number === null || number === options.number) && (options.unit == null || place === options.unit),
  );
  const inJob = procedure.numbers.filter(({ name }) => units.some((unit) => unit.number === name));
  const numbers =
    options.number !== null
      ? procedure.numbers.filter(({ name }) => name === options.number)
      : inJob.length > 0
        ? inJob
        : procedure.numbers;
  const own = wordsIn(options.language ?? 'en', options.kinds);
  const words = options.word == null ? own : { ...own, sheet: options.word };
  return { procedure, options, words, units, numbers, columns: columnsOf(procedure, options, units, words) };
}

function columnsOf(procedure: Procedure, options: SheetOptions, units: readonly Unit[], words: Words): UnitHead[] {
  if (options.job === null) {
    const set = procedure.stages.some((stage) => stage.together || stage.steps.some((step) => step.verb === 'across'));
    return Array.from({ length: set ? usualSet : 1 }, (_, index) => ({
      place: String(index + 1),
      detail: '',
      odd: false,
    }));
  }
  const counts = new Map<string, number>();
  for (const { numberText } of units) counts.set(numberText, (counts.get(numberText) ?? 0) + 1);
  const mixed = counts.size > 1;
  const most = Math.max(0, ...counts.values());
  return units.map((unit) => ({
    place: unit.place,
    detail: unit.onHold !== null ? words.boxes.onHoldColumn : mixed ? unit.numberText : '',
    odd: mixed && counts.get(unit.numberText)! < most,
  }));
}

/** How many units the sheet is for. */
export function setSize({ columns }: PrintContext): number {
  return columns.length;
}

/** What is worked out for each part number of the sheet; with none, once, for null. */
export function numbersOf({ numbers }: Pick<PrintContext, 'numbers'>): (string | null)[] {
  return numbers.length === 0 ? [null] : numbers.map(({ name }) => name);
}

/** True where the step is for a part number that the sheet shows. */
export function isShown(setting: PrintContext, step: Step): boolean {
  return step.only === null || step.only.some((name) => setting.numbers.some((number) => number.name === name));
}

/** The steps of a stage or repair that this sheet shows. */
export function shownSteps(setting: PrintContext, place: { readonly steps: readonly Step[] }): Step[] {
  return place.steps.filter((step) => isShown(setting, step));
}

/** All steps of the stages, with theirs. */
export function stageSteps(setting: PrintContext): { readonly stage: Stage; readonly step: Step }[] {
  return setting.procedure.stages.flatMap((stage) => shownSteps(setting, stage).map((step) => ({ stage, step })));
}

/** All steps of stages and repairs that the sheet shows. */
export function allSteps(setting: PrintContext): Step[] {
  return [...setting.procedure.stages, ...setting.procedure.repairs].flatMap((place) => shownSteps(setting, place));
}
