import { aimOf } from '../analysis/tool-choice.ts';
import { type ScrewTurns, screwTurns } from '../engineering/screw-turns.ts';
import type { Adjuster } from '../model/family.ts';
import type { Job, ReadingResult, Unit } from '../model/job.ts';
import type { Procedure } from '../model/procedure.ts';
import { add, compare, kindOfUnit, window } from '../quantities/index.ts';
import type { Difference, Quantity } from '../quantities/types.ts';
import { limitNow, settlingIn } from './new-parts.ts';

/** How a unit stands at the reading that one of its screws sets. */
export interface ScrewStand {
  readonly unit: Unit;
  readonly adjuster: Adjuster;
  readonly low: Quantity;
  readonly high: Quantity;
  /** What a new spring under it will lose by settling; null: nothing, or nobody says. */
  readonly settling: Difference | null;
  readonly reading: ReadingResult;
  /** How far to turn. Null: the reading is inside its window. */
  readonly turns: ScrewTurns | null;
}

/** How the units of a job stand at their adjusting screws, as far as their results tell. */
export function screwStands(job: Job): ScrewStand[] {
  const adjusters = job.procedure.family.adjusters.filter(({ rate }) => rate !== null);
  return job.units.flatMap((unit) => adjusters.flatMap((adjuster) => standOf(job.procedure, unit, adjuster) ?? []));
}

function standOf(procedure: Procedure, unit: Unit, adjuster: Adjuster): ScrewStand | null {
  const { limit, forNew } = limitNow(procedure, adjuster.sets, unit);
  const { low, high } = limit === null ? { low: null, high: null } : window(limit);
  // As found, the screw is backed off afterwards: only a reading that was taken since says where it stands.
  const reading = unit.results.findLast(
    (result): result is ReadingResult => result.form === 'reading' && !result.asFound && result.name === adjuster.sets,
  );
  if (low === null || high === null || kindOfUnit(low.unit) !== 'pressure' || reading === undefined) return null;
  const held = procedure.family.parts.find(({ name }) => name === adjuster.part)?.holds ?? [];
  const springs = procedure.family.parts.filter(({ name }) => held.includes(name));
  const settling = forNew ? null : settlingIn(procedure, unit, springs, { test: adjuster.sets, target: null });
  const lowest = settling === null ? low : add(low, settling);
  if (lowest === null || compare(lowest, high) === 1) return null;
  // A screw goes anywhere: the middle leaves most room on both sides, wherever the nominal stands.
  const aim = aimOf({ form: 'range', low: lowest, high })!;
  const stands = compare(reading.value, lowest) !== -1 && compare(reading.value, high) !== 1;
  const turns = stands ? null : screwTurns(reading.value, { low: lowest, high, aim }, adjuster.rate!);
  return !stands && turns === null ? null : { unit, adjuster, low, high, settling, reading, turns };
}
