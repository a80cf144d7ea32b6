/** Names that can be used at a place: those of the family and the shop that the procedure is for, else all. */
import type { Declared } from '../declared.ts';
import type { Place } from './place.ts';

/** The declarations whose names are meant at a place. */
export interface Scope {
  readonly family: string | null;
  readonly shop: string | null;
  readonly procedure: string | null;
}

/** Reads `for FAMILY at SHOP` off the heads around the place; a procedure `like` another takes that one's. */
export function scopeAt(
  place: Place,
  all: readonly Declared[],
  headOf: (declared: Declared) => readonly string[],
): Scope {
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
      const inherited = procedure === null ? null : procedureScope(procedure, all, headOf, 0);
      return { family: inherited?.family ?? null, shop: after(head, 'at') ?? inherited?.shop ?? null, procedure };
    }
    case 'procedure': {
      const inherited = name === null ? null : procedureScope(name, all, headOf, 0);
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
  all: readonly Declared[],
  headOf: (declared: Declared) => readonly string[],
  depth: number,
): Scope | null {
  const declared = all.find(({ symbol }) => symbol.kind === 'procedure' && symbol.name === name);
  if (declared === undefined || depth > longestLike) return null;
  const head = headOf(declared);
  const like = after(head, 'like');
  const inherited = like === null ? null : procedureScope(like, all, headOf, depth + 1);
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

/** Names of some kinds, from the family, shop or procedure of the scope where it is known. */
export function inScope(all: readonly Declared[], scope: Scope, kinds: readonly string[]): Declared[] {
  return all.filter(({ symbol, within }) => {
    if (!kinds.includes(symbol.kind)) return false;
    const of =
      within.kind === 'family'
        ? scope.family
        : within.kind === 'shop'
          ? scope.shop
          : within.kind === 'procedure'
            ? scope.procedure
            : null;
    return symbol === within || of === null || of === within.name;
  });
}
