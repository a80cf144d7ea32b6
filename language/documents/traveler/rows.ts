import type { Words } from '../../i18n/index.ts';
import { insideOf } from '../../judgment/inside.ts';
import type { Result } from '../../model/job.ts';
import type { Wording } from '../../model/plan.ts';
import type { Step, StepOf } from '../../model/procedure.ts';
import { testOf } from '../../model/reading-id.ts';
import { failEntries, isTestOf, own } from '../../model/steps.ts';
import { capital } from '../../model/titles.ts';
import { compare, type Quantity, window } from '../../quantities/index.ts';
import type { StepFigures } from '../figures/step-figures.ts';
import type { BoxRow, SetBoxes } from '../model.ts';
import { objectWords, repairNumber, specTitle } from '../names.ts';
import { type PrintContext, setSize } from '../print-context.ts';
import type { SheetContext } from './context.ts';

/** What is written down at a step, once for each unit. */
export interface Recording {
  /** The same at each step that records the same thing: the figure of a test, a torque of a part. */
  readonly key: string;
  readonly label: string;
  readonly unit: string;
  /** A result of a job that belongs here. */
  readonly fits: (result: Result) => boolean;
}

/** The unit of a reading; empty where none is known. */
function unitWords({ wording }: Words, { unitRead }: StepFigures): string {
  return unitRead === null ? '' : wording.unit(unitRead, false);
}

/** Everything that is written down at a step. */
export function recordings(setting: PrintContext, figures: StepFigures): Recording[] {
  const { words, procedure } = setting;
  const { step } = figures;
  const { boxes } = words;
  const unit = unitWords(words, figures);
  const none = () => false;
  const reading =
    (name: string, asFound = false) =>
    (result: Result) =>
      result.form === 'reading' && result.name === name && result.asFound === asFound;
  switch (step.verb) {
    case 'read': {
      if (figures.plan !== null) return [];
      const fits = (result: Result) =>
        (result.form === 'reading' || result.form === 'verdict') &&
        result.name === step.reading &&
        result.asFound === step.asFound;
      const spoken = procedure.specs.some(({ name }) => name === step.reading) || unit !== '';
      const label = step.asFound ? boxes.asFound : boxes.reading;
      return [{ key: `read ${step.key}`, label: spoken ? label : boxes.inWords({ label }), unit, fits }];
    }
    case 'measure': {
      const spec = own(step, 'limit');
      return step.objects.map((object) => ({
        key: `measure ${object.name} ${step.key}`,
        label: step.objects.length < 2 ? boxes.reading : capital(objectWords(setting, [object])[0]!),
        unit,
        fits: (result) =>
          (result.form === 'shim' && !result.fitted && result.part === object.name) ||
          (spec?.form === 'spec' && reading(spec.spec)(result)),
      }));
    }
    case 'set':
      return [{ key: `set ${step.reading}`, label: boxes.set, unit, fits: none }];
    case 'torque':
    case 'lock': {
      if (step.verb === 'lock' && step.limit === null) return [];
      const parts = step.objects.map(({ name }) => name);
      const stretch = own(step, 'stretch') != null;
      return [
        {
          key: `torque ${parts.join(' ')}`,
          label: stretch ? words.facts.stretch : boxes.torqued,
          unit: stretch ? unit : '',
          fits: (result) => result.form === 'torque' && parts.includes(result.part),
        },
      ];
    }
    case 'choose': {
      const parts = step.objects.map(({ name }) => name);
      const name = capital(objectWords(setting, step.objects).join(', '));
      const fits = (fitted: boolean) => (result: Result) =>
        result.form === 'shim' && result.fitted === fitted && parts.includes(result.part);
      return [
        { key: `out ${parts.join(' ')}`, label: boxes.out({ part: name }), unit, fits: fits(false) },
        { key: `in ${parts.join(' ')}`, label: boxes.in({ part: name }), unit, fits: fits(true) },
      ];
    }
    case 'record': {
      if (figures.plan !== null) return [];
      const fits = (result: Result) => result.form === 'words' && result.name === step.reading;
      return [{ key: `record ${step.key}`, label: wordingWords(words, step.wording), unit: '', fits }];
    }
    case 'check':
      return [{ key: `check ${step.key}`, ...checkLabel(setting, step, unit), fits: none }];
    case 'test': {
      const { test } = step.gate;
      const reads = testReads(step);
      const verdict = (result: Result) => result.form === 'verdict' && testOf(result.name) === test && !result.asFound;
      return [
        ...(reads && step.plan === null
          ? [{ key: `figure ${test}`, label: boxes.reading, unit, fits: reading(test) }]
          : []),
        ...(isJudged(step) || step.plan !== null
          ? [{ key: `verdict ${test}`, label: boxes.verdict, unit: '', fits: verdict }]
          : []),
      ];
    }
    default:
      return [];
  }
}

/** What is to be written: `6 letters or digits`, `good / worn`. */
export function wordingWords({ plan }: Words, wording: Wording): string {
  switch (wording.form) {
    case 'code':
      return `${wording.count} ${plan.signs[wording.signs]}`;
    case 'one of':
      return wording.words.join(' / ');
    case 'any':
      return plan.inWords;
  }
}

function checkLabel({ words }: PrintContext, step: StepOf<'check'>, unit: string): Pick<Recording, 'label' | 'unit'> {
  const { boxes } = words;
  if (step.limit !== null) return { label: boxes.reading, unit };
  if (step.verdicts.length === 0) return { label: boxes.verdict, unit: '' };
  const marks = step.verdicts.map(({ verdict }) => boxes.marks[verdict]).join(' / ');
  return { label: isEach(step) ? boxes.marksOfEach({ marks }) : marks, unit: '' };
}

