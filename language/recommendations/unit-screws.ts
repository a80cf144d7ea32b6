import { limitNow } from '../analysis/held.ts';
import { settlingIn } from '../analysis/shims.ts';
import { aimOf } from '../analysis/tools.ts';
import { type ScrewTurns, screwTurns } from '../engineering/screw-turns.ts';
import type { Adjuster } from '../model/family.ts';
import type { Job, ReadingResult, Unit } from '../model/job.ts';
import type { Procedure } from '../model/procedure.ts';
import { add, compare, kindOfUnit, window } from '../quantities/index.ts';
import type { Difference, Quantity } from '../quantities/types.ts';

/** The state of a unit at the reading that one of its screws sets. */
export interface ScrewReading {
  readonly unit: Unit;
  readonly adjuster: Adjuster;
  readonly low: Quantity;
  readonly high: Quantity;
  /** What a new spring under it will lose by settling; null: nothing, or not stated. */
  readonly settling: Difference | null;
  readonly reading: ReadingResult;
  /** How far to turn. Null: the reading is inside its window. */
  readonly turns: ScrewTurns | null;
}

/** The state of the units of a job at their adjusting screws, as far as their results show. */
export function screwReadings(job: Job): ScrewReading[] {
  const adjusters = job.procedure.family.adjusters.filter(({ rate }) => rate !== null);
  return job.units.flatMap((unit) => adjusters.flatMap((adjuster) => standOf(job.procedure, unit, adjuster) ?? []));
}

function standOf(procedure: Procedure, unit: Unit, adjuster: Adjuster): ScrewReading | null {
  const { limit, forNew } = limitNow(procedure, adjuster.sets, unit);
  const { low, high } = limit === null ? { low: null, high: null } : window(limit);
  // As found, the screw is backed off afterwards: only a reading that was taken since shows its setting.
  const reading = unit.results.findLast(
    (result): result is ReadingResult => result.form === 'reading' && !result.asFound && result.name === adjuster.sets,
  );
  if (low === null || high === null || kindOfUnit(low.unit) !== 'pressure' || reading === undefined) return null;
  const held = procedure.family.parts.find(({ name }) => name === adjuster.part)?.holds ?? [];
  const springs = procedure.family.parts.filter(({ name }) => held.includes(name));
  const settling = forNew ? null : settlingIn(procedure, unit, springs, { test: adjuster.sets, target: null });
  const lowest = settling === null ? low : add(low, settling);
  if (lowest === null || compare(lowest, high) === 1) return null;
  // A screw goes anywhere: the middle leaves the most room on both sides, wherever the nominal is.
  const aim = aimOf({ form: 'range', low: lowest, high })!;
  const stands = compare(reading.value, lowest) !== -1 && compare(reading.value, high) !== 1;
  const turns = stands ? null : screwTurns(reading.value, { low: lowest, high, aim }, adjuster.rate!);
  return !stands && turns === null ? null : { unit, adjuster, low, high, settling, reading, turns };
}
