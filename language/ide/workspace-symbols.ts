/** What is declared anywhere, by a few letters of its name or title. */
import type { Source } from '../model/source.ts';
import type { Snapshot } from './snapshot.ts';

export interface WorkspaceSymbol {
  readonly name: string;
  /** As `DeclaredSymbol.kind` calls it. */
  readonly kind: string;
  /** What it is declared in; null at the margin of a file. */
  readonly container: string | null;
  readonly source: Source;
}

/** Most that are given: more letters find what is wanted. */
const most = 200;

/** What has the letters of a query in its name or title in their order; all of it without one. Serials are the names of units. */
export function workspaceSymbols({ result }: Snapshot, query: string): WorkspaceSymbol[] {
  const letters = [...query.toLowerCase().replace(/\s/gu, '')];
  const matches = (text: string) => {
    const lower = text.toLowerCase();
    let at = 0;
    return letters.every((letter) => {
      at = lower.indexOf(letter, at) + 1;
      return at > 0;
    });
  };
  const found: WorkspaceSymbol[] = [];
  for (const [uri, names] of result.searched)
    for (const { name, kind, container, range } of names) {
      if (found.length >= most) return found;
      if (matches(name)) found.push({ name, kind, container, source: { file: uri, range } });
    }
  return found;
}
