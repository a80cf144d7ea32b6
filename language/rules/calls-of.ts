import type { Source } from '../model/source.ts';

/** A place as a key. */
export function placeKey({ file, range: { start } }: Source): string {
  return `${file}:${start.line}:${start.character}`;
}

/** The same in one list each, in the order in which the first of each came. */
export function grouped<T>(items: readonly T[], keyOf: (item: T) => string): T[][] {
  const groups = new Map<string, T[]>();
  for (const item of items) {
    const key = keyOf(item);
    const known = groups.get(key);
    if (known === undefined) groups.set(key, [item]);
    else known.push(item);
  }
  return [...groups.values()];
}

/**
 * From where problems in a sequence were come to, as related places, each once. All of them: the procedures that call
 * the sequence count the finding as theirs by these.
 */
export function callsOf(problems: readonly { readonly call?: Source }[]) {
  const calls = problems.flatMap(({ call }) => (call === undefined ? [] : [call]));
  return grouped(calls, placeKey).map(([source]) => ({ message: 'The sequence is called here.', source: source! }));
}
