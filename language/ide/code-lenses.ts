/** A few words above a declaration: print it; how often a sequence is called, and a family or a shop used. */
import type { Range, Source } from '../model/source.ts';
import { type Said, say } from '../say/say.ts';
import { referencesAt } from './references.ts';
import type { Snapshot } from './snapshot.ts';

export type CodeLens =
  | { readonly kind: 'print'; readonly range: Range }
  | { readonly kind: 'uses'; readonly range: Range; readonly uses: readonly Source[] };

export const printTitle: Said = say`Print`;

/** The words above a sequence that is called so often. */
export function usesTitle(count: number): Said {
  return count === 0 ? say`Not called` : count === 1 ? say`Called once` : say`Called ${count} times`;
}

/** The lenses of a file; uses are counted when one is looked at (`usesAt`). */
export function codeLensesOf(
  { result }: Snapshot,
  file: string,
): { readonly kind: CodeLens['kind']; readonly range: Range }[] {
  return (result.symbols.get(file) ?? []).flatMap(({ kind, nameRange, children }) => {
    const own = kind === 'procedure' || kind === 'job' ? [{ kind: 'print' as const, range: nameRange }] : [];
    const sequences = [
      ...(kind === 'sequence' ? [{ nameRange }] : []),
      ...children.filter((child) => child.kind === 'sequence'),
    ];
    return [...own, ...sequences.map((one) => ({ kind: 'uses' as const, range: one.nameRange }))];
  });
}

/** Where the sequence at a place is called. */
export function usesAt(snapshot: Snapshot, file: string, range: Range): Source[] {
  return referencesAt(snapshot, file, range.start, false);
}
