import { type ShimChoice, shimChoices } from '../analysis/shims.ts';
import { findGauge } from '../analysis/tools.ts';
import type { Point } from '../engineering/fit-line.ts';
import { type FittedSlope, fitSlope } from '../engineering/fit-slope.ts';
import { medianOf, resolutionOf, slipOf, unslipped } from '../engineering/slip.ts';
import type { Job, ReadingResult, Result, ShimResult, Unit } from '../model/job.ts';
import type { Procedure } from '../model/procedure.ts';
import { convert, convertDifference, kindOfUnit, lastPlace, unitOf } from '../quantities/index.ts';
import type { Quantity, UnitName } from '../quantities/types.ts';
import { distinct } from './unit-shims.ts';

/** A figure that is off by a power of ten beside the others: it is named, and not fitted. */
export interface Slip {
  readonly job: string;
  readonly unit: Unit;
  readonly what: 'reading' | 'shim';
  readonly value: Quantity;
  readonly meant: Quantity;
}

/** What a shim brings by the shop's own readings, beside what the procedure reckons with. */
export interface FittedRate {
  readonly choice: ShimChoice;
  /** Part numbers that share it; null: all. */
  readonly numbers: readonly string[] | null;
  /** The rate of the procedure, as what a millimeter brings in `unit`; null: it gives none. */
  readonly given: number | null;
  /** Unit of the readings; the shims are in millimeters: with base units digits would be lost. */
  readonly unit: UnitName;
  /** Null: too few readings. */
  readonly fit: FittedSlope | null;
  readonly slips: readonly Slip[];
  /** Jobs that have a reading in it. */
  readonly jobs: readonly string[];
}

/** The rates of a procedure, fitted from the results of its jobs. Part numbers with rates of their own are separate. */
export function fittedRates(procedure: Procedure, jobs: readonly Job[]): FittedRate[] {
  const own = jobs.filter((job) => job.procedure.name === procedure.name);
  return distinct(shimChoices(procedure).filter(({ parts }) => parts.length === 1)).flatMap((choice) => {
    const rates = new Map<string, (typeof choice.cases)[number][]>();
    for (const one of choice.cases) {
      const key = one.rate?.toFraction() ?? '';
      rates.set(key, [...(rates.get(key) ?? []), one]);
    }
    return [...rates.values()].map((cases): FittedRate => {
      const numbers = cases.map(({ number }) => number);
      const all = rates.size === 1 || numbers.includes(null);
      const [{ limit, rate }] = cases as [(typeof cases)[number]];
      const pairs = own.flatMap((job) =>
        job.units
          .filter(({ number }) => all || numbers.includes(number))
          .map((unit) => ({ job: job.name, unit, pairs: pairsOf(unit.results, choice.parts[0]!.name, choice.test) })),
      );
      const first = pairs.flatMap((one) => one.pairs)[0]?.reading.value.unit ?? 'bar';
      const unit = kindOfUnit(first) === 'pressure' ? 'bar' : first;
      const { kept, slips } = withoutSlips(pairs, unit);
      const told = kept.filter((one) => one.points.some(({ x }) => x !== one.points[0]!.x));
      const marks = told.flatMap((one) =>
        one.pairs.map(({ reading, shim }) => ({
          x: resolutionOf(digitIn(shim.size, 'mm')),
          y: resolutionOf(markOf(procedure, reading, unit, limit)),
        })),
      );
      const mean = (of: (one: Point) => number) =>
        marks.length === 0 ? 0 : Math.sqrt(marks.reduce((sum, one) => sum + of(one) ** 2, 0) / marks.length);
      return {
        choice,
        numbers: all ? null : numbers.flatMap((number) => number ?? []),
        given: rate === null ? null : rate.valueOf() / perMillimetre(unit),
        unit,
        fit: fitSlope(
          told.map(({ points }) => points),
          { x: mean(({ x }) => x), y: mean(({ y }) => y) },
        ),
        slips,
        jobs: [...new Set(told.map(({ job }) => job))],
      };
    });
  });
}

/** A unit per millimeter, in base units per meter. */
function perMillimetre(unit: UnitName): number {
  return unitOf(unit).factor.valueOf() * 1000;
}

interface Pair {
  readonly shim: ShimResult;
  readonly reading: ReadingResult;
}

/** Shims and what was read with them. A reading as found is that of a dirty, worn unit: it says nothing about the rate. */
function pairsOf(results: readonly Result[], part: string, test: string): Pair[] {
  const pairs: Pair[] = [];
  let now: ShimResult | null = null;
  let before: ReadingResult[] = [];
  for (const result of results) {
    if (result.form === 'shim' && result.part === part) {
      now = result;
      // What was read before the first shim came out was read with that one.
      if (!result.fitted) for (const reading of before) pairs.push({ shim: now, reading });
      before = [];
    }
    if (result.form !== 'reading' || result.name !== test || result.asFound) continue;
    if (now === null) before.push(result);
    else pairs.push({ shim: now, reading: result });
  }
  return pairs;
}

interface UnitPairs {
  readonly job: string;
  readonly unit: Unit;
  readonly pairs: readonly Pair[];
}

/** Without what is off by a power of ten beside what the others show. */
function withoutSlips(units: readonly UnitPairs[], unit: UnitName) {
  const all = units.flatMap(({ pairs }) => pairs);
  const usual = {
    reading: medianOf(all.map(({ reading }) => numberIn(reading.value, unit))),
    shim: medianOf(all.map(({ shim }) => numberIn(shim.size, 'mm'))),
  };
  const slips: Slip[] = [];
  const slipped = (of: UnitPairs, what: Slip['what'], value: Quantity, figure: number): boolean => {
    const tens = usual[what] === null ? 0 : slipOf(figure, usual[what]);
    const known = slips.some((one) => one.unit === of.unit && one.value === value);
    if (tens !== 0 && !known) slips.push({ job: of.job, unit: of.unit, what, value, meant: unslipped(value, tens) });
    return tens !== 0;
  };
  const kept = units.map((one) => {
    const pairs = one.pairs.filter(({ shim, reading }) => {
      const off = slipped(one, 'shim', shim.size, numberIn(shim.size, 'mm'));
      return !slipped(one, 'reading', reading.value, numberIn(reading.value, unit)) && !off;
    });
    const points = pairs.map(({ shim, reading }) => ({
      x: numberIn(shim.size, 'mm'),
      y: numberIn(reading.value, unit),
    }));
    return { ...one, pairs, points };
  });
  return { kept, slips };
}

/** Kinds were judged where the result was read. */
function numberIn(quantity: Quantity, unit: UnitName): number {
  return convert(quantity, unit)?.valueOf() ?? Number.NaN;
}

/** The last digit that is written, in a unit. */
function digitIn({ number, unit }: Quantity, to: UnitName): number {
  const one = convertDifference({ number: '1', unit }, to)?.valueOf() ?? 0;
  return 10 ** lastPlace(number) * one;
}

/** The resolution of the tool that a reading was taken with; if it is not stated, the last digit of the reading. */
function markOf(
  procedure: Procedure,
  reading: ReadingResult,
  unit: UnitName,
  limit: ShimChoice['cases'][number]['limit'],
): number {
  const named = procedure.shop.assets.find(({ name }) => name === reading.tool);
  const tool = named ?? (limit === null ? null : findGauge(procedure, reading.name, limit));
  const mark = tool?.graduated ?? null;
  return (mark === null ? null : convertDifference(mark, unit)?.valueOf()) ?? digitIn(reading.value, unit);
}
