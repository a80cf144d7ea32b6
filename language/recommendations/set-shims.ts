import { type Across, acrossSet } from '../analysis/readings.ts';
import { type DrawerLayout, type Total, thickestTo, thinnestFrom, ticksOf, without } from '../engineering/drawer.ts';
import { fewestOpened } from '../engineering/matching.ts';
import { differenceOf, quantityOf } from '../engineering/measured.ts';
import { expectedOf, roomAt, safeAim, windowOf } from '../engineering/shim-advice.ts';
import type { Job } from '../model/job.ts';
import { amount, compare, kindOfUnit, sizeOf } from '../quantities/index.ts';
import type { Difference, Quantity } from '../quantities/types.ts';
import { allReadings, type UnitReading } from './unit-shims.ts';

/** What to fit in one unit of a set. */
export interface SetChoice {
  readonly stand: UnitReading;
  /** One shim, or two on each other; null: it stays closed. */
  readonly shims: readonly Quantity[] | null;
  /** What the gauge should show, before a new spring has settled; of one that stays closed what it showed. */
  readonly expected: Quantity;
}

/** Units of one part number, which are matched to each other. */
export interface MatchedSet {
  readonly number: string | null;
  readonly test: string;
  readonly stands: readonly UnitReading[];
  /** How many of them are read: those of `stands`, and those inside the window whose shim is not written down. */
  readonly read: number;
  /** How many units of that part number there are, on hold or not read yet or not. */
  readonly units: number;
  /** The spread that is let through, and where; null if it is not stated. */
  readonly across: Across | null;
  /** Null: however the drawer is given out, one unit at least stays outside its window. */
  readonly choices: readonly SetChoice[] | null;
  /** As the gauge shows it, before new springs have settled. */
  readonly spread: Difference | null;
  /** When they have; null: no new spring is in it. */
  readonly settled: Difference | null;
  /** The spread is within what is let through. */
  readonly kept: boolean;
}

/** Most totals of two that are looked at for one unit, on either side of its aim. */
const mostStacks = 25;

/**
 * Shims for all units of a job at once. A unit that passes stays closed; only where the spread of its part number is too
 * wide are the fewest opened. What is fitted lands inside the window, no nearer to an end than tool and scatter allow where
 * the drawer lets it. What one set takes out of a drawer the next has not. Two on each other come in where no single
 * shim will do, out of a drawer with as many of each size as are wanted: two units may want the same half.
 */
export function matchedSets(job: Job): MatchedSet[] {
  const sets = new Map<string, UnitReading[]>();
  const others = new Map<string, Quantity[]>();
  for (const one of allReadings(job)) {
    const { test, parts } = one.choice;
    const key = `${parts[0]!.name} ${test} ${one.unit.number ?? ''}`;
    if (!('unknown' in one)) sets.set(key, [...(sets.get(key) ?? []), one]);
    else if (one.unknown.why === 'no shim') others.set(key, [...(others.get(key) ?? []), one.unknown.reading.value]);
  }
  const taken = new Map<string, readonly Quantity[]>();
  return [...sets].map(([key, stands]) => {
    const { name } = stands[0]!.choice.stocks[0]!;
    const drawer = without(stands[0]!.question.drawer, taken.get(name) ?? []);
    const set = matched(job, stands, drawer, others.get(key) ?? []);
    taken.set(name, [...(taken.get(name) ?? []), ...(set.choices ?? []).flatMap(({ shims }) => shims ?? [])]);
    return set;
  });
}

interface Fits {
  readonly total: Total;
  readonly reading: number;
  /** No nearer to an end of the window than tool and scatter allow. */
  readonly safe: boolean;
}

