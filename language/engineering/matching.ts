/**
 * Which shim for which unit: exact, by one matching that is kept while pairs come and go. Own code: libraries for
 * assignment minimize a sum, and the least sum is not the least spread.
 */

import { medianOf } from './slip.ts';

/** What each unit (row) would read with each shim (column). Null: that shim does not come into question for it. */
export type Readings = readonly (readonly (number | null)[])[];

export interface MatchedSet {
  /** For each unit the column of its shim. */
  readonly choice: readonly number[];
  readonly low: number;
  readonly high: number;
}

interface Pair {
  readonly row: number;
  readonly column: number;
  readonly value: number;
}

/**
 * The choice with the least spread between the highest and the lowest reading of the set; of several that are alike the
 * one whose middle is nearest to the aim. A column is given out as often as its count says. Null: however it is turned,
 * one unit at least goes without.
 */
export function leastSpread(readings: Readings, counts: readonly number[], aim: number): MatchedSet | null {
  const pairs = sortedPairs(readings);
  const matching = new Matching(readings.length, counts);
  let best: MatchedSet | null = null;
  let first = 0;
  for (const { row, column, value: high } of pairs) {
    matching.add(row, column);
    while (matching.complete()) {
      const low = pairs[first]!.value;
      const found = { choice: matching.choice(), low, high };
      if (best === null || better(found, best, aim)) best = found;
      matching.remove(pairs[first]!.row, pairs[first]!.column);
      first++;
    }
  }
  return best;
}

/** The choice whose greatest value is least (the bottleneck assignment). Null: one row at least goes without. */
export function leastMost(values: Readings, counts: readonly number[]): MatchedSet | null {
  const pairs = sortedPairs(values);
  const matching = new Matching(values.length, counts);
  for (const { row, column, value } of pairs) {
    matching.add(row, column);
    if (matching.complete()) return { choice: matching.choice(), low: pairs[0]!.value, high: value };
  }
  return null;
}

/** A set in which some units stay closed. */
export interface OpenedUnits {
  /** For each unit the column of its shim; null: it stays as it is. */
  readonly choice: readonly (number | null)[];
  readonly low: number;
  readonly high: number;
  readonly opened: number;
}

/**
 * The choice that opens the fewest units so that the set lies within its spread; of those the one with the least
 * spread; of those the one that opens the units furthest out, then that whose middle is nearest to the aim. A unit whose
 * reading may not stay is opened in any case. Where nothing keeps the spread, the least of all.
 * Exact: for a number of units to be opened all that stays and all that is fitted lies between two figures; wider figures
 * never let through less, so that both ends only go up. Null: a unit that must be opened goes without.
 * @param stays what each reads if it is left closed; null: it cannot be
 * @param readings what each would read with each shim
 * @param within whether such a spread is let through
 */
export function fewestOpened(
  stays: readonly (number | null)[],
  readings: Readings,
  counts: readonly number[],
  aim: number,
  within: (low: number, high: number) => boolean,
): (OpenedUnits & { readonly kept: boolean }) | null {
  const must = stays.filter((value) => value === null).length;
  let least: OpenedUnits | null = null;
  for (let most = must; most <= stays.length; most++) {
    const found = leastOpening(stays, readings, counts, aim, most);
    if (found === null) continue;
    if (within(found.low, found.high)) return { ...found, kept: true };
    if (least === null || found.high - found.low < least.high - least.low) least = found;
  }
  return least === null ? null : { ...least, kept: false };
}

/** The least spread that comes of opening so many units at most. */
function leastOpening(
  stays: readonly (number | null)[],
  readings: Readings,
  counts: readonly number[],
  aim: number,
  most: number,
): OpenedUnits | null {
  // One column for each unit behind those of the drawer: what it has, for it alone.
  const own = counts.length;
  const pairs = sortedPairs(
    readings.map((row, index) => [...row, ...stays.map((value, unit) => (unit === index ? value : null))]),
  );
  const matching = new Matching(stays.length, [...counts, ...stays.map(() => 1)]);
  const closed = new Set<number>();
  const out = furthestOut(stays, aim);
  let best: OpenedUnits | null = null;
  let first = 0;
  for (const { row, column, value: high } of pairs) {
    matching.add(row, column);
    if (column === own + row) closed.add(row);
    while (matching.complete() && stays.length - closed.size <= most) {
      const { row: firstRow, column: firstColumn, value: low } = pairs[first]!;
      // What can stay closed does: no other unit needs its shim.
      const choice = matching.choice().map((chosen, unit) => (closed.has(unit) ? null : chosen));
      const found = { choice, low, high, opened: stays.length - closed.size };
      if (best === null || before(found, best, out, aim)) best = found;
      matching.remove(firstRow, firstColumn);
      if (firstColumn === own + firstRow) closed.delete(firstRow);
      first++;
    }
  }
  return best;
}

