import { limitNow } from '../analysis/held.ts';
import { sameReading } from '../analysis/readings.ts';
import { caseFor, middleOf, type ShimChoice, settlingIn, shimChoices, springsOf } from '../analysis/shims.ts';
import { findGauge } from '../analysis/tools.ts';
import { type DrawerLayout, layOut } from '../engineering/drawer.ts';
import { guardedOn } from '../engineering/guarded.ts';
import { differenceOf } from '../engineering/measured.ts';
import type { ShimQuestion } from '../engineering/shim-advice.ts';
import { medianOf, resolutionOf, slipOf, unslipped } from '../engineering/slip.ts';
import { permissibleError } from '../engineering/tool-error.ts';
import type { Job, ReadingResult, Result, Unit } from '../model/job.ts';
import type { Procedure } from '../model/procedure.ts';
import type { Asset } from '../model/shop.ts';
import { add, amount, compare, kindOfUnit, lastPlace, unitOf, window } from '../quantities/index.ts';
import type { Difference, Limit, Quantity } from '../quantities/types.ts';

/** The state of a unit at one part that is chosen for it: what it reads now, with which shim. */
export interface UnitReading {
  readonly unit: Unit;
  readonly choice: ShimChoice;
  /** Ends of the window that the tool may show; one of them may be open where there is an aim. */
  readonly low: Quantity | null;
  readonly high: Quantity | null;
  /** What a new spring in it will lose by settling; null: nothing, or not stated. */
  readonly settling: Difference | null;
  readonly reading: ReadingResult;
  /** The shim that was in at that reading. */
  readonly now: Quantity;
  /** Nothing is to be done: the reading is inside its window, settling and all, and the shim not over its limit of use. */
  readonly stands: boolean;
  /** Expected figures are written with as many digits as this. */
  readonly like: Quantity;
  /** What is asked of the drawer, all of it at hand. */
  readonly question: ShimQuestion;
}

/** Why nothing can be said about a unit yet. */
export type Unknown =
  | {
      readonly why: 'no reading' | 'changed since' | 'no limit' | 'no aim' | 'no rate' | 'other kind' | 'several parts';
    }
  | { readonly why: 'no shim'; readonly reading: ReadingResult }
  | {
      readonly why: 'slip';
      readonly what: 'reading' | 'shim';
      readonly value: Quantity;
      readonly meant: Quantity | null;
    };

export interface UnknownReading {
  readonly unit: Unit;
  readonly choice: ShimChoice;
  readonly unknown: Unknown;
}

/**
 * The state of the units of a job, as far as their results show. A reading belongs to the shim that was fitted before it;
 * one taken before any shim came out, to the one that came out. A unit on hold is the lead's.
 */
export function unitReadings(job: Job): UnitReading[] {
  return allReadings(job).flatMap((one) => ('unknown' in one ? [] : [one]));
}

/** The same, with the units that nothing can be worked out for, and why. */
export function allReadings(job: Job): (UnitReading | UnknownReading)[] {
  const { procedure } = job;
  const choices = distinct(shimChoices(procedure)).map((choice) => ({ choice, drawer: drawerOf(choice) }));
  return job.units
    .filter(({ onHold }) => onHold === null)
    .flatMap((unit) =>
      choices.flatMap(({ choice, drawer }) => {
        const stand = standOf(procedure, unit, choice, drawer);
        if (stand === null) return [];
        return 'why' in stand ? { unit, choice, unknown: stand } : stand;
      }),
    );
}

/** The same part for the same test is chosen in several repairs: one of them stands for all. */
export function distinct(choices: readonly ShimChoice[]): ShimChoice[] {
  const key = ({ parts, test }: ShimChoice) => `${parts.map(({ name }) => name).join(' ')} ${test}`;
  return choices.filter((choice, index) => choices.findIndex((other) => key(other) === key(choice)) === index);
}

function drawerOf({ stocks, most }: ShimChoice): DrawerLayout {
  return layOut(stocks[0]!, most);
}

