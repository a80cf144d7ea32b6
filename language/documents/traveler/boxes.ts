import { waitsForOthers } from '../../analysis/control-flow-graph.ts';
import type { Words } from '../../i18n/index.ts';
import type { Repair, Step, StepOf } from '../../model/procedure.ts';
import { failEntries } from '../../model/steps.ts';
import { capital } from '../../model/titles.ts';
import type { StepFigures } from '../figures/step-figures.ts';
import type { Grid } from '../model.ts';
import { objectWords, specTitle } from '../names.ts';
import { type PrintContext, shownSteps } from '../print-context.ts';
import { findPaths } from './paths.ts';

type Row = Grid['rows'][number];

/** Most boxes side by side: a finger's breadth each on A4. */
const mostColumns = 12;

/** One box where the set is worked together. */
export function setGrid({ boxes }: Words): Grid[] {
  return [
    {
      title: '',
      across: 1,
      columns: [{ place: boxes.theSet, detail: '' }],
      rows: [{ label: boxes.done, unit: '' }],
    },
  ];
}

/** Rows for every unit: at most twelve side by side, and evenly on as many further rows as it takes. */
export function unitGrids(setting: PrintContext, title: string, rows: readonly Row[]): Grid[] {
  if (rows.length === 0) return [];
  const { columns } = setting;
  const lines = Math.max(1, Math.ceil(columns.length / mostColumns));
  const each = Math.max(1, Math.ceil(columns.length / lines));
  return Array.from({ length: lines }, (_, line) => ({
    title,
    across: each,
    columns: columns.slice(line * each, (line + 1) * each),
    rows,
  }));
}

const passFail = ({ boxes }: Words): Row[] => [
  { label: boxes.pass, unit: '' },
  { label: boxes.fail, unit: '' },
];

/** Boxes that a step is recorded in. */
export function stepGrids(setting: PrintContext, figures: StepFigures): Grid[] {
  const { words } = setting;
  const { step } = figures;
  if (step.verb === 'across') {
    // It is compared again after each try of what it sends to.
    const tries = Math.max(0, ...failEntries(step).map(({ repair, tries: of }) => findTries(setting, repair, of)));
    const again = Array.from({ length: tries }, (_, index) => words.boxes.try({ count: index + 1 }));
    return [
      {
        title: '',
        across: 1 + tries,
        columns: [words.boxes.theSet, ...again].map((name) => ({ place: name, detail: '' })),
        rows: [
          {
            label: words.boxes.spread,
            unit: unitWords(words, figures),
          },
          { label: words.boxes.furthest, unit: words.boxes.unit },
        ],
      },
    ];
  }
  return unitGrids(setting, '', stepRows(setting, figures));
}

/** The unit of a reading; empty where none is known. */
function unitWords({ wording }: Words, { unitRead }: StepFigures): string {
  return unitRead === null ? '' : wording.unit(unitRead, false);
}

/** What is recorded at a step, once for each unit. */
function stepRows(setting: PrintContext, figures: StepFigures): Row[] {
  const { words } = setting;
  const { step } = figures;
  const unit = unitWords(words, figures);
  switch (step.verb) {
    case 'read':
      return [
        {
          label: step.asFound ? words.boxes.asFound : words.boxes.reading,
          unit,
        },
      ];
    case 'measure':
      return step.objects.length < 2
        ? [{ label: words.boxes.reading, unit }]
        : objectWords(setting, step.objects).map((name) => ({
            label: capital(name),
            unit,
          }));
    case 'set':
      return [{ label: words.boxes.set, unit }];
    case 'torque':
      return step.stretch === null
        ? [{ label: words.boxes.torqued, unit: '' }]
        : [{ label: words.facts.stretch, unit }];
    case 'lock':
      return step.limit === null ? [] : [{ label: words.boxes.torqued, unit: '' }];
    case 'choose': {
      const name = capital(objectWords(setting, step.objects).join(', '));
      return [
        { label: words.boxes.out({ part: name }), unit },
        { label: words.boxes.in({ part: name }), unit },
      ];
    }
    case 'check':
      if (step.limit !== null) return [{ label: words.boxes.reading, unit }];
      if (step.verdicts.length === 0) return passFail(words);
      return isEach(step)
        ? perObject(setting, step).map((label) => ({ label, unit: verdictWords(setting, step) }))
        : verdictRows(setting, step);
    case 'test': {
      const reads = testReads(step);
      const reading = reads ? [{ label: words.boxes.reading, unit }] : [];
      return isJudged(step) ? [...reading, ...passFail(words)] : reading;
    }
    default:
      return [];
  }
}

/** A figure is written down at this test. */
function testReads({ test, limit }: StepOf<'test'>): boolean {
  return test.reads !== null || test.inTime !== null || limit !== null;
}

/** It is passed by what is seen, besides a figure or alone. */
function isJudged(step: StepOf<'test'>): boolean {
  return !testReads(step) || step.accept !== null || step.reject !== null;
}

