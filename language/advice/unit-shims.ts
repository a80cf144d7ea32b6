import { type ShimAdvice, shimAdvice } from '../calculations/shim-advice.ts';
import type { Job, ReadingResult, Result, Unit } from '../model/job.ts';
import type { Procedure } from '../model/procedure.ts';
import { add, compare, kindOfUnit, window } from '../quantities/index.ts';
import type { Difference, Quantity } from '../quantities/types.ts';
import { springsOf } from '../rules/settling.ts';
import { type ChoiceCase, inUnits, type ShimChoice, shimChoices } from '../rules/shim-choices.ts';
import { aimOf } from '../rules/tool-choice.ts';
import { limitNow, settlingIn } from './new-parts.ts';

/** How a unit stands at one thing that is chosen for it: what it reads now, with which shim. */
export interface UnitStand {
  readonly unit: Unit;
  readonly choice: ShimChoice;
  readonly asked: ChoiceCase;
  /** Ends of the window. */
  readonly low: Quantity;
  readonly high: Quantity;
  readonly aim: Quantity | null;
  /** What a new spring in it will lose by settling; null: nothing, or nobody says. */
  readonly settling: Difference | null;
  readonly reading: ReadingResult;
  /** The shim that was in at that reading. */
  readonly now: Quantity;
  /** The reading is inside its window, settling and all: nothing is to be done. */
  readonly stands: boolean;
  /** Setting rate of a shim, in pressure per length. */
  readonly rate: Quantity;
}

/**
 * How the units of a job stand, as far as their results tell. A reading belongs to the shim that was fitted before it;
 * one taken before any shim came out, to the one that came out. A stack of several stocks is not looked at.
 */
export function unitStands(job: Job): UnitStand[] {
  const choices = distinct(shimChoices(job.procedure).filter(({ parts }) => parts.length === 1));
  return job.units.flatMap((unit) => choices.flatMap((choice) => standOf(job.procedure, unit, choice) ?? []));
}

/** What to fit. Null: the reading is inside its window. */
export function adviceFor(stand: UnitStand): ShimAdvice | null {
  return stand.stands ? null : shimAdvice(questionOf(stand));
}

/** The same part for the same test is chosen in several repairs: one of them stands for all. */
export function distinct(choices: readonly ShimChoice[]): ShimChoice[] {
  const key = ({ parts, test }: ShimChoice) => `${parts.map(({ name }) => name).join(' ')} ${test}`;
  return choices.filter((choice, index) => choices.findIndex((other) => key(other) === key(choice)) === index);
}

function standOf(procedure: Procedure, unit: Unit, choice: ShimChoice): UnitStand | null {
  const asked =
    choice.cases.find(({ number }) => number === unit.number) ?? choice.cases.find(({ number }) => number === null);
  const found = readingOf(unit.results, choice.parts[0]!.name, choice.test);
  const { limit, forNew } = limitNow(procedure, choice.test, unit);
  if (asked === undefined || asked.rate === null || limit === null || found === null) return null;
  const { low, high } = window(limit);
  const { reading, now } = found;
  if (low === null || high === null || kindOfUnit(low.unit) !== 'pressure') return null;
  const rate = inUnits(asked.rate, 'bar per mm');
  const aim = forNew ? aimOf(limit) : asked.target;
  // A limit for a new spring allows for its settling already.
  const settling = forNew ? null : settlingIn(procedure, unit, springsOf(procedure, choice.step), choice.step.choose!);
  const lowest = (settling === null ? low : add(low, settling)) ?? low;
  const stands = compare(reading.value, lowest) !== -1 && compare(reading.value, high) !== 1;
  return { unit, choice, asked, low, high, aim, settling, reading, now, stands, rate };
}

/** The last reading of a test, and the shim that was in. */
function readingOf(results: readonly Result[], part: string, test: string) {
  let reading: ReadingResult | null = null;
  let now: Quantity | null = null;
  for (const result of results) {
    if (result.form === 'reading' && result.name === test) reading = result;
    if (result.form !== 'shim' || result.part !== part) continue;
    // Another shim than the one that was read: the unit has not been read with it yet.
    if (result.fitted) reading = null;
    now = result.size;
  }
  return reading === null || now === null ? null : { reading, now };
}

/** The question that the calculation answers. */
export function questionOf({ choice, asked, low, high, aim, settling, reading, now, rate }: UnitStand) {
  const [stock] = choice.stocks;
  const never = choice.step.choose!.neverAbove;
  return {
    reading: reading.value,
    now,
    low,
    high,
    aim,
    rate,
    rateError: asked.rateError === null ? null : inUnits(asked.rateError, 'bar per mm'),
    scatter: null,
    settling,
    drawer: stock!.sizes
      .map((thickness, index) => ({ thickness, count: stock!.counts[index] ?? null }))
      .filter(({ thickness }) => never === null || compare(thickness, never) !== 1),
    stacks: stock!.stacks,
  };
}
