import type { Repair, Step } from '../model/procedure.ts';
import type { Words } from '../words/index.ts';
import type { Grid } from './model.ts';
import { capital, objectWords, specTitle } from './names.ts';
import { type Setting, shownSteps, stageSteps } from './setting.ts';
import { readingUnit } from './units.ts';

type Row = Grid['rows'][number];

/** Most boxes side by side: a finger's breadth each on A4. */
export const mostColumns = 12;

/** Rows for every unit: at most twelve side by side, and evenly on as many further rows as it takes. */
export function unitGrids(setting: Setting, title: string, rows: readonly Row[]): Grid[] {
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
export function stepGrids(setting: Setting, step: Step, place: { readonly station: string | null }): Grid[] {
  const { words } = setting;
  if (step.verb === 'across') {
    return [
      {
        title: '',
        across: 1,
        columns: [{ place: words.boxes.theSet, detail: '' }],
        rows: [
          {
            label: words.boxes.spread,
            unit: readingUnit(setting, step, place),
          },
          { label: words.boxes.furthest, unit: words.boxes.unit },
        ],
      },
    ];
  }
  return unitGrids(setting, '', stepRows(setting, step, place));
}

/** What is recorded at a step, once for each unit. */
export function stepRows(setting: Setting, step: Step, place: { readonly station: string | null }): Row[] {
  const { words } = setting;
  const unit = readingUnit(setting, step, place);
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
    case 'choose': {
      const name = capital(objectWords(setting, step.objects).join(', '));
      return [
        { label: words.boxes.out({ part: name }), unit },
        { label: words.boxes.in({ part: name }), unit },
      ];
    }
    case 'check':
      if (step.limit !== null) return [{ label: words.boxes.reading, unit }];
      return step.verdicts.length === 0 ? passFail(words) : verdictRows(setting, step);
    case 'test': {
      const reads = testReads(step);
      const reading = reads ? [{ label: words.boxes.reading, unit }] : [];
      return reads && step.accept === null && step.reject === null ? reading : [...reading, ...passFail(words)];
    }
    default:
      return [];
  }
}

/** A figure is written down at this test. */
export function testReads(step: Step): boolean {
  return step.test !== null && (step.test.reads !== null || step.test.inTime !== null || step.test.within !== null);
}

function verdictRows({ words }: Setting, step: Step): Row[] {
  return step.verdicts.map(({ verdict, text }) => ({
    label: `${words.boxes.verdicts[verdict]}: ${text}`,
    unit: '',
  }));
}

/** Tries that get rows where there is no limit, or a very large one. */
const mostTries = 6;
const triesWithoutLimit = 3;

/** Rows to fill for each try of a repair: what it records, and the tests that are passed again after it. */
export function attemptGrids(setting: Setting, repair: Repair): Grid[] {
  const { words } = setting;
  const tries =
    repair.tries === null || !Number.isFinite(repair.tries)
      ? triesWithoutLimit
      : Math.min(Math.max(repair.tries, 1), mostTries);
  const own = shownSteps(setting, repair)
    .filter((step) => step.verb !== 'test' && step.verb !== 'across')
    .flatMap((step) =>
      stepRows(setting, step, repair).map((row) => ({ ...row, label: `${step.number} ${row.label}` })),
    );
  const { stages } = setting.procedure;
  // Tests of later stages have not been passed yet when the unit is sent here: they have their own boxes.
  const sends = stages.map((stage) =>
    stage.steps.some((step) => step.gate?.onFail.some((entry) => entry.repair === repair.name)),
  );
  const reached = sends.includes(true) ? stages.slice(0, sends.lastIndexOf(true) + 1) : stages;
  const tests = stageSteps(setting).filter(({ stage, step }) => step.verb === 'test' && reached.includes(stage));
  const readings = tests
    .filter(({ step }) => testReads(step))
    .map(({ stage, step }) => ({
      label: capital(specTitle(setting.procedure, step.gate?.name ?? '')),
      unit: readingUnit(setting, step, stage),
    }));
  const others: Row[] = [
    {
      label: tests.length > readings.length ? words.boxes.others : words.boxes.done,
      unit: '',
    },
  ];
  const rows = [...own, ...readings, ...others];
  return Array.from({ length: tries }, (_, index) => index + 1).flatMap((count) =>
    unitGrids(setting, words.boxes.try({ count }), rows),
  );
}