/** A figure is written down at this test. */
function testReads({ test, limit }: StepOf<'test'>): boolean {
  return test.reads !== null || test.inTime !== null || limit !== null;
}

/** It is passed by what is seen, besides a figure or alone. */
function isJudged(step: StepOf<'test'>): boolean {
  return !testReads(step) || step.accept !== null || step.reject !== null;
}

/** Several things are sorted: each has a letter in the sentence, and the box has room for the verdict and the letters. */
export function isEach(step: StepOf<'check'>): boolean {
  return step.verdicts.length > 0 && step.objects.length > 1;
}

/** A row, and what is called in it by a reader program: the number of the step comes first. */
export function rowOf(label: string, unit: string, step: string, boxes: readonly string[]): BoxRow {
  return { label, unit, boxes, name: [`${step} ${label}`.trim(), unit].filter((word) => word !== '').join(', ') };
}

/** The boxes in the row of a step; where it is a check, with a row for each second look. */
export function stepRows(context: SheetContext, figures: StepFigures): BoxRow[] {
  const { words, recorded } = context;
  const { step } = figures;
  const size = setSize(context);
  const first = recordings(context, figures).map(({ label, unit, fits }) =>
    rowOf(
      label,
      unit,
      step.number,
      recorded.cells(size, fits, (result) => resultWords(words, result)),
    ),
  );
  return [...first, ...againRows(context, step, first[0]?.unit ?? '')];
}

/** After each try of what a check asks for it is made again. */
function againRows(context: SheetContext, step: Step, unit: string): BoxRow[] {
  if (step.verb !== 'check' && step.verb !== 'measure') return [];
  const { words, procedure } = context;
  const size = setSize(context);
  return failEntries(step).flatMap(({ repair, tries }) =>
    Array.from({ length: findTries(context, repair, tries) }, () =>
      rowOf(words.boxes.after({ repair: repairNumber(procedure, repair) }), unit, step.number, emptyBoxes(size)),
    ),
  );
}

export function emptyBoxes(size: number): string[] {
  return Array.from({ length: size }, () => '');
}

/** Boxes of a comparison of the set: first, and after each try of what it sends to. */
export function setBoxes(context: SheetContext, figures: StepFigures): SetBoxes | null {
  const { words } = context;
  const { step } = figures;
  if (step.verb !== 'across') return null;
  const tries = Math.max(0, ...failEntries(step).map(({ repair, tries: of }) => findTries(context, repair, of)));
  const heads = [words.boxes.first, ...Array.from({ length: tries }, (_, at) => words.boxes.again({ count: at + 1 }))];
  const row = (label: string, unit: string) => rowOf(label, unit, step.number, emptyBoxes(heads.length));
  return {
    heads,
    rows: [
      row(words.boxes.spread, unitWords(words, figures)),
      ...(failEntries(step).some(({ furthestOut }) => furthestOut) ? [row(words.boxes.furthest, '')] : []),
    ],
  };
}

/** Each unit's reading beside each other, where they are compared: what was read last if it passed its own limit, or an empty box. */
export function comparedRow(context: SheetContext, figures: StepFigures): BoxRow[] {
  const { words, procedure, units } = context;
  const { step } = figures;
  if (step.verb !== 'across') return [];
  const name = step.gate.test;
  // What is read at points and places is beside each other in its own table.
  if (procedure.stages.some(({ steps }) => steps.some((one) => isTestOf(one, name) && one.plan !== null))) return [];
  const tests = procedure.stages.flatMap(({ steps }) => steps).filter((one) => isTestOf(one, name));
  // What is outside is read again before the set is compared.
  const fails = (number: string | null, value: Quantity) =>
    tests
      .flatMap((test) => context.figures.get(test)?.held ?? [])
      .some(
        ({ which, number: of, figure }) =>
          which === 'rebuilt' &&
          (of === null || of === number) &&
          figure !== null &&
          insideOf(window(figure.whole), value, compare) === 'no',
      );
  const boxes = emptyBoxes(setSize(context)).map((_, index) => {
    const last = units[index]?.results.findLast(
      (result) => result.form === 'reading' && result.name === name && !result.asFound,
    );
    return last?.form !== 'reading' || fails(units[index]!.number, last.value) ? '' : resultWords(words, last);
  });
  return [rowOf(capital(specTitle(procedure, name)), unitWords(words, figures), step.number, boxes)];
}

/** What is in a box: the figure without its unit, which is before the box, or a mark. */
export function resultWords(words: Words, result: Result): string {
  switch (result.form) {
    case 'reading':
    case 'torque':
      return words.number(result.value.number);
    case 'shim':
      return words.number(result.size.number);
    case 'words':
      return result.text;
    case 'verdict':
      return result.passed ? words.boxes.passed : words.boxes.failed;
    default:
      return '';
  }
}

/** Tries that get boxes where there is a very large limit, or none. */
const mostTries = 6;
const triesWithoutLimit = 3;

/** How many tries of a repair get boxes, by the count written at a gate or else by that of the repair. */
function findTries({ procedure }: PrintContext, name: string, written: number | null): number {
  const tries = written ?? procedure.repairs.find((repair) => repair.name === name)?.tries ?? 1;
  return Number.isFinite(tries) ? Math.min(Math.max(tries, 1), mostTries) : triesWithoutLimit;
}
