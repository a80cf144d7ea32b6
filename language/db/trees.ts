import type { AstNode } from 'langium';
import type { Position } from '../model/source.ts';
import type { Anchor } from '../semantics/context.ts';
import { type Declared, declarationId } from '../semantics/declaration-id.ts';
import { type StepMemo, unquoted } from '../semantics/lower-steps.ts';
import { Memo } from '../semantics/memo.ts';
import type * as ast from '../syntax/generated/ast.ts';
import { type Parsed, parse, type SyntaxProblem } from '../syntax/parse.ts';
import { rangeOf } from '../syntax/place.ts';
import { hiddenSigns, textProblem } from '../syntax/text-problem.ts';

/** A file's syntax tree, and what the parser reported about it. */
export interface Tree {
  readonly ast: ast.File;
  readonly problems: readonly SyntaxProblem[];
}

interface ReadTree extends Tree {
  /** For the parse after an edit, which takes what is the same out of it; null: there is nothing to take. */
  readonly parsed: Parsed | null;
}

/** A declaration in a syntax tree. */
export interface DeclarationNode extends Anchor {
  readonly kind: Declared;
  readonly name: string;
  readonly node: ast.Declaration;
}

interface Entry extends ReadTree {
  readonly text: string;
  nodes: Map<string, DeclarationNode> | null;
  /** What the statements of its procedures were made into, by id: as long as there are nodes that can be the same. */
  readonly memos: Map<string, StepMemo>;
}

/** Most syntax trees that are kept: those of open files and of what everybody reads. Others are parsed again when they are needed. */
const mostKept = 16;

/**
 * The syntax trees of files. A tree is a function of its file's text, so that it can be dropped and made again: what
 * depends on it depends on the text.
 */
export class Trees {
  /** The ones used last come last. */
  private readonly trees = new Map<string, Entry>();
  private readonly anchors = new WeakMap<AstNode, Anchor>();

  /** A tree that was made elsewhere, and is kept. */
  private readonly given = new Map<string, Tree>();

  give(uri: string, tree: Tree) {
    this.given.set(uri, tree);
  }

  tree(uri: string, text: string): Tree {
    return this.entry(uri, text);
  }

  /** What a file declares, by id, in order. */
  nodes(uri: string, text: string): ReadonlyMap<string, DeclarationNode> {
    const entry = this.entry(uri, text);
    if (entry.nodes === null) {
      entry.nodes = declarationsOf(uri, entry.ast);
      for (const anchor of entry.nodes.values()) this.anchors.set(anchor.node, anchor);
      for (const id of entry.memos.keys()) if (!entry.nodes.has(id)) entry.memos.delete(id);
    }
    return entry.nodes;
  }

  /** What the statements of a procedure were made into the last time. */
  memoOf(uri: string, text: string, id: string): StepMemo {
    const { memos } = this.entry(uri, text);
    const memo = memos.get(id) ?? new Memo();
    memos.set(id, memo);
    return memo;
  }

  anchorOf(declaration: AstNode): Anchor {
    return this.anchors.get(declaration)!;
  }

  drop(uri: string) {
    this.trees.delete(uri);
  }

  /** Drops the trees that were not used lately. */
  trim() {
    for (const uri of this.trees.keys()) {
      if (this.trees.size <= mostKept) return;
      this.trees.delete(uri);
    }
  }

  private entry(uri: string, text: string): Entry {
    const known = this.trees.get(uri);
    const memos = known?.memos ?? new Map<string, StepMemo>();
    const entry =
      known?.text === text
        ? known
        : { parsed: null, ...(this.given.get(uri) ?? read(text, known?.parsed ?? null)), text, nodes: null, memos };
    this.trees.delete(uri);
    this.trees.set(uri, entry);
    return entry;
  }
}

function read(text: string, before: Parsed | null): ReadTree {
  const problem = textProblem(text);
  if (problem !== null)
    return { ast: { $type: 'File', declarations: [] } as unknown as ast.File, problems: [problem], parsed: null };
  const parsed = parse(text, before);
  const { ast: file, problems } = parsed;
  // What cannot be seen is named as such, not as a word without a meaning.
  const hidden = hiddenSigns(text);
  const seen = problems.filter(({ range }) => !hidden.some((sign) => samePlace(sign.range.start, range.start)));
  return { ast: file, problems: [...seen, ...hidden], parsed };
}

function samePlace(one: Position, other: Position): boolean {
  return one.line === other.line && one.character === other.character;
}

function declarationsOf(uri: string, file: ast.File): Map<string, DeclarationNode> {
  const ordinals = new Map<string, number>();
  return new Map(
    file.declarations.map((node) => {
      const kind = node.$type;
      const name = nameOf(node);
      const ordinal = ordinals.get(`${kind} ${name}`) ?? 0;
      ordinals.set(`${kind} ${name}`, ordinal + 1);
      const id = declarationId(uri, kind, name, ordinal);
      return [id, { id, kind, name, node, line: rangeOf(node).start.line }];
    }),
  );
}

/** A line that begins with no word of the language has no name. */
function nameOf(node: ast.Declaration): string {
  switch (node.$type) {
    case 'Unread':
      return '';
    case 'Job':
      return unquoted(String(node.name));
    default:
      return String(node.name);
  }
}