/** `others`: readings of units whose shim is not written down. They count for the spread, and stay as they are. */
function matched(
  job: Job,
  stands: readonly UnitReading[],
  drawer: DrawerLayout,
  others: readonly Quantity[],
): MatchedSet {
  const [{ choice, unit, reading }] = stands as [UnitReading, ...UnitReading[]];
  const across = acrossSet(job.procedure, choice.test, kindOfUnit(reading.value.unit), unit.number);
  const units = job.units.filter(({ number }) => number === unit.number).length;
  const { low, high } = stands[0]!;
  const isInside = (value: Quantity) =>
    (low === null || [0, 1].includes(compare(value, low) ?? -1)) &&
    (high === null || [0, -1].includes(compare(value, high) ?? 1));
  const fixed = others.filter(isInside).map((value) => amount(value).valueOf());
  const read = stands.length + fixed.length;
  const set = { number: unit.number, test: choice.test, stands, read, units, across };
  const fits = stands.map((stand) => fitsOf(stand, drawer));
  const columns = [...new Map(fits.flatMap((row) => row.map(({ total }) => [keyOf(total), total] as const))).entries()];
  const counts = columns.map(([, { shims }]) => countOf(drawer, shims) ?? stands.length);
  const valuesOf = (which: (one: Fits) => boolean) =>
    [...fits, ...fixed.map(() => [])].map((row) => {
      const own = new Map(row.filter(which).map((one) => [keyOf(one.total), one.reading]));
      return columns.map(([key]) => own.get(key) ?? null);
    });
  const stays = [...stands.map((stand) => (stand.stands ? amount(stand.reading.value).valueOf() : null)), ...fixed];
  const aim = safeAim(stands[0]!.question)!.valueOf();
  // Exact: a spread just as wide as is let through is let through.
  const most = across === null ? null : sizeOf(across.width).valueOf();
  const within = (low: number, high: number) => most === null || high - low <= most * (1 + exactness);
  const found =
    fewestOpened(
      stays,
      valuesOf(({ safe }) => safe),
      counts,
      aim,
      within,
    ) ??
    fewestOpened(
      stays,
      valuesOf(() => true),
      counts,
      aim,
      within,
    );
  if (found === null) return { ...set, choices: null, spread: null, settled: null, kept: false };
  const shown = (value: number, { question }: UnitReading) => quantityOf(value, question.reading.unit)!;
  const apart = (value: number) => differenceOf(value, stands[0]!.question.reading.unit);
  const choices = found.choice.slice(0, stands.length).map((column, row): SetChoice => {
    const stand = stands[row]!;
    if (column === null) return { stand, shims: null, expected: stand.reading.value };
    const total = columns[column]![1];
    return { stand, shims: total.shims, expected: shown(expectedOf(stand.question, total).valueOf(), stand) };
  });
  const after = [...choices.map(({ stand, expected }) => amount(expected).valueOf() - lossOf(stand)), ...fixed];
  return {
    ...set,
    choices,
    spread: apart(found.high - found.low),
    settled: stands.some(({ settling }) => settling !== null) ? apart(Math.max(...after) - Math.min(...after)) : null,
    kept: found.kept,
  };
}

/** Figures are exact in their own units; beside each other as numbers they differ by less than this. */
const exactness = 1e-12;

function lossOf({ settling }: UnitReading): number {
  return settling === null ? 0 : sizeOf(settling).valueOf();
}

function keyOf({ shims }: Total): string {
  return shims.map(({ number, unit }) => `${number} ${unit}`).join(' + ');
}

/** How many there are of it; null: as many as are wanted. */
function countOf({ pieces }: DrawerLayout, shims: readonly Quantity[]): number | null {
  return shims.length > 1 ? null : (pieces.find(({ thickness }) => thickness === shims[0])?.count ?? null);
}

/** Everything that brings a unit into its window. */
function fitsOf({ question }: UnitReading, drawer: DrawerLayout): Fits[] {
  const { low, high } = windowOf(question);
  const ticks = (there: ReturnType<typeof safeAim>, rounding: 'up' | 'down') =>
    ticksOf(
      amount(question.now).add(there!.sub(amount(question.reading)).div(question.rate)),
      drawer.perMetre,
      rounding,
    );
  const most = drawer.most ?? thickestTo(drawer, null)?.ticks ?? 0n;
  const from = low === null ? 0n : ticks(low, 'up');
  const end = high === null ? most : ticks(high, 'down');
  const to = end > most ? most : end;
  const singles = drawer.pieces.flatMap((piece): Total[] =>
    piece.ticks >= from && piece.ticks <= to ? [{ ticks: piece.ticks, shims: [piece.thickness] }] : [],
  );
  const counted = drawer.pieces.some(({ count }) => count !== null);
  const totals =
    singles.length > 0 || !drawer.stacks || counted
      ? singles
      : stacksAbout(drawer, ticks(safeAim(question), 'down'), from, to);
  return totals.map((total) => {
    const expected = expectedOf(question, total);
    const room = roomAt(question, expected);
    return {
      total,
      reading: expected.valueOf(),
      safe:
        (low === null || expected.sub(low).compare(room) >= 0) &&
        (high === null || high.sub(expected).compare(room) >= 0),
    };
  });
}

/** Totals of two about an aim, the nearest first on either side. */
function stacksAbout(drawer: DrawerLayout, aim: bigint, from: bigint, to: bigint): Total[] {
  const found: Total[] = [];
  for (let [at, count] = [aim < to ? aim : to, 0]; count < mostStacks; count++) {
    const total = thickestTo(drawer, at);
    if (total === null || total.ticks < from) break;
    found.push(total);
    at = total.ticks - 1n;
  }
  for (let [at, count] = [(aim < from ? from : aim) + 1n, 0]; count < mostStacks; count++) {
    const total = thinnestFrom(drawer, at);
    if (total === null || total.ticks > to) break;
    if (found.every(({ ticks }) => ticks !== total.ticks)) found.push(total);
    at = total.ticks + 1n;
  }
  return found;
}
