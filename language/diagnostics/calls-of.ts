import type { Source } from '../model/source.ts';
import type { ExpandedFrom } from '../semantics/context.ts';

/** A place as a key. */
export function placeKey({ file, range: { start } }: Source): string {
  return `${file}:${start.line}:${start.character}`;
}

/** Items with the same key in one list each, in the order of the first of each. */
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
 * The places from which problems were reached, as related places, each once. All of them: they make the finding count
 * for the procedures that call a sequence or take a step over.
 */
export function collectCalls(problems: readonly { readonly from?: ExpandedFrom | undefined }[]): ExpandedFrom[] {
  const from = problems.flatMap((problem) => problem.from ?? []);
  return grouped(from, ({ source }) => placeKey(source)).map(([first]) => first!);
}
