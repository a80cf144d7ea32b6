/** The outline: what a file declares. */
import type { Range } from '../model/source.ts';
import type { DeclaredSymbol } from '../semantics/symbols.ts';
import type { Snapshot } from './snapshot.ts';

/** One line of an outline. */
export interface OutlineEntry {
  /** The word that declares it, where it has no name. */
  readonly name: string;
  /** The author's own words, where they are not its name. */
  readonly detail: string | null;
  /** As `DeclaredSymbol.kind` calls it. */
  readonly kind: string;
  readonly range: Range;
  readonly nameRange: Range;
  readonly children: readonly OutlineEntry[];
}

/** Most entries of one file: more make no outline, and the editor slow. */
const mostEntries = 5000;

/** The outline of a file, in its order. */
export function outlineOf({ result }: Snapshot, file: string): OutlineEntry[] {
  let left = mostEntries;
  const of = (list: readonly DeclaredSymbol[]): OutlineEntry[] => {
    const made: OutlineEntry[] = [];
    for (const { name, title, kind, range, nameRange, children } of list) {
      if (left-- <= 0) break;
      made.push({
        name: name === '' ? kind : name,
        detail: title === '' || title === name ? null : title,
        kind,
        range,
        nameRange,
        children: of(children),
      });
    }
    return made;
  };
  return of(result.symbols.get(file) ?? []);
}
