/** What is declared anywhere, by a few letters of its name or title. */
import type { Source } from '../model/source.ts';
import type { DeclaredSymbol } from '../semantics/symbols.ts';
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

/** Steps are no names, and the rest is found by what it is in. */
const left = new Set(['step', 'only', 'joint', 'adjuster']);

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
  for (const [uri, symbols] of result.symbols) {
    const walk = (symbol: DeclaredSymbol, container: string | null) => {
      if (found.length >= most) return;
      const name = symbol.title === '' ? symbol.name : `${symbol.name} ${symbol.title}`;
      if (!left.has(symbol.kind) && matches(name))
        found.push({ name, kind: symbol.kind, container, source: { file: uri, range: symbol.nameRange } });
      for (const child of symbol.children) walk(child, symbol.name);
    };
    for (const symbol of symbols) walk(symbol, null);
  }
  return found;
}
