import type { AstNode } from 'langium';
import type { Source } from '../model/source.ts';
import type { Said } from '../say/say.ts';
import { nearest } from '../syntax/nearest.ts';
import { placeOf, rangeBetween, tokensOf } from '../syntax/place.ts';
import type { CorrectableCode, ProblemCode } from '../syntax/problem-code.ts';
import type { Token } from '../syntax/token.ts';
import { kindOfId } from './declaration-id.ts';
import { firstNamed } from './first-named.ts';

/** What led to text that is written elsewhere: the call of a sequence, a `like`. */
export interface ExpandedFrom {
  readonly message: Said;
  readonly source: Source;
}

/** The text to write instead, where the rule of a problem can put it there. */
type Correction<Code> = Code extends CorrectableCode
  ? [replacement?: string | undefined, written?: string | undefined]
  : [];

/** What went wrong while names were resolved; rules put it into words. */
export type ResolveProblem =
  | {
      readonly kind: 'syntax';
      readonly code: ProblemCode;
      readonly message: Said;
      readonly source: Source;
      readonly replacement?: string | undefined;
      readonly from?: ExpandedFrom | undefined;
      /** The word that the replacement is a guess for; without it there is no doubt. */
      readonly written?: string;
    }
  | {
      readonly kind: 'unknown-name';
      readonly name: string;
      readonly what: string;
      readonly near: readonly string[];
      readonly source: Source;
      readonly from?: ExpandedFrom | undefined;
    }
  | {
      readonly kind: 'duplicate-name';
      readonly name: string;
      readonly what: string;
      readonly first: Source;
      readonly source: Source;
    }
  | { readonly kind: 'hazard-after-step'; readonly step: string | null; readonly source: Source };

/** One use of a name, tied to its declaration. */
export interface Reference {
  readonly use: Source;
  readonly target: Source;
  readonly name: string;
  /** What it names: part, spec, station, … */
  readonly what: string;
}

/** A declaration that could not be made plain data, because something threw: a defect of the tool. */
export interface Defect {
  /** What threw, as the subject of a sentence. */
  readonly what: Said;
  readonly source: Source;
  readonly error: unknown;
}

/** Where a declaration begins: sources in it are counted from there. */
export interface Anchor {
  /** What its sources call their file. */
  readonly id: string;
  /** Line in its syntax tree. */
  readonly line: number;
}

/**
 * Collects problems and links while syntax trees are made into plain data. Sources are relative to the declaration that
 * they are in: what is above it in its file has no part in them.
 */
export class Context {
  readonly problems: ResolveProblem[] = [];
  readonly references: Reference[] = [];
  readonly defects: Defect[] = [];
  private readonly anchorOf: (declaration: AstNode) => Anchor;
  private reader: AstNode | null = null;
  /** What is expanded now: problems are reported where they are written, and say what led there. */
  private from: ExpandedFrom | undefined;
  /** The declaration of the node that was looked at last, and its anchor: the next is in the same, nearly always. */
  private declaration: AstNode | null = null;
  private anchor: Anchor | null = null;
  /** The source that was made last, and what it goes from and to: a name is linked where its object is. */
  private first: Token | null = null;
  private last: Token | null = null;
  private lastSource: Source | null = null;

  /** @param anchorOf of a node at the top of a file */
  constructor(anchorOf: (declaration: AstNode) => Anchor) {
    this.anchorOf = anchorOf;
  }

  /** Reads names as the procedure sees them, also in text that it takes over from another. */
  readAs<T>(procedure: AstNode, read: () => T): T {
    this.reader = procedure;
    try {
      return read();
    } finally {
      this.reader = null;
    }
  }

  /** Does something for a declaration; what it throws costs that declaration alone. */
  attempt<T>(what: Said, node: AstNode, work: () => T): T | null {
    try {
      return work();
    } catch (error) {
      this.defects.push({ what, source: this.source(node, 'name'), error });
      return null;
    }
  }

