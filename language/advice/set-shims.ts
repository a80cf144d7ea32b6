import { leastSpread } from '../calculations/matching.ts';
import { quantityOf } from '../calculations/measured.ts';
import type { Job } from '../model/job.ts';
import { amount, compare } from '../quantities/index.ts';
import type { Quantity } from '../quantities/types.ts';
import { questionOf, type UnitStand, unitStands } from './unit-shims.ts';

/** What to fit in one unit of a set. */
export interface SetChoice {
  readonly stand: UnitStand;
  /** The shim that stays, or another. */
  readonly shim: Quantity;
  readonly expected: Quantity;
}

/** Units of one part number, which are matched to each other. */
export interface MatchedSet {
  readonly number: string | null;
  readonly test: string;
  readonly stands: readonly UnitStand[];
  /** Null: however the drawer is given out, one unit at least stays outside its window. */
  readonly choices: readonly SetChoice[] | null;
  readonly spread: Quantity | null;
}

/**
 * Shims for all units of a job at once, so that each lands in its window and the spread across those of one part number
 * is least. A unit may keep the shim that it has, which then is not taken from the drawer. One shim each: stacks of two are
 * not looked through, since two units may want the same half.
 */
export function matchedSets(job: Job): MatchedSet[] {
  const sets = new Map<string, UnitStand[]>();
  for (const stand of unitStands(job)) {
    const key = `${stand.choice.test} ${stand.unit.number ?? ''}`;
    sets.set(key, [...(sets.get(key) ?? []), stand]);
  }
  return [...sets.values()].map(matched);
}

function matched(stands: readonly UnitStand[]): MatchedSet {
  const [first] = stands;
  const { low, high, choice, unit } = first!;
  const drawer = questionOf(first!).drawer;
  const reading = (stand: UnitStand, shim: Quantity) =>
    amount(stand.reading.value).add(amount(stand.rate).mul(amount(shim).sub(amount(stand.now))));
  const inWindow = (stand: UnitStand, shim: Quantity) => {
    const value = reading(stand, shim);
    return value.compare(amount(low)) >= 0 && value.compare(amount(high)) <= 0 ? value.valueOf() : null;
  };
  // One column for each size of the drawer, then one for each unit: the shim that it has, for it alone.
  const readings = stands.map((stand, row) => [
    ...drawer.map(({ thickness }) => (compare(thickness, stand.now) === 0 ? null : inWindow(stand, thickness))),
    ...stands.map((other, column) => (row === column ? inWindow(other, other.now) : null)),
  ]);
  const counts = [...drawer.map(({ count }) => count ?? stands.length), ...stands.map(() => 1)];
  const aim =
    first!.asked.target === null
      ? (amount(low).valueOf() + amount(high).valueOf()) / 2
      : amount(first!.asked.target).valueOf();
  const found = leastSpread(readings, counts, aim);
  const set = { number: unit.number, test: choice.test, stands };
  if (found === null) return { ...set, choices: null, spread: null };
  return {
    ...set,
    choices: found.choice.map((column, row) => {
      const stand = stands[row]!;
      const shim = drawer[column]?.thickness ?? stand.now;
      return { stand, shim, expected: quantityOf(reading(stand, shim).valueOf(), low.unit)! };
    }),
    spread: quantityOf(found.high - found.low, low.unit),
  };
}
