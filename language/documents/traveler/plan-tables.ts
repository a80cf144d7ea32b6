import type { ReadingResult, Unit, WordsResult } from '../../model/job.ts';
import { readingAt, readingId } from '../../model/reading-id.ts';
import { isAsFound, isGate, readingOf } from '../../model/steps.ts';
import { capital, titleOf as nameOf, placeWords, pointWords } from '../../model/titles.ts';
import { forNumbers, whoseWords } from '../figures/by-number.ts';
import { lineOf } from '../figures/limit-figure.ts';
import type { PlanFigures, PointFigures } from '../figures/plan-figures.ts';
import type { StepFigures } from '../figures/step-figures.ts';
import type { Cell, TableBlock } from '../model.ts';
import { specTitle } from '../names.ts';
import { numbersOf, type PrintContext } from '../print-context.ts';
import type { SheetContext } from './context.ts';
import { resultWords, wordingWords } from './rows.ts';

/** Lines for what is measured again after a repair. */
const linesAgain = 6;

/**
 * Boxes of what is read at points and places, one for each unit, point and place. With both, a table for each unit: points
 * down, places across. With one of them alone, one table: points down and units across, or units down and places across.
 */
export function planTables(context: SheetContext, figures: StepFigures): TableBlock[] {
  const { plan, step } = figures;
  const test = readingOf(step);
  if (plan === null || test === null) return [];
  const { places, points } = plan;
  const units = context.columns.map(({ place }, index): Column => ({ place, unit: context.units[index] ?? null }));
  const title = titleOf(context, figures, test);
  const own = { context, figures, plan, test };
  const tables: TableBlock[] =
    plan.plan.points.length === 0
      ? [
          tableOf(
            own,
            title,
            units.map((unit) => ({ head: unit.place, point: points[0]!, units: [unit] })),
          ),
        ]
      : places.length === 0
        ? [
            tableOf(
              own,
              title,
              points.map((point) => ({ head: '', point, units })),
            ),
          ]
        : units.map((unit) =>
            tableOf(
              own,
              units.length === 1 ? title : `${title}: ${context.words.units.place} ${unit.place}`,
              points.map((point) => ({ head: '', point, units: [unit] })),
            ),
          );
  return isGate(step) && step.gate.onFail.length > 0
    ? [
        ...tables,
        againTable(
          context,
          plan,
          test,
          units.map(({ unit }) => unit),
        ),
      ]
    : tables;
}

interface Column {
  readonly place: string;
  readonly unit: Unit | null;
}

interface Asked {
  readonly context: SheetContext;
  readonly figures: StepFigures;
  readonly plan: PlanFigures;
  readonly test: string;
}

/** A line of boxes. */
interface Line {
  /** Empty: the point says it. */
  readonly head: string;
  readonly point: PointFigures;
  readonly units: readonly Column[];
}

function tableOf({ context, figures, plan, test }: Asked, title: string, lines: readonly Line[]): TableBlock {
  const { words, procedure } = context;
  const { places, points, byPlace } = plan;
  const asFound = isAsFound(figures.step);
  const hasPoints = plan.plan.points.length > 0;
  const spreads = !asFound && points.some(({ spread }) => spread !== null);
  const limited = hasPoints && points.some(({ held }) => held.some(({ figure }) => figure !== null));
  const boxes = ({ units }: Line) =>
    units.flatMap((column) => (places.length === 0 ? [null] : places).map((place) => ({ column, place })));
  const heads = boxes(lines[0]!).map(({ column, place }) =>
    place === null
      ? `${words.units.place} ${column.place}`
      : isCounted(places)
        ? place.name
        : placeWords(procedure, test, place.name),
  );
  return {
    kind: 'table',
    title,
    columns: [
      { head: hasPoints ? words.plan.point : words.units.place, share: hasPoints ? 3 : 2 },
      ...(hasPoints ? [{ head: words.facts.at, share: 4 }] : []),
      ...(limited ? [{ head: words.plan.limit, share: 3.4 }] : []),
      ...heads.map((head) => ({ head, share: 2 })),
      ...(spreads ? [{ head: words.boxes.spread, share: 2.6 }] : []),
    ],
    rows: [
      ...(byPlace === null
        ? []
        : [
            [
              { text: words.plan.limit },
              ...byPlace.map((figure): Cell => ({ text: figure.value || lineOf(figure), strong: true })),
              ...(spreads ? [{ text: '' }] : []),
            ],
          ]),
      ...lines.map((line): Cell[] => {
        const { point, head, units } = line;
        const name = point.point?.name ?? null;
        return [
          { text: head === '' ? capital(pointWords(procedure, test, name ?? '')) : head, strong: true },
          ...(hasPoints ? [{ text: point.at.join(', ') }] : []),
          ...(limited
            ? [
                {
                  text: [limitWords(context, point, units), ...beyondWords(context, test, point)].join(', '),
                  strong: true,
                },
              ]
            : []),
          ...boxes(line).map(({ column, place }): Cell => {
            const id = readingId({ test, point: name, place: place?.name ?? null });
            return { text: firstRead(context, column.unit, id, asFound), fill: true };
          }),
          ...(spreads ? [spreadCell(point)] : []),
        ];
      }),
    ],
  };
}