  /** Expands, for a call or a `like`, what is written elsewhere. */
  expand<T>(from: ExpandedFrom, work: () => T): T {
    const outer = this.from;
    this.from = outer ?? from;
    try {
      return work();
    } finally {
      this.from = outer;
    }
  }

  /** Where a node is; the whole node, or the token of one of its properties. */
  source(node: AstNode, property?: string, index?: number): Source {
    if (property !== undefined) {
      const tokens = tokensOf(node, property, index);
      return this.between(node, tokens?.[0] ?? null, tokens?.[1] ?? null);
    }
    const place = placeOf(node);
    return this.between(node, place?.first ?? null, place?.last ?? null);
  }

  private between(node: AstNode, first: Token | null, last: Token | null): Source {
    if (this.lastSource !== null && first !== null && first === this.first && last === this.last)
      return this.lastSource;
    const { id, line } = this.anchorAround(node);
    const source = { file: id, range: rangeBetween(first, last, line) };
    this.first = first;
    this.last = last;
    this.lastSource = source;
    return source;
  }

  /** The anchor of the declaration that a node is in. */
  anchorAround(node: AstNode): Anchor {
    const declaration = declarationOf(node);
    if (this.anchor === null || declaration !== this.declaration) {
      this.declaration = declaration;
      this.anchor = this.anchorOf(declaration);
    }
    return this.anchor;
  }

  /** What cannot be read, or has no meaning where it is. `written`: the replacement is a guess at what this word means. */
  syntax<Code extends ProblemCode>(code: Code, message: Said, source: Source, ...correction: Correction<Code>) {
    const [replacement, written] = correction;
    const guess = written === undefined ? {} : { written };
    this.problems.push({ kind: 'syntax', code, message, source, replacement, ...guess, from: this.from });
  }

  /** Ties a use to its declaration. A name in a procedure's own text leads where that procedure sees it. */
  link(use: Source, target: Source, name: string, what: string) {
    if (!this.isForeign(use)) this.references.push({ use, target, name, what });
  }

  /** It is in the text of another procedure, which is `like`: there the name may mean something else. */
  private isForeign(use: Source): boolean {
    return this.reader !== null && use.file !== this.anchorOf(this.reader).id && kindOfId(use.file) === 'Procedure';
  }

  unknown(name: string, what: string, candidates: Iterable<string>, source: Source) {
    this.isUnknown(name, what, nearest(name, candidates), source);
  }

  /** @param near the names most like it */
  isUnknown(name: string, what: string, near: readonly string[], source: Source) {
    this.problems.push({ kind: 'unknown-name', name, what, near, source, from: this.from });
  }

  /** Looks a name up among declared things, links it where it is written, or reports it there. */
  find<T extends { readonly name: string; readonly source: Source }>(
    name: string,
    what: string,
    among: readonly T[],
    use: Source,
  ): T | null {
    const found = firstNamed(among, name);
    if (found === undefined) {
      this.unknown(
        name,
        what,
        among.map((item) => item.name),
        use,
      );
      return null;
    }
    this.link(use, found.source, name, what);
    return found;
  }

  /** Takes over the links of text that is the same as before. */
  repeat(references: readonly Reference[]) {
    for (const one of references) this.references.push(one);
  }

  /** Reports the second and later of the same name; gives back the first of each. */
  unique<T extends { readonly name: string; readonly source: Source }>(items: readonly T[], what: string): T[] {
    const first = new Map<string, T>();
    for (const item of items) {
      const earlier = first.get(item.name);
      if (earlier === undefined) first.set(item.name, item);
      else
        this.problems.push({
          kind: 'duplicate-name',
          name: item.name,
          what,
          first: earlier.source,
          source: item.source,
        });
    }
    return [...first.values()];
  }
}

/** The node at the top of a file that a node is in. */
function declarationOf(node: AstNode): AstNode {
  let at = node;
  while (at.$container?.$container !== undefined) at = at.$container;
  return at;
}
