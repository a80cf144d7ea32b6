import type { AstNode } from 'langium';
import type { Source } from '../model/source.ts';
import { placeOf, textOf } from '../syntax/place.ts';
import type { Anchor, Context, Reference } from './context.ts';

/** A name that a statement looked up, in which list, and where that led; null: it is a node that was found. */
export interface Lookup<List extends string> {
  readonly list: List;
  readonly name: string;
  readonly found: Source | Layout;
}

/** A node, and where all its tokens are in its declaration. */
export interface Layout {
  readonly node: AstNode;
  readonly id: string;
  readonly line: number;
  /** Where it is on several lines: what is between them may change, and the node stay the same. */
  readonly text: string;
}

interface Kept {
  readonly layout: Layout;
  /** What it was made of besides its own text. */
  readonly inputs: readonly unknown[];
  readonly lookups: readonly Lookup<string>[];
  readonly value: unknown;
  readonly references: readonly Reference[];
}

/**
 * What the statements of a procedure were made into the last time. A statement that is the same node at the same place, as the parser
 * keeps it through an edit, is not lowered again if all that it looked up is found where it was. One with a problem
 * always is: what is said of it depends on all names that there are.
 */
export class Memo<List extends string = string> {
  private inputs: readonly unknown[] = [];
  private before = new Map<AstNode, Kept>();
  private now = new Map<AstNode, Kept>();
  private lookups: Lookup<List>[] = [];
  private mayKeep = true;

  /** A procedure is lowered again. @param inputs what all its statements are made of */
  begin(inputs: readonly unknown[]) {
    this.before = sameItems(inputs, this.inputs) ? this.now : new Map();
    this.now = new Map();
    this.inputs = inputs;
  }

  /**
   * What a node was made into before, or is made into now.
   * @param inputs what it is made of besides its own text
   * @param isSame whether a name leads where it did
   */
  recall<T>(
    context: Context,
    node: AstNode,
    inputs: readonly unknown[],
    isSame: (lookup: Lookup<List>) => boolean,
    make: () => T,
  ): T {
    const layout = layoutOf(node, context.anchorAround(node));
    const known = this.before.get(node);
    const isFirst = !this.now.has(node);
    if (
      known !== undefined &&
      isFirst &&
      sameLayout(known.layout, layout) &&
      sameItems(known.inputs, inputs) &&
      known.lookups.every((lookup) => isSame(lookup as Lookup<List>))
    ) {
      context.repeat(known.references);
      this.now.set(node, known);
      return known.value as T;
    }
    const [problems, references] = [context.problems.length, context.references.length];
    this.lookups = [];
    this.mayKeep = isFirst;
    const value = make();
    if (this.mayKeep && context.problems.length === problems)
      this.now.set(node, {
        layout: keptLayout(layout),
        inputs,
        lookups: this.lookups,
        value,
        references: context.references.slice(references),
      });
    return value;
  }

  /** Notes that what is made now looks a name up. */
  note(list: List, name: string, found: Source | Layout) {
    this.lookups.push({ list, name, found });
  }

  /** What is made now depends on more than can be noted. */
  forget() {
    this.mayKeep = false;
  }
}

/** Where a node is in its declaration. */
export function layoutOf(node: AstNode, { id, line }: Anchor): Layout {
  const place = placeOf(node);
  const [first, last] = [place?.first ?? null, place?.last ?? null];
  if (first === null || last === null) return { node, id, line: -1, text: '' };
  return { node, id, line: first.line.number - line, text: first.line === last.endLine ? '' : textOf(node) };
}

export function sameLayout(one: Layout, other: Layout): boolean {
  return one.node === other.node && one.line === other.line && one.id === other.id && one.text === other.text;
}

/** A copy of its text: a piece keeps the whole text of every edit alive. */
export function keptLayout(layout: Layout): Layout {
  return layout.text === '' ? layout : { ...layout, text: ` ${layout.text}`.slice(1) };
}

function sameItems(one: readonly unknown[], other: readonly unknown[]): boolean {
  return one.length === other.length && one.every((item, index) => item === other[index]);
}