/** Several things are sorted: each has a verdict of its own, and the words for it are over the boxes. */
export function isEach(step: StepOf<'check'>): boolean {
  return step.verdicts.length > 0 && step.objects.length > 1;
}

function perObject(setting: PrintContext, step: Step): string[] {
  return objectWords(setting, step.objects).map(capital);
}

/** `Reuse / Lap / Reject` */
function verdictWords({ words }: PrintContext, step: StepOf<'check'>): string {
  return step.verdicts.map(({ verdict }) => words.boxes.verdicts[verdict]).join(' / ');
}

function verdictRows({ words }: PrintContext, step: StepOf<'check'>): Row[] {
  return step.verdicts.map(({ verdict, text }) => ({
    label: `${words.boxes.verdicts[verdict]}: ${text}`,
    unit: '',
  }));
}

/** Tries that get boxes where there is a very large limit, or none. */
const mostTries = 6;
const triesWithoutLimit = 3;

/** How many tries of a repair get boxes, by the count written at a gate or else by that of the repair. */
export function findTries({ procedure }: PrintContext, name: string, written: number | null): number {
  const tries = written ?? procedure.repairs.find((repair) => repair.name === name)?.tries ?? 1;
  return Number.isFinite(tries) ? Math.min(Math.max(tries, 1), mostTries) : triesWithoutLimit;
}

/**
 * Rows to fill for each try of a repair: what it records, and all that is recorded on the way back: each look, measure and
 * test that is passed again after it.
 */
export function attemptGrids(setting: PrintContext, figures: ReadonlyMap<Step, StepFigures>, repair: Repair): Grid[] {
  const { words } = setting;
  const tries = findTries(setting, repair.name, repair.tries ?? Number.POSITIVE_INFINITY);
  const rowsOf = (step: Step) => {
    const known = figures.get(step);
    return known === undefined ? [] : triedRows(setting, known);
  };
  const own = shownSteps(setting, repair).flatMap(rowsOf);
  const again = repeatedAfter(setting, repair).flatMap(rowsOf);
  const rows = [...own, ...again, { label: words.boxes.done, unit: '' }];
  return Array.from({ length: tries }, (_, index) => index + 1).flatMap((count) =>
    unitGrids(setting, words.boxes.try({ count }), rows),
  );
}

/** The rows of one step among those of others, with its number; a pass or a fail is one box. */
function triedRows(setting: PrintContext, figures: StepFigures): Row[] {
  const { words, procedure } = setting;
  const { step } = figures;
  const numbered = (name: string, unit: string): Row => ({ label: `${step.number} ${name}`, unit });
  const unit = unitWords(words, figures);
  switch (step.verb) {
    // The set has boxes of its own where it is compared.
    case 'across':
      return [];
    case 'test': {
      const name = capital(specTitle(procedure, step.gate.test));
      return [
        ...(testReads(step) ? [numbered(name, unit)] : []),
        ...(isJudged(step) ? [numbered(name, words.boxes.verdict)] : []),
      ];
    }
    case 'check': {
      if (step.limit !== null || step.verdicts.length > 0)
        return perObject(setting, step).map((name) =>
          numbered(name, step.limit === null ? verdictWords(setting, step) : unit),
        );
      return [numbered(perObject(setting, step).join(', '), words.boxes.verdict)];
    }
    case 'measure':
      return perObject(setting, step).map((name) => numbered(name, unit));
    default:
      return stepRows(setting, figures).map((row) => numbered(row.label, row.unit));
  }
}

/** What a unit passes again after a repair: from where it goes on to the last step that may have sent it. */
function repeatedAfter(setting: PrintContext, repair: Repair): Step[] {
  const { stages, repairs } = setting.procedure;
  const [first] = findPaths(setting.procedure).resumes.get(repair.name) ?? [];
  const all = stages.flatMap((place) => shownSteps(setting, place).map((step) => ({ place, step })));
  const from = all.findIndex(({ step }) => step === first);
  // A part that is renewed at a check in a repair is looked at there again.
  if (from < 0) return repairs.flatMap(({ steps }) => steps.filter((step) => step === first));
  const sends = (names: ReadonlySet<string>) => (step: Step) =>
    failEntries(step).some((entry) => names.has(entry.repair));
  const names = new Set([repair.name]);
  // A repair may send on to this one.
  for (let known = 0; known < names.size; ) {
    known = names.size;
    for (const { name, steps } of repairs) if (steps.some(sends(names))) names.add(name);
  }
  const last = all.reduce((to, { place, step }, index) => {
    if (!sends(names)(step)) return to;
    const end = waitsForOthers(step)
      ? all.findLastIndex((one) => one.place === place && (one.step.verb === 'test' || one.step.verb === 'across'))
      : index;
    return Math.max(to, end);
  }, from);
  return all.slice(from, last + 1).map(({ step }) => step);
}
