import type { CheckResult, DeclarationIn } from '../db/workspace.ts';
import { contains } from '../model/ranges.ts';
import type { Position } from '../model/source.ts';
import type { DeclaredSymbol } from '../semantics/symbols.ts';

/** A declared name and the file that declares it. */
export interface Declared {
  readonly uri: string;
  readonly symbol: DeclaredSymbol;
  /** The declaration at the margin that it is in. */
  readonly within: DeclaredSymbol;
}

/** Every declared name of the workspace, flat, in the order of the files. */
export function allDeclared(result: CheckResult): Declared[] {
  return [...result.symbols.keys()].flatMap((uri) => declaredIn(result, uri));
}

/** Outlines of the files that have a declaration which is wanted: others are not parsed for it. */
export function* outlinesWith(
  { declarations, symbols }: CheckResult,
  isWanted: (declaration: DeclarationIn) => boolean,
): Generator<readonly [uri: string, symbols: readonly DeclaredSymbol[]]> {
  const seen = new Set<string>();
  for (const one of declarations) {
    if (seen.has(one.uri) || !isWanted(one)) continue;
    seen.add(one.uri);
    yield [one.uri, symbols.get(one.uri) ?? []];
  }
}

const inSequence: readonly string[] = ['step', 'only', 'test'];
/** Kinds of names that there may be in what there are thousands of. Others may hold any. */
const held: Readonly<Record<string, readonly string[]>> = {
  sequence: inSequence,
  procedure: [...inSequence, 'spec', 'number', 'stage', 'repair', 'sequence'],
  job: ['unit'],
};

/** Whether names of some of the kinds may be declared in a declaration, or by it. */
export function mayDeclare(kind: string, kinds: readonly string[]): boolean {
  const inIt = held[kind];
  return kinds.includes(kind) || inIt === undefined || inIt.some((one) => kinds.includes(one));
}

/** Every declared name of a file, flat, in order. */
function declaredIn({ symbols }: CheckResult, uri: string): Declared[] {
  return (symbols.get(uri) ?? []).flatMap((symbol) => declaredWithin(uri, symbol));
}

/** The names that are declared at a place, in order. */
export function declaredAt({ symbols }: CheckResult, uri: string, at: Position): Declared[] {
  const found: Declared[] = [];
  const look = (symbol: DeclaredSymbol, within: DeclaredSymbol) => {
    if (!contains(symbol.range, at)) return;
    for (const named of symbol.declares)
      if (contains(named.nameRange, at)) found.push({ uri, symbol: { ...symbol, ...named }, within });
    for (const child of symbol.children) look(child, within);
  };
  for (const symbol of symbols.get(uri) ?? []) look(symbol, symbol);
  return found;
}

/** The names of a declaration at the margin: its own, and all in it. */
export function declaredWithin(uri: string, declaration: DeclaredSymbol): Declared[] {
  const all: Declared[] = [];
  const walk = (symbol: DeclaredSymbol) => {
    for (const named of symbol.declares) all.push({ uri, symbol: { ...symbol, ...named }, within: declaration });
    for (const child of symbol.children) walk(child);
  };
  walk(declaration);
  return all;
}
