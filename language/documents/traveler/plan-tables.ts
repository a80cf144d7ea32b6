import type { ReadingResult, Unit } from '../../model/job.ts';
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

/** Lines for what is measured again after a repair. */
const linesAgain = 6;

/**
 * Boxes of what is read at points and places, one for each unit, point and place. With points, a table for each unit: points
 * down, places across. With places alone, units down.
 */
export function planTables(context: SheetContext, figures: StepFigures): TableBlock[] {
  const { plan, step } = figures;
  const test = readingOf(step);
  if (plan === null || test === null) return [];
  const hasPoints = plan.plan.points.length > 0;
  const units = context.columns.map((column, index) => ({ column, unit: context.units[index] ?? null }));
  const title = titleOf(context, figures, test);
  const tables = hasPoints
    ? units.map(({ column, unit }) => ({
        ...tableOf(context, figures, plan, test, [unit]),
        title: units.length === 1 ? title : `${title}: ${context.words.units.place} ${column.place}`,
      }))
    : [
        {
          ...tableOf(
            context,
            figures,
            plan,
            test,
            units.map(({ unit }) => unit),
          ),
          title,
        },
      ];
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
    ...(of === undefined || !isCounted(of.places) ? [] : [words.plan.each({ place: words.inSentence(nameOf(of)) })]),
  ];
  return parts.join(', ');
}

function tableOf(
  context: SheetContext,
  { step }: StepFigures,
  plan: PlanFigures,
  test: string,
  units: readonly (Unit | null)[],
): Omit<TableBlock, 'title'> {
  const { words, procedure, columns } = context;
  const { places, points, byPlace } = plan;
  const hasPoints = plan.plan.points.length > 0;
  const spreads = !isAsFound(step) && points.some(({ spread }) => spread !== null);
  const limited = hasPoints && points.some(({ held }) => held.some(({ figure }) => figure !== null));
  const asked = places.length === 0 ? [null] : places.map(({ name }) => name);
  const heads = asked.map((place) =>
    place === null ? words.boxes.reading : isCounted(places) ? place : placeWords(procedure, test, place),
  );
  const row = (point: PointFigures, unit: Unit | null, label: string): Cell[] => [
    { text: label, strong: true },
    ...(hasPoints ? [{ text: point.at.join(', ') }] : []),
    ...(limited ? [{ text: limitWords(context, point, unit), strong: true }] : []),
    ...asked.map((place): Cell => {
      const name = readingId({ test, point: point.point?.name ?? null, place });
      return { text: firstRead(context, unit, name, isAsFound(step)), fill: true };
    }),
    ...(spreads ? [spreadCell(point)] : []),
  ];
  const [one] = points;
  return {
    kind: 'table',
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
      ...(hasPoints
        ? points.map((point) => row(point, units[0] ?? null, capital(pointWords(procedure, test, point.point!.name))))
        : units.map((unit, index) => row(one!, unit, columns[index]!.place))),
    ],
  };
}

/** The box for the spread has its limit in it, small: what is written goes beside. */
function spreadCell({ spread }: PointFigures): Cell {
  return { text: spread === null ? '' : spread.value || lineOf(spread) };
}

/** What a unit is held to at a point; of a unit that nobody knows yet, for each part number. */
function limitWords(context: PrintContext, { held }: PointFigures, unit: Unit | null): string {
  const { words } = context;
  const told = (number: string | null) => {
    const own = held.find((one) => one.which === 'rebuilt' && (one.number === number || one.number === null));
    if (own === undefined) return null;
    if (own.value?.notRequired === true) return words.limits.notRequired;
    return own.figure === null ? null : own.figure.value || lineOf(own.figure);
  };
  if (unit !== null && unit.number !== null) return told(unit.number) ?? '';
  return forNumbers(numbersOf(context), told)
    .map((group) => (whoseWords(group) === '' ? group.made : `${whoseWords(group)}: ${group.made}`))
    .join('; ');
}

function readings(unit: Unit | null, name: string, asFound: boolean): ReadingResult[] {
  return (unit?.results ?? []).filter(
    (one): one is ReadingResult => one.form === 'reading' && one.name === name && one.asFound === asFound,
  );
}

function firstRead({ words, recorded }: SheetContext, unit: Unit | null, name: string, asFound: boolean): string {
  const [first] = readings(unit, name, asFound);
  if (first === undefined) return '';
  recorded.take(first);
  return words.number(first.value.number);
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
