/** Who calls a sequence, and what it calls; what a procedure is like, and what is like it. */
import { contains } from '../model/ranges.ts';
import type { Position, Range, Source } from '../model/source.ts';
import { type Said, term } from '../say/say.ts';
import type { DeclaredSymbol } from '../semantics/symbols.ts';
import { type Declared, declaredWithin } from './declared.ts';
import { namedAt } from './named-at.ts';
import type { Snapshot } from './snapshot.ts';

/** A sequence or a procedure. */
export interface Callable {
  readonly name: string;
  readonly kind: string;
  /** What it is. */
  readonly detail: Said;
  readonly file: string;
  readonly range: Range;
  readonly nameRange: Range;
}

/** One that calls, or is called, with the places where. */
export interface Call {
  readonly callable: Callable;
  readonly places: readonly Range[];
}

const kinds = new Set(['sequence', 'procedure']);

/** The sequence or procedure whose name is at a place. */
export function callablesAt({ result }: Snapshot, file: string, position: Position): Callable[] {
  return (namedAt(result, file, position)?.targets ?? []).flatMap(({ declared }) =>
    declared !== null && kinds.has(declared.symbol.kind) ? [callable(declared)] : [],
  );
}

/** What calls one, or is like it. */
export function callersOf(snapshot: Snapshot, of: Callable): Call[] {
  return calls(
    snapshot,
    ({ target }) => isAt(target, of),
    ({ use }) => blockAround(snapshot, use),
    ({ use }) => use.range,
  );
}

/** What one calls, or is like. */
export function callsFrom(snapshot: Snapshot, of: Callable): Call[] {
  return calls(
    snapshot,
    ({ use }) => use.file === of.file && contains(of.range, use.range.start) && isInnermost(snapshot, use, of),
    ({ target }) => declaredAt(snapshot, target),
    ({ use }) => use.range,
  );
}

type Link = Snapshot['result']['references'][number];

function calls(
  { result }: Snapshot,
  counts: (link: Link) => boolean,
  otherEnd: (link: Link) => Callable | null,
  placeOf: (link: Link) => Range,
): Call[] {
  const found = new Map<string, { callable: Callable; places: Range[] }>();
  for (const link of result.references) {
    if (!kinds.has(link.what) || !counts(link)) continue;
    const other = otherEnd(link);
    if (other === null) continue;
    const key = `${other.file}:${other.nameRange.start.line}:${other.nameRange.start.character}`;
    const known = found.get(key) ?? { callable: other, places: [] };
    const place = placeOf(link);
    // A shared sequence is read once for each procedure that calls it.
    if (!known.places.some((one) => JSON.stringify(one) === JSON.stringify(place))) known.places.push(place);
    found.set(key, known);
  }
  return [...found.values()];
}

function callable({ uri, symbol }: Pick<Declared, 'uri' | 'symbol'>): Callable {
  return {
    name: symbol.name,
    kind: symbol.kind,
    detail: term(symbol.kind),
    file: uri,
    range: symbol.range,
    nameRange: symbol.nameRange,
  };
}

function isAt({ file, range }: Source, { file: of, nameRange }: Callable): boolean {
  return file === of && contains(nameRange, range.start);
}

function declaredAt({ result }: Snapshot, { file, range }: Source): Callable | null {
  const all = (result.symbols.get(file) ?? []).flatMap((symbol) => declaredWithin(file, symbol));
  const found = all.find(({ symbol }) => kinds.has(symbol.kind) && contains(symbol.nameRange, range.start));
  return found === undefined ? null : callable(found);
}

/** The sequence, procedure or job that a place is in, the innermost of them. */
function blockAround({ result }: Snapshot, { file, range }: Source): Callable | null {
  const inside = (symbols: readonly DeclaredSymbol[]): DeclaredSymbol | null => {
    const around = symbols.find((symbol) => contains(symbol.range, range.start));
    if (around === undefined) return null;
    const inner = inside(around.children.filter(({ kind }) => kind === 'sequence'));
    return inner ?? around;
  };
  const symbol = inside(result.symbols.get(file) ?? []);
  return symbol === null ? null : callable({ uri: file, symbol });
}

function isInnermost(snapshot: Snapshot, use: Source, of: Callable): boolean {
  const around = blockAround(snapshot, use);
  return around !== null && around.nameRange.start.line === of.nameRange.start.line;
}