/** How far each lies from the middle one of those that may stay. */
function furthestOut(stays: readonly (number | null)[], aim: number): readonly number[] {
  const middle = medianOf(stays.filter((value) => value !== null)) ?? aim;
  return stays.map((value) => (value === null ? 0 : Math.abs(value - middle)));
}

/** Figures that differ by less are alike: they are worked out, not read. */
const alike = 1e-9;

function before(found: OpenedUnits, best: OpenedUnits, out: readonly number[], aim: number): boolean {
  const spread = found.high - found.low - (best.high - best.low);
  if (Math.abs(spread) > alike * Math.abs(best.high)) return spread < 0;
  if (found.opened !== best.opened) return found.opened < best.opened;
  const sum = ({ choice }: OpenedUnits) =>
    choice.reduce<number>((all, chosen, unit) => all + (chosen === null ? 0 : out[unit]!), 0);
  const off = ({ low, high }: OpenedUnits) => Math.abs((low + high) / 2 - aim);
  return sum(found) - sum(best) > alike || (Math.abs(sum(found) - sum(best)) <= alike && off(found) < off(best));
}

function better(found: MatchedSet, best: MatchedSet, aim: number): boolean {
  const [spread, least] = [found.high - found.low, best.high - best.low];
  const off = ({ low, high }: MatchedSet) => Math.abs((low + high) / 2 - aim);
  return spread < least || (spread === least && off(found) < off(best));
}

function sortedPairs(readings: Readings): Pair[] {
  return readings
    .flatMap((row, index) =>
      row.flatMap((value, column) =>
        value === null || !Number.isFinite(value) ? [] : [{ row: index, column, value }],
      ),
    )
    .sort((a, b) => a.value - b.value);
}

/** A matching of as many rows as can be, kept while pairs come and go (Kuhn’s augmenting ways). */
class Matching {
  readonly #columns: Set<number>[];
  readonly #given: Set<number>[];
  readonly #chosen: (number | null)[];
  readonly #counts: readonly number[];
  #free: number;

  constructor(rows: number, counts: readonly number[]) {
    this.#columns = Array.from({ length: rows }, () => new Set());
    this.#given = counts.map(() => new Set());
    this.#chosen = Array.from({ length: rows }, () => null);
    this.#counts = counts;
    this.#free = rows;
  }

  add(row: number, column: number) {
    this.#columns[row]!.add(column);
    if (this.#free > 0) this.#grow();
  }

  remove(row: number, column: number) {
    this.#columns[row]!.delete(column);
    if (this.#chosen[row] !== column) return;
    this.#given[column]!.delete(row);
    this.#chosen[row] = null;
    this.#free++;
    this.#grow();
  }

  complete(): boolean {
    return this.#free === 0 && this.#chosen.length > 0;
  }

  choice(): number[] {
    return this.#chosen.map((column) => column!);
  }

  #grow() {
    const seen = new Set<number>();
    for (const [row, chosen] of this.#chosen.entries()) if (chosen === null && this.#place(row, seen)) this.#free--;
  }

  /** Finds a column for a row, moving others on where that helps. A column that led nowhere is not tried again. */
  #place(row: number, seen: Set<number>): boolean {
    for (const column of this.#columns[row]!) {
      if (seen.has(column)) continue;
      seen.add(column);
      const given = this.#given[column]!;
      if (given.size < this.#counts[column]!) return this.#take(row, column);
      for (const other of given) {
        if (!this.#place(other, seen)) continue;
        given.delete(other);
        return this.#take(row, column);
      }
    }
    return false;
  }

  #take(row: number, column: number): true {
    this.#given[column]!.add(row);
    this.#chosen[row] = column;
    return true;
  }
}
