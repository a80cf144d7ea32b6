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
  /** Null: it had a problem, or depends on more than is noted; what is in it may be the same. */
  readonly lookups: readonly Lookup<string>[] | null;
  readonly value: unknown;
  readonly references: readonly Reference[];
  /** What was kept of the nodes in it. */
  readonly parts: Parts;
}

/** By node; what has parts of its own by its name too. */
type Parts = ReadonlyMap<AstNode | string, Kept>;

const nothing: Parts = new Map();

/** A node that is being made, and the nodes in it. */
interface Frame {
  readonly before: Parts;
  now: Map<AstNode | string, Kept> | null;
  readonly lookups: Lookup<string>[];
  /** What may be kept: it, only what it is in, or neither. */
  keeps: 'all' | 'outer' | 'none';
}

/**
 * What the nodes of a procedure were made into the last time: its stages and repairs, and the statements in them. One that is
 * the same node at the same place, as the parser keeps it through an edit, is not lowered again if all that it looked up is found
 * where it was. One with a problem always is: its message depends on all names that there are.
 */
export class Memo<List extends string = string> {
  private inputs: readonly unknown[] = [];
  private root: Frame = frameOver(nothing);
  /** What is made now. */
  private frame: Frame = this.root;
  private listsBefore: ReadonlyMap<string, readonly unknown[]> = new Map();
  private lists = new Map<string, readonly unknown[]>();

  /** Most procedures are lowered once: what was made of one is kept from the second time on. */
  private isKeeping: boolean | null = null;

  /** A procedure is lowered again. @param inputs what all its nodes are made of */
  begin(inputs: readonly unknown[]) {
    this.root = frameOver(sameItems(inputs, this.inputs) ? (this.root.now ?? nothing) : nothing);
    this.frame = this.root;
    this.isKeeping = this.isKeeping !== null;
    this.inputs = inputs;
    this.listsBefore = this.lists;
    this.lists = new Map();
  }

  /**
   * What a node was made into before, or is made into now.
   * @param inputs what it is made of besides its own text
   * @param isSame whether a name that it looked up leads where it did
   * @param name of what has parts: those of a node that is another now may be the same
   */
  recall<T>(
    context: Context,
    node: AstNode,
    inputs: readonly unknown[],
    make: () => T,
    isSame: (lookup: Lookup<List>) => boolean = never,
    name: string | null = null,
  ): T {
    if (this.isKeeping !== true) return make();
    const { frame } = this;
    const layout = layoutOf(node, context.anchorAround(node));
    const isFirst = frame.now?.has(node) !== true;
    const known = isFirst ? frame.before.get(node) : undefined;
    if (known !== undefined && isStill(known, layout, inputs, isSame as (lookup: Lookup<string>) => boolean)) {
      context.repeat(known.references);
      keep(frame, node, known, name);
      this.depend(frame, known.lookups!);
      return known.value as T;
    }
    const [problems, references] = [context.problems.length, context.references.length];
    const former = known ?? (name === null ? undefined : frame.before.get(name));
    const own = frameOver(former?.parts ?? nothing);
    this.frame = own;
    try {
      const value = make();
      if (context.problems.length > problems) own.keeps = 'none';
      const isKept = own.keeps === 'all';
      const lookups = own.lookups.length > few ? distinct(own.lookups) : own.lookups;
      const made = isKept ? { lookups, value, references: context.references.slice(references) } : unkept;
      if (isFirst) keep(frame, node, { layout: keptLayout(layout), inputs, parts: own.now ?? nothing, ...made }, name);
      if (!isFirst || own.keeps === 'none') frame.keeps = 'none';
      else this.depend(frame, lookups);
      return value;
    } finally {
      this.frame = frame;
    }
  }

  /** What a node depends on, that which it is in depends on too. */
  private depend(frame: Frame, on: readonly Lookup<string>[]) {
    if (frame !== this.root) for (const lookup of on) frame.lookups.push(lookup);
  }

  /** Notes that what is made now looks a name up. */
  note(list: List, name: string, found: Source | Layout) {
    if (this.frame !== this.root) this.frame.lookups.push({ list, name, found });
  }

  /** What is made now depends on more than can be noted. */
  forget() {
    this.frame.keeps = 'none';
  }

  /** The same, but all of that is in what it is part of. */
  forgetPart() {
    if (this.frame.keeps === 'all') this.frame.keeps = 'outer';
  }

  /** The list of a name as it was the last time, if it has the same items. */
  sameList<T>(name: string, list: readonly T[]): readonly T[] {
    const known = this.listsBefore.get(name) as readonly T[] | undefined;
    const same = known !== undefined && sameItems(known, list) ? known : list;
    this.lists.set(name, same);
    return same;
  }
}

const never = () => false;
const unkept = { lookups: null, value: null, references: [] };

function frameOver(before: Parts): Frame {
  return { before, now: null, lookups: [], keeps: 'all' };
}

/** Most lookups that are kept without a look whether they are the same. */
const few = 16;

function distinct(lookups: readonly Lookup<string>[]): Lookup<string>[] {
  return [...new Map(lookups.map((lookup) => [`${lookup.list} ${lookup.name}`, lookup])).values()];
}

function isStill(
  known: Kept,
  layout: Layout,
  inputs: readonly unknown[],
  isSame: (lookup: Lookup<string>) => boolean,
): boolean {
  const { lookups } = known;
  return (
    lookups !== null && sameLayout(known.layout, layout) && sameItems(known.inputs, inputs) && lookups.every(isSame)
  );
}

function keep(frame: Frame, node: AstNode, kept: Kept, name: string | null) {
  frame.now ??= new Map();
  frame.now.set(node, kept);
  if (name !== null) frame.now.set(name, kept);
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

export function sameItems(one: readonly unknown[], other: readonly unknown[]): boolean {
  return one.length === other.length && one.every((item, index) => item === other[index]);
}
