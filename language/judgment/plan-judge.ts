import { stepsFor, testsFor } from '../analysis/held.ts';
import { limitWords } from '../i18n/limit-words.ts';
import type { Unit } from '../model/job.ts';
import { type Plan, type Point, readingsOf } from '../model/plan.ts';
import type { Procedure, StepOf } from '../model/procedure.ts';
import { readingAt, readingId } from '../model/reading-id.ts';
import { nameWords, pointWords } from '../model/titles.ts';
import { asDifference, compare, compareDifferences, window } from '../quantities/index.ts';
import type { Difference, Limit, Quantity } from '../quantities/types.ts';
import { insideOf } from './inside.ts';
import type { Verdict } from './judged.ts';
import { type Problem, problem } from './problem.ts';
import { furthestOut, ownUnit, spreadOf } from './set-spread.ts';

/** How far the places of one unit lie apart at a point. */
export interface PlaceSpread {
  readonly test: string;
  readonly point: string | null;
  /** Null: too few were read, or in units that cannot be compared. */
  readonly spread: Difference | null;
  readonly limit: Limit | null;
  /** Null: there is no limit, or nothing to hold to it. */
  readonly passed: boolean | null;
}

export interface PlanVerdict {
  readonly spreads: readonly PlaceSpread[];
  readonly problems: readonly Problem[];
}

/** Holds readings of a unit to each other, where its tests ask for that: places beside each other, points behind each other. */
export function judgePlans(procedure: Procedure, unit: Unit, outcomes: readonly Verdict[]): PlanVerdict {
  const verdicts = plannedTests(procedure, unit).map((step) => judgePlan(procedure, step, step.plan, outcomes));
  return {
    spreads: verdicts.flatMap(({ spreads }) => spreads),
    problems: verdicts.flatMap(({ problems }) => problems),
  };
}

type Planned = StepOf<'test'> & { readonly plan: Plan };

/** The tests of a unit that are read at points or places; of one name the last. */
function plannedTests(procedure: Procedure, { number }: Pick<Unit, 'number'>): Planned[] {
  const planned = testsFor(procedure, number).filter((step): step is Planned => step.plan !== null);
  return planned.filter((step, at) => planned.findLastIndex(({ gate }) => gate.test === step.gate.test) === at);
}

function judgePlan(procedure: Procedure, step: Planned, plan: Plan, outcomes: readonly Verdict[]): PlanVerdict {
  const { test } = step.gate;
  const problems: Problem[] = [];
  const readings = outcomes.flatMap(({ asked, reading }) => {
    const at = readingAt(asked.name);
    return at.test === test && reading !== null ? [{ ...at, value: reading.value, source: reading.source }] : [];
  });
  const points: readonly (Point | null)[] = plan.points.length === 0 ? [null] : plan.points;
  const spreads = points.map((point): PlaceSpread => {
    const read = readings.filter((one) => one.point === (point?.name ?? null));
    const limit = point?.spread ?? plan.spread;
    const spread = plan.places === null || read.length < 2 ? null : spreadOf(read.map(({ value }) => value));
    const inside = limit === null || spread === null ? 'open' : insideOf(window(limit), spread, bySize);
    const name = nameOf(procedure, test, point);
    if (inside === 'no' && limit !== null && spread !== null)
      problems.push(
        problem('spread-too-wide', furthestOut(read).source, (w) =>
          w.certificate.missing.placesApart({
            name,
            spread: w.quantity(spread),
            limit: limitWords(w, limit, ownUnit(spread)),
          }),
        ),
      );
    return {
      test,
      point: point?.name ?? null,
      spread,
      limit,
      passed: inside === 'yes' ? true : inside === 'no' ? false : null,
    };
  });
  for (const { name: point, beyond } of plan.points) {
    if (beyond === null) continue;
    for (const after of readings.filter((one) => one.point === point)) {
      const before = readings.find((one) => one.point === beyond.point && one.place === after.place);
      const side = before === undefined ? null : compare(after.value, before.value);
      if (before === undefined || side === null || side === (beyond.way === 'above' ? 1 : -1)) continue;
      problems.push(
        problem('result-fails', after.source, (w) =>
          w.certificate.missing[beyond.way === 'above' ? 'notAbove' : 'notBelow']({
            name: nameWords(procedure, `${test}/${point}/${after.place ?? ''}`),
            reading: w.quantity(after.value),
            other: w.inSentence(pointWords(procedure, test, beyond.point)),
            before: w.quantity(before.value),
          }),
        ),
      );
    }
  }
  return { spreads, problems };
}

function nameOf(procedure: Procedure, test: string, point: Point | null): string {
  return nameWords(procedure, point === null ? test : `${test}/${point.name}/`);
}

/** The limit of a spread is written as values, and means differences. */
function bySize(spread: Difference, end: Quantity) {
  return compareDifferences(spread, asDifference(end));
}

/** What a `record` asks for and nobody has written down. */
export function missingWords(procedure: Procedure, { number, results, source }: Unit): Problem[] {
  const wanted = stepsFor({ ...procedure, repairs: [] }, number).flatMap((step) =>
    step.verb === 'record' ? readingsOf(procedure.family.places, step.reading, step.plan).map(readingId) : [],
  );
  const written = new Set(results.flatMap((one) => (one.form === 'words' ? one.name : [])));
  return [...new Set(wanted)]
    .filter((name) => !written.has(name))
    .map((name) =>
      problem('not-proven', source, (w) => w.certificate.missing.noWords({ name: nameWords(procedure, name) })),
    );
}