/** Null: the choice is not for its part number. */
function standOf(
  procedure: Procedure,
  unit: Unit,
  choice: ShimChoice,
  drawer: DrawerLayout,
): UnitReading | Unknown | null {
  const { only } = choice.step;
  if (only !== null && unit.number !== null && !only.includes(unit.number)) return null;
  if (choice.parts.length > 1) return { why: 'several parts' };
  const found = readingOf(unit.results, choice.parts[0]!.name, sameReading(procedure, choice.test));
  if (!('now' in found)) return found;
  const { reading, now } = found;
  const asked = caseFor(choice, unit.number);
  const { limit, forNew, acceptance } = limitNow(procedure, choice.test, unit);
  if (asked === undefined || limit === null) return { why: 'no limit' };
  const exact = window(limit);
  const end = exact.low ?? exact.high ?? exact.nominal;
  if (end === null || kindOfUnit(end.unit) !== kindOfUnit(reading.value.unit)) return { why: 'other kind' };
  if (asked.rate === null) return { why: 'no rate' };
  const gauge =
    procedure.shop.assets.find(({ name }) => name === reading.tool) ?? findGauge(procedure, choice.test, limit);
  const drawn = gauge === null || acceptance === 'simple' ? null : guardedOn(gauge, limit, acceptance);
  const { low, high } = drawn === null || drawn.shut ? exact : drawn.window;
  const aim = forNew ? middleOf(limit, null) : (asked.target ?? middleOf(limit, null));
  if (aim === null || (low === null && high === null)) return { why: 'no aim' };
  const slip = slipIn(reading.value, aim, now, drawer);
  if (slip !== null) return slip;
  // A limit for a new spring allows for its settling already.
  const settling = forNew ? null : settlingIn(procedure, unit, springsOf(procedure, choice.step), choice.choose);
  const lowest = settling === null || low === null ? low : add(low, settling);
  const inside =
    (lowest === null || compare(reading.value, lowest) !== -1) && (high === null || compare(reading.value, high) !== 1);
  const question = {
    reading: reading.value,
    now,
    low,
    high,
    aim,
    rate: asked.rate,
    rateError: asked.rateError,
    scatter: null,
    resolution: resolutionOn(gauge, reading.value),
    guard: drawn === null && gauge !== null ? permissibleError(gauge, high ?? low!) : null,
    settling,
    drawer,
  };
  const { most } = choice;
  const stands = inside && (most === null || compare(now, most) !== 1);
  return { unit, choice, low, high, settling, reading, now, stands, like: likeOf(limit, reading.value), question };
}

/** As the limit is written where the reading is in its unit, else as the reading is. */
function likeOf(limit: Limit, value: Quantity): Quantity {
  const { low, high, nominal } = window(limit);
  const end = nominal ?? low ?? high;
  return end !== null && end.unit === value.unit ? end : value;
}

/** Standard uncertainty of a reading: by the marks of its tool, else by the digits that are written. */
function resolutionOn(gauge: Asset | null, value: Quantity): Difference | null {
  const mark = gauge?.graduated ?? null;
  const own = mark !== null && kindOfUnit(mark.unit) === kindOfUnit(value.unit) ? mark : null;
  const step = Number(own?.number ?? 10 ** lastPlace(value.number)) * unitOf((own ?? value).unit).factor.valueOf();
  return differenceOf(resolutionOf(step), value.unit);
}

/** A reading or a shim that is off by a power of ten, or is none at all. */
function slipIn(reading: Quantity, aim: Quantity, now: Quantity, drawer: DrawerLayout): Unknown | null {
  const value = amount(reading).valueOf();
  const usual = amount(aim).valueOf();
  const size = amount(now).valueOf();
  const sizes = drawer.pieces.map(({ ticks }) => Number(ticks) / Number(drawer.perMetre));
  const [thick, thinnest, thickest] = [medianOf(sizes), sizes[0] ?? 0, sizes.at(-1) ?? 0];
  const offShim = thick === null || (size >= thinnest && size <= 2 * thickest) ? 0 : slipOf(size, thick);
  const off = slipOf(value, usual);
  const slip = (what: 'reading' | 'shim', of: Quantity, tens: number) =>
    ({ why: 'slip', what, value: of, meant: tens === 0 ? null : unslipped(of, tens) }) as const;
  if (size <= 0 || offShim !== 0) return slip('shim', now, offShim);
  return (usual > 0 && value <= 0) || off !== 0 ? slip('reading', reading, off) : null;
}

/** The last reading, and the shim that was in; or what is missing. */
function readingOf(
  results: readonly Result[],
  part: string,
  isRead: (name: string) => boolean,
): Unknown | { readonly reading: ReadingResult; readonly now: Quantity } {
  let reading: ReadingResult | null = null;
  let now: Quantity | null = null;
  let changed = false;
  for (const result of results) {
    if (result.form === 'reading' && isRead(result.name)) reading = result;
    if (result.form !== 'shim' || result.part !== part) continue;
    // Another shim than the one that was read: the unit has not been read with it yet.
    if (result.fitted) {
      changed ||= reading !== null;
      reading = null;
    }
    now = result.size;
  }
  if (reading === null) return { why: changed ? 'changed since' : 'no reading' };
  return now === null ? { why: 'no shim', reading } : { reading, now };
}
