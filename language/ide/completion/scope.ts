/** Names that can be used at a place: those of the family and the shop that the procedure is for, else all. */
import type { CheckResult, DeclarationIn } from '../../db/workspace.ts';
import { type Declared, declaredWithin, mayDeclare, outlinesWith } from '../declared.ts';
import type { Place } from './place.ts';

/** The declarations whose names are meant at a place. */
export interface Scope {
  readonly family: string | null;
  readonly shop: string | null;
  readonly procedure: string | null;
}

/** Reads `for FAMILY at SHOP` off the heads around the place; a procedure `like` another takes that one's. */
export function scopeAt(place: Place, result: CheckResult, headOf: (declared: Declared) => readonly string[]): Scope {
  const [outer] = place.blocks;
  const head = outer?.head ?? place.before;
  const name = head[1] ?? null;
  switch (head[0]) {
    case 'family':
      return { family: name, shop: null, procedure: null };
    case 'shop':
      return { family: null, shop: name, procedure: null };
    case 'job': {
      const procedure = after(head, 'of');
      const inherited = procedure === null ? null : procedureScope(procedure, result, headOf, 0);
      return { family: inherited?.family ?? null, shop: after(head, 'at') ?? inherited?.shop ?? null, procedure };
    }
    case 'procedure': {
      const inherited = name === null ? null : procedureScope(name, result, headOf, 0);
      return {
        family: after(head, 'for') ?? inherited?.family ?? null,
        shop: after(head, 'at') ?? inherited?.shop ?? null,
        procedure: name,
      };
    }
    default:
      return { family: null, shop: null, procedure: null };
  }
}

/** A chain of `like` is followed a few steps: one that bites its tail has an end. */
const longestLike = 8;

function procedureScope(
  name: string,
  result: CheckResult,
  headOf: (declared: Declared) => readonly string[],
  depth: number,
): Scope | null {
  const declared = depth > longestLike ? null : procedureNamed(name, result);
  if (declared === null) return null;
  const head = headOf(declared);
  const like = after(head, 'like');
  const inherited = like === null ? null : procedureScope(like, result, headOf, depth + 1);
  return {
    family: after(head, 'for') ?? inherited?.family ?? null,
    shop: after(head, 'at') ?? inherited?.shop ?? null,
    procedure: name,
  };
}

function after(head: readonly string[], word: string): string | null {
  const at = head.indexOf(word, 2);
  const name = at < 0 ? undefined : head[at + 1];
  return name === undefined || name === '"' ? null : name;
}

function procedureNamed(name: string, result: CheckResult): Declared | null {
  for (const [uri, all] of outlinesWith(result, (one) => one.kind === 'procedure' && one.name === name)) {
    const symbol = all.find((one) => one.kind === 'procedure' && one.name === name);
    if (symbol !== undefined) return { uri, symbol, within: symbol };
  }
  return null;
}

/** Names of some kinds, from the family, shop or procedure of the scope where it is known. Others are not looked into. */
export function inScope(result: CheckResult, scope: Scope, kinds: readonly string[]): Declared[] {
  const isOutside = ({ kind, name }: Pick<Declared['symbol'], 'kind' | 'name'>) => {
    const of = kind === 'family' || kind === 'shop' || kind === 'procedure' ? scope[kind] : null;
    return of !== null && of !== name;
  };
  const isWanted = (one: DeclarationIn) => (isOutside(one) ? kinds.includes(one.kind) : mayDeclare(one.kind, kinds));
  return [...outlinesWith(result, isWanted)].flatMap(([uri, all]) =>
    all.flatMap((symbol) =>
      isOutside(symbol)
        ? kinds.includes(symbol.kind)
          ? [{ uri, symbol, within: symbol }]
          : []
        : declaredWithin(uri, symbol).filter((one) => kinds.includes(one.symbol.kind)),
    ),
  );
}
