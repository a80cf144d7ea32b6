import { leastSpread } from '../calculations/matching.ts';
import { base, quantityOf } from '../calculations/measured.ts';
import type { Job } from '../model/job.ts';
import { amount, compare, sizeOf } from '../quantities/index.ts';
import type { Quantity } from '../quantities/types.ts';
import { questionOf, type UnitStand, unitStands } from './unit-shims.ts';

/** What to fit in one unit of a set. */
export interface SetChoice {
  readonly stand: UnitStand;
  /** The shim that stays, or another. */
  readonly shim: Quantity;
  /** What the gauge should show, before a new spring has settled. */
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
 * is least, new springs settled. A unit may keep the shim that it has, which then is not taken from the drawer. One shim each: stacks of two are
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
  const { low, choice, unit } = first!;
  const drawer = questionOf(first!).drawer;
  const reading = (stand: UnitStand, shim: Quantity) =>
    amount(stand.reading.value).add(amount(stand.rate).mul(amount(shim).sub(amount(stand.now))));
  // What it reads must be no more than the high end, and what it reads when a new spring has settled no less than the low.
  const inWindow = (stand: UnitStand, shim: Quantity) => {
    const value = reading(stand, shim);
    const settled = stand.settling === null ? value : value.sub(sizeOf(stand.settling));
    return settled.compare(amount(stand.low)) >= 0 && value.compare(amount(stand.high)) <= 0 ? settled.valueOf() : null;
  };
  // One column for each size of the drawer, then one for each unit: the shim that it has, for it alone.
  const readings = stands.map((stand, row) => [
    ...drawer.map(({ thickness }) => (compare(thickness, stand.now) === 0 ? null : inWindow(stand, thickness))),
    ...stands.map((other, column) => (row === column ? inWindow(other, other.now) : null)),
  ]);
  const counts = [...drawer.map(({ count }) => count ?? stands.length), ...stands.map(() => 1)];
  const aim = first!.aim === null ? (base(low) + base(first!.high)) / 2 : base(first!.aim);
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
