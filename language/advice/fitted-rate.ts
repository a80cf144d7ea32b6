import type { Point } from '../calculations/fit-line.ts';
import { type FittedSlope, fitSlope } from '../calculations/fit-slope.ts';
import type { Job, Result } from '../model/job.ts';
import type { Procedure } from '../model/procedure.ts';
import { convert } from '../quantities/index.ts';
import type { Quantity, UnitName } from '../quantities/types.ts';
import { inUnits, type ShimChoice, shimChoices } from '../rules/shim-choices.ts';
import { distinct } from './unit-shims.ts';

/** What a shim brings by the shop's own readings, beside what the procedure reckons with. */
export interface FittedRate {
  readonly choice: ShimChoice;
  /** Part numbers that share it; null: all. */
  readonly numbers: readonly string[] | null;
  /** The rate of the procedure, per millimetre; null: it gives none. */
  readonly given: Quantity | null;
  /** In bar and millimetres: with pascals beside metres digits would be lost. Null: too few readings. */
  readonly fit: FittedSlope | null;
  /** Jobs that have a reading in it. */
  readonly jobs: readonly string[];
}

/** The rates of a procedure, fitted from the results of its jobs. Part numbers with rates of their own stand alone. */
export function fittedRates(procedure: Procedure, jobs: readonly Job[]): FittedRate[] {
  const own = jobs.filter((job) => job.procedure.name === procedure.name);
  return distinct(shimChoices(procedure).filter(({ parts }) => parts.length === 1)).flatMap((choice) => {
    const rates = new Map<string, { numbers: (string | null)[]; given: Quantity | null }>();
    for (const { number, rate } of choice.cases) {
      const key = rate?.toFraction() ?? '';
      const known = rates.get(key);
      if (known === undefined)
        rates.set(key, { numbers: [number], given: rate === null ? null : inUnits(rate, 'bar per mm') });
      else known.numbers.push(number);
    }
    return [...rates.values()].map(({ numbers, given }): FittedRate => {
      const all = rates.size === 1 || numbers.includes(null);
      const units = own.flatMap((job) =>
        job.units
          .filter(({ number }) => all || numbers.includes(number))
          .map(({ results }) => ({ job: job.name, points: pairsOf(results, choice.parts[0]!.name, choice.test) })),
      );
      const told = units.filter(({ points }) => points.some(({ x }) => x !== points[0]!.x));
      return {
        choice,
        numbers: all ? null : numbers.flatMap((number) => number ?? []),
        given,
        fit: fitSlope(told.map(({ points }) => points)),
        jobs: [...new Set(told.map(({ job }) => job))],
      };
    });
  });
}

/** Shims and what was read with them. A reading as found is that of a dirty, worn unit: it says nothing of the rate. */
function pairsOf(results: readonly Result[], part: string, test: string): Point[] {
  const points: Point[] = [];
  let now: number | null = null;
  let before: number[] = [];
  for (const result of results) {
    if (result.form === 'shim' && result.part === part) {
      now = amountIn(result.size, 'mm');
      // What was read before the first shim came out was read with that one.
      if (!result.fitted) for (const y of before) points.push({ x: now, y });
      before = [];
    }
    if (result.form !== 'reading' || result.name !== test || result.asFound) continue;
    if (now === null) before.push(amountIn(result.value, 'bar'));
    else points.push({ x: now, y: amountIn(result.value, 'bar') });
  }
  return points;
}

/** Kinds were judged where the result was read. */
function amountIn(quantity: Quantity, unit: UnitName): number {
  return convert(quantity, unit)?.valueOf() ?? Number.NaN;
}
