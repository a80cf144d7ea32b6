import { restsOn } from '../../analysis/relations.ts';
import type { Column, Scene } from './column.ts';

/** What is said under a drawing: which end is up as it is built, and what the broken line is. */
export function notesOf(
  { facts, entries, carrier, shapes }: Omit<Scene, 'tieWords' | 'density'>,
  columns: readonly Column[],
): string[] {
  const { words } = facts;
  const main = entries[0]?.stack;
  const mine = entries.filter((one) => one.stack === main && !one.isBelow && one.part.name !== carrier);
  const below = entries.filter(({ isBelow }) => isBelow).reverse();
  const first = (some: typeof entries) =>
    facts.inText((some.find(({ part }) => restsOn(part).includes(carrier)) ?? some[0]!).part.name);
  const nozzle = mine.find(({ part }) => shapes.get(part.name) === 'nozzle');
  return [
    ...(nozzle === undefined ? [] : [words.builtUp(facts.inText(nozzle.part.name))]),
    ...(mine.length > 0 && below.length > 0 ? [words.twoEnds(first(mine), first(below))] : []),
    ...(columns.some(({ hasDuct }) => hasDuct) ? [words.duct] : []),
  ];
}
