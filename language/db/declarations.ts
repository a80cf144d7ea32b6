import { type AstNode, isAstNode } from 'langium';
import { declarationId, kindOfId } from '../semantics/declaration-id.ts';
import { mostLike } from '../semantics/like-chain.ts';
import { unquoted } from '../semantics/lower-steps.ts';
import type * as ast from '../syntax/generated/ast.ts';
import { placeOf, rangeOf, textOf } from '../syntax/place.ts';
import type { DeclarationNode, Tree } from './trees.ts';

/** What other files can know of a declaration: nothing of what is inside its braces, but for part numbers. */
export interface Declaration {
  readonly id: string;
  readonly name: string;
  /** Of a procedure. */
  readonly numbers: readonly string[];
  readonly like: string | null;
  readonly family: string | null;
  readonly revision: string | null;
}

export function declarationOf({ id, name, node }: DeclarationNode): Declaration {
  const bare = bareDeclaration(id, name);
  try {
    return node.$type === 'Procedure' ? { ...bare, ...headOf(node) } : bare;
  } catch {
    // Whatever throws here throws where it is lowered, and is reported there.
    return bare;
  }
}

function bareDeclaration(id: string, name: string): Declaration {
  return { id, name, numbers: [], like: null, family: null, revision: null };
}

/** The jobs of a file. */
export function jobsNamed(uri: string, names: readonly string[]): Declaration[] {
  const [only] = names;
  if (names.length === 1) return [bareDeclaration(declarationId(uri, 'Job', only!, 0), only!)];
  const ordinals = new Map<string, number>();
  return names.map((name) => {
    const ordinal = ordinals.get(name) ?? 0;
    ordinals.set(name, ordinal + 1);
    return bareDeclaration(declarationId(uri, 'Job', name, ordinal), name);
  });
}

function headOf(node: ast.Procedure): Omit<Declaration, 'id' | 'name'> {
  const head = <T extends ast.ProcedureHead>(type: T['$type']) =>
    node.heads.find((one) => one.$type === type) as T | undefined;
  const revision = head<ast.InRevision>('InRevision')?.revision;
  return {
    numbers: node.items.flatMap((item) => (item.$type === 'PartNumber' ? [unquoted(item.name)] : [])),
    like: head<ast.LikeProcedure>('LikeProcedure')?.procedure.name ?? null,
    family: head<ast.ForFamily>('ForFamily')?.family.name ?? null,
    revision: revision === undefined ? null : unquoted(revision),
  };
}

/**
 * All that a declaration's tree depends on: its text, and where it begins in its line. Where the parser had problems in
 * it, or may have given up before it, its surroundings may have changed how it was read: the tree itself is compared.
 * It begins with `mayAllow` where there may be a concession in it.
 */
export function buildFingerprint(
  { node }: DeclarationNode,
  text: string,
  { problems }: Tree,
  digest: (text: string) => string,
): string {
  const { start, end } = rangeOf(node);
  const own = `${start.character} ${textOf(node)}`;
  const near = problems.some(({ range }) => range.start.line >= start.line - 1 && range.start.line <= end.line + 1);
  const gaveUp = problems.length > 20 || (problems.length > 0 && text.length > 50_000);
  const whole = digest(near || gaveUp ? `${own}\0${shapeOf(node)}` : own);
  return own.includes('allow') ? mayAllow + whole : whole;
}

export const mayAllow = 'allow ';

function shapeOf(node: AstNode): string {
  const from = placeOf(node)?.first?.offset ?? 0;
  const shape = (value: unknown): unknown => {
    if (Array.isArray(value)) return value.map(shape);
    if (!isAstNode(value)) return value;
    const place = placeOf(value);
    const [begin, end] = [place?.first?.offset ?? from, place?.last?.end ?? from];
    const own = Object.entries(value).filter(([key]) => !key.startsWith('$'));
    return [value.$type, begin - from, end - from, own.map(([key, one]) => [key, shape(one)])];
  };
  return JSON.stringify(shape(node));
}

/** The declarations of all files, by what they are looked up by. */
export interface Index {
  readonly all: readonly Declaration[];
  /** Ids by kind, in the order of files and of their text. */
  readonly ids: ReadonlyMap<string, readonly string[]>;
  /** Ids by kind and name. */
  readonly named: ReadonlyMap<string, readonly string[]>;
  readonly names: ReadonlyMap<string, readonly string[]>;
  readonly partNumbers: ReadonlySet<string>;
  /** Procedures that are like one which enough others are like already. */
  readonly tooMany: ReadonlySet<string>;
  /** Procedures by every family that they may be for: their own, and those of what they are like. */
  readonly forFamily: ReadonlyMap<string, readonly string[]>;
  /** Procedures that have steps of a procedure, by its id: itself, and those that are like it. */
  readonly withSteps: ReadonlyMap<string, readonly string[]>;
}

export function buildIndex(declarations: readonly Declaration[]): Index {
  const ids = new Map<string, string[]>();
  const named = new Map<string, string[]>();
  const names = new Map<string, string[]>();
  const partNumbers = new Set<string>();
  const likes = new Map<string, number>();
  const tooMany = new Set<string>();
  const forFamily = new Map<string, string[]>();
  const withSteps = new Map<string, string[]>();
  const first = new Map<string, Declaration>();
  for (const one of declarations) {
    const kind = kindOfId(one.id);
    put(ids, kind, one.id);
    put(named, nameKey(kind, one.name), one.id);
    if (named.get(nameKey(kind, one.name))!.length === 1) {
      put(names, kind, one.name);
      if (kind === 'Procedure') first.set(one.name, one);
      const before = likes.get(one.like ?? '') ?? 0;
      if (one.like !== null && before >= mostLike) tooMany.add(one.id);
      likes.set(one.like ?? '', before + 1);
    }
    for (const number of one.numbers) partNumbers.add(number);
  }
  for (const one of first.values()) {
    const chain = new Set([one]);
    for (const { like: base } of chain) if (base !== null && first.has(base)) chain.add(first.get(base)!);
    for (const family of new Set([...chain].flatMap((each) => each.family ?? []))) put(forFamily, family, one.id);
    for (const { id } of chain) put(withSteps, id, one.id);
  }
  return { all: declarations, ids, named, names, partNumbers, tooMany, forFamily, withSteps };
}

export function nameKey(kind: string, name: string): string {
  return `${kind} ${name}`;
}

function put(map: Map<string, string[]>, key: string, value: string) {
  const known = map.get(key);
  if (known === undefined) map.set(key, [value]);
  else known.push(value);
}

const head = /^[ \t]*(shop|family|sequence|procedure)[ \t]+([^\s{"]+)/gmu;

/** Keys of names that a text seems to declare, without parsing it: every declaration is among them, and other lines may be. */
export function mayDeclare(text: string): string[] {
  return [...text.matchAll(head)].map(([, kind, name]) =>
    nameKey(`${kind![0]!.toUpperCase()}${kind!.slice(1)}`, name!),
  );
}
