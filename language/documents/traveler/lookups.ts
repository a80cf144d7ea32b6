import type { Lookup } from './model.ts';

/** What is looked up for one part number, and in which unit. */
interface Made {
  readonly pairs: Lookup['pairs'];
  readonly unit: string;
}

/**
 * Tables for part numbers, one for all that have the same; the numbers are before its title, unless it is for all of
 * them. A number for which nothing can be worked out has none.
 */
export function lookupsOf<T extends Made>(
  cases: readonly { readonly number: string; readonly made: T | null }[],
  headsOf: (made: T) => Omit<Lookup, 'pairs'>,
): Lookup[] {
  const tables = new Map<string, { numbers: string[]; made: T }>();
  for (const { number, made } of cases) {
    if (made === null) continue;
    const key = JSON.stringify(made);
    const known = tables.get(key);
    if (known === undefined) tables.set(key, { numbers: [number], made });
    else known.numbers.push(number);
  }
  return [...tables.values()].map(({ numbers, made }) => {
    const heads = headsOf(made);
    const whose = numbers.length === cases.length ? '' : `${numbers.join(', ')}: `;
    return { ...heads, title: `${whose}${heads.title}`, pairs: made.pairs };
  });
}
