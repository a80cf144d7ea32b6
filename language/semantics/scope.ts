import type { Family } from '../model/family.ts';
import type { Shop } from '../model/shop.ts';
import type { NameUse } from '../model/source.ts';
import type * as ast from '../syntax/generated/ast.ts';
import type { Declared } from './declaration-id.ts';
import type { Signature } from './signature.ts';

/**
 * What a declaration looks up in the workspace. Each lookup is by name, so that whoever answers it can record what
 * was asked, found or not. The first declaration of a name is the one that is found.
 */
export interface Scope {
  shop(name: string): Shop | null;
  family(name: string): Family | null;
  /** A procedure's syntax tree, for one that is `like` it. */
  procedure(name: string): ast.Procedure | null;
  sequence(name: string): ast.Sequence | null;
  /** What a job may say of a procedure; null where there is none, or it cannot be lowered. */
  signature(name: string): Signature | null;
  isDeclared(kind: Declared, name: string): boolean;
  /** The names most like a written one, among those of a kind and some more. */
  nearest(written: string, kind: Declared, more?: readonly string[]): string[];
  /** Whether any procedure has a part number of this name: a shared sequence may name those of any that call it. */
  isPartNumber(name: string): boolean;
  /** Whether more procedures are like this one's base, before it, than are checked. */
  isOneTooMany(procedure: ast.Procedure): boolean;
  /** The stocks of all shops. */
  stocks(): readonly NameUse[];
  /** What is specified, tested, looked at or read in the procedures of a family. */
  testsFor(family: string): Tests;
}

/** Looked up one at a time: of many procedures the first has nearly all that is looked up. */
export interface Tests {
  readonly isEmpty: boolean;
  find(name: string): NameUse | null;
  names(): string[];
}

/** The sequences that a procedure can call: its own, and those of the workspace. */
export class Sequences {
  private readonly own: ReadonlyMap<string, ast.Sequence>;
  private readonly scope: Scope;

  constructor(own: ReadonlyMap<string, ast.Sequence>, scope: Scope) {
    this.own = own;
    this.scope = scope;
  }

  get(name: string): ast.Sequence | undefined {
    return this.own.get(name) ?? this.scope.sequence(name) ?? undefined;
  }

  /** Among the names of sequences and some words. */
  nearest(written: string, words: readonly string[]): string[] {
    return this.scope.nearest(written, 'Sequence', [...words, ...this.own.keys()]);
  }
}
