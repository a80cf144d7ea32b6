import { isFor } from '../analysis/held.ts';
import type { Words } from '../i18n/index.ts';
import { limitWords } from '../i18n/limit-words.ts';
import type { Procedure, StepOf } from '../model/procedure.ts';
import { testOf } from '../model/reading-id.ts';
import { nameWords } from '../model/titles.ts';
import { decimalsOf, decimalValue, rounded } from '../quantities/decimal.ts';
import { asDifference, between, compare, compareDifferences, kindOfUnit, sub, window } from '../quantities/index.ts';
import type { Difference, Quantity } from '../quantities/types.ts';
import { insideOf } from './inside.ts';
import type { LimitVerdict, Spread, Stand } from './judged.ts';
import { type Problem, problem } from './problem.ts';
import { unitsWords } from './say.ts';

/** The limit of a spread is written as values, and means differences. */
function compareSpread(spread: Difference, end: Quantity) {
  return compareDifferences(spread, asDifference(end));
}

/** In which unit the limit of a spread is shown: that of temperatures in its own, since 5 °C apart are no 41 °F. */
export function ownUnit(spread: Difference | null): Difference | null {
  return spread === null || kindOfUnit(spread.unit) === 'temperature' ? null : spread;
}

/**
 * How far the units of each part number lie apart, where the family is proven so. Where a new spring has still to settle,
 * as they will lie then: so the shims of the set are advised, and so the set will run.
 */
export function spreadsOf(
  procedure: Procedure,
  units: readonly LimitVerdict[],
  stands: readonly Stand[],
): { spreads: Spread[]; problems: Problem[] } {
  const spreads: Spread[] = [];
  const problems: Problem[] = [];
  for (const { name, id } of comparedReadings(procedure, units)) {
    const title = nameWords(procedure, id);
    const numbers = [...new Set(units.map(({ unit }) => unit.number))];
    for (const number of numbers) {
      const read = units.flatMap(({ unit, outcomes }) => {
        const reading = outcomes.find(({ asked }) => asked.name === id)?.reading ?? null;
        if (unit.number !== number || reading === null) return [];
        const settling = stands.find((stand) => stand.reading === reading)?.settling ?? null;
        return [
          { unit, reading, value: reading.value, settled: settling === null ? null : sub(reading.value, settling) },
        ];
      });
      if (read.length < 2) continue;
      const step = procedure.stages
        .flatMap(({ steps }) => steps)
        .findLast(
          (one): one is StepOf<'across'> => one.verb === 'across' && one.gate.test === name && isFor(one, number),
        );
      const limit = step?.spread ?? null;
      if (limit === null) {
        problems.push(
          problem('not-proven', read.at(-1)!.reading.source, (w) => w.certificate.missing.noSpread({ name: title })),
        );
        continue;
      }
      const of = read.map(({ unit }) => unit);
      const settles = read.some(({ settled }) => settled !== null);
      const asRead = settles ? spreadOf(read.map(({ value }) => value)) : null;
      const spread = spreadOf(read.map(({ value, settled }) => settled ?? value));
      const inside = spread === null ? 'other kind' : insideOf(window(limit), spread, compareSpread);
      const shown = (w: Words) => ({
        name: title,
        units: unitsWords(w, of),
        limit: limitWords(w, limit, ownUnit(spread)),
      });
      if (inside === 'other kind' || inside === 'open' || spread === null)
        problems.push(
          problem('not-proven', read.at(-1)!.reading.source, (w) => w.certificate.missing.spreadKind(shown(w))),
        );
      else if (inside === 'no')
        problems.push(
          problem('spread-too-wide', furthestOut(read).reading.source, (w) =>
            w.certificate.missing[settles ? 'spreadSettled' : 'spread']({ ...shown(w), spread: w.quantity(spread) }),
          ),
        );
      if (spread !== null)
        spreads.push({ name: id, units: of, spread, asRead, limit, source: step?.sourceText ?? null });
    }
  }
  return { spreads, problems };
}

/** What is compared across the set: of a test with points and places each of its readings. */
function comparedReadings({ family }: Procedure, units: readonly LimitVerdict[]) {
  return family.provenAcrossSet.flatMap(({ name }) => {
    const ids = units.flatMap(({ outcomes }) => outcomes.map(({ asked }) => asked.name));
    return [...new Set(ids)].filter((id) => testOf(id) === name).map((id) => ({ name, id }));
  });
}

/**
 * From the least to the most, exact, unless they are read in two units: then up to the last digit that was read. Null:
 * they measure different kinds.
 */
export function spreadOf(values: readonly Quantity[]): Difference | null {
  const most = values.reduce((a, b) => (compare(b, a) === 1 ? b : a));
  const least = values.reduce((a, b) => (compare(b, a) === -1 ? b : a));
  const spread = between(most, least);
  if (spread === null || values.every(({ unit }) => unit === spread.unit)) return spread;
  const digits = Math.max(...values.map(({ number }) => decimalsOf(number)));
  return { ...spread, number: rounded(decimalValue(spread.number), digits, 'up') };
}

/** The one that is furthest from the middle of the others: opening it brings the most. */
export function furthestOut<T extends { readonly value: Quantity }>(read: readonly T[]): T {
  const sorted = [...read].sort((a, b) => compare(a.value, b.value) ?? 0);
  const [low, high] = [sorted[0]!, sorted.at(-1)!];
  const middle = sorted[Math.floor(sorted.length / 2)]!;
  const [below, above] = [between(middle.value, low.value), between(high.value, middle.value)];
  return below !== null && above !== null && compareDifferences(below, above) === 1 ? low : high;
}