/** They are numbers, which need their name once. */
function isCounted(places: PlanFigures['places']): boolean {
  return places.every(({ title }) => /^\d+$/u.test(title));
}

/** `Delivery, mL, each cylinder`. */
function titleOf(context: PrintContext, { step, unitRead, plan }: StepFigures, test: string): string {
  const { words } = context;
  const { places } = context.procedure.family;
  const of = places.find(({ name }) => name === plan?.plan.places);
  const parts = [
    capital(specTitle(context.procedure, test)),
    ...(isAsFound(step) ? [words.inSentence(words.boxes.asFound)] : []),
    ...(unitRead === null ? [] : [words.wording.unit(unitRead, false)]),
    ...(step.verb === 'record' ? [wordingWords(words, step.wording)] : []),
    ...(of === undefined || !isCounted(of.places) ? [] : [words.plan.each({ place: words.inSentence(nameOf(of)) })]),
  ];
  return parts.join(', ');
}

/** The box for the spread has its limit in it, small: what is written goes beside. */
function spreadCell({ spread }: PointFigures): Cell {
  return { text: spread === null ? '' : spread.value || lineOf(spread) };
}

/** `above break-off begins`. */
function beyondWords({ words, procedure }: PrintContext, test: string, { point }: PointFigures): string[] {
  if (point === null || point.beyond === null) return [];
  const { way, point: earlier } = point.beyond;
  return [words.plan[way]({ point: words.inSentence(pointWords(procedure, test, earlier)) })];
}

/** What a unit is held to at a point; of a unit that nobody knows yet, for each part number. */
function limitWords(context: PrintContext, { held }: PointFigures, units: readonly Column[]): string {
  const { words } = context;
  const told = (number: string | null) => {
    const own = held.find((one) => one.which === 'rebuilt' && (one.number === number || one.number === null));
    if (own === undefined) return null;
    if (own.value?.notRequired === true) return words.limits.notRequired;
    return own.figure === null ? null : own.figure.value || lineOf(own.figure);
  };
  const numbers = units.flatMap(({ unit }) => unit?.number ?? []);
  const wanted = numbers.length === units.length ? [...new Set(numbers)] : numbersOf(context);
  return forNumbers(wanted, told)
    .map((group) => (whoseWords(group) === '' ? group.made : `${whoseWords(group)}: ${group.made}`))
    .join('; ');
}

function readings(unit: Unit | null, name: string, asFound: boolean): (ReadingResult | WordsResult)[] {
  return (unit?.results ?? []).filter(
    (one): one is ReadingResult | WordsResult =>
      (one.form === 'words' && one.name === name) ||
      (one.form === 'reading' && one.name === name && one.asFound === asFound),
  );
}

function firstRead({ words, recorded }: SheetContext, unit: Unit | null, name: string, asFound: boolean): string {
  const [first] = readings(unit, name, asFound);
  if (first === undefined) return '';
  recorded.take(first);
  return resultWords(words, first);
}

/** A line for each reading that is taken again: only those are that failed, unless the repair asks for all. */
function againTable(
  { words, procedure, recorded }: SheetContext,
  { plan, places }: PlanFigures,
  test: string,
  units: readonly (Unit | null)[],
): TableBlock {
  const hasPoints = plan.points.length > 0;
  const several = units.length > 1;
  const again = units.flatMap((unit) =>
    (unit?.results ?? []).flatMap((result) => {
      if (result.form !== 'reading' || result.asFound || readingAt(result.name).test !== test) return [];
      if (readings(unit, result.name, false)[0] === result) return [];
      recorded.take(result);
      const { point, place } = readingAt(result.name);
      const value = words.number(result.value.number);
      return [{ unit: unit!.place, point, place, value }];
    }),
  );
  const blank = Array.from({ length: Math.max(0, linesAgain - again.length) }, () => null);
  return {
    kind: 'table',
    title: words.plan.again,
    columns: [
      ...(several ? [{ head: words.units.place, share: 2 }] : []),
      ...(hasPoints ? [{ head: words.plan.point, share: 4 }] : []),
      ...(places.length > 0 ? [{ head: words.plan.place, share: 3 }] : []),
      { head: words.boxes.reading, share: 3 },
      { head: words.boxes.done, share: 3 },
    ],
    rows: [...again, ...blank].map((line) => [
      ...(several ? [{ text: line?.unit ?? '', fill: true }] : []),
      ...(hasPoints
        ? [{ text: line?.point == null ? '' : capital(pointWords(procedure, test, line.point)), fill: true }]
        : []),
      ...(places.length > 0
        ? [{ text: line?.place == null ? '' : placeWords(procedure, test, line.place), fill: true }]
        : []),
      { text: line?.value ?? '', fill: true },
      { text: '', fill: true },
    ]),
  };
}
