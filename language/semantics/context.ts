import type { AstNode } from 'langium';
import type { Range, Source } from '../model/source.ts';
import type { File, Procedure } from '../syntax/generated/ast.ts';
import { nearest } from '../syntax/nearest.ts';
import { rangeOf } from '../syntax/place.ts';

/** What led to text that is written elsewhere: the call of a sequence, a `like`. */
export interface From {
  readonly message: string;
  readonly source: Source;
}

/** What went wrong while names were resolved; rules put it into words. */
export type ResolveProblem =
  | {
      readonly kind: 'syntax';
      readonly message: string;
      readonly source: Source;
      readonly replacement?: string | undefined;
      readonly from?: From | undefined;
      /** The word that the replacement is a guess for; without it there is no doubt. */
      readonly written?: string;
    }
  | {
      readonly kind: 'unknown-name';
      readonly name: string;
      readonly what: string;
      readonly near: readonly string[];
      readonly source: Source;
      readonly from?: From | undefined;
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
export interface Link {
  readonly use: Source;
  readonly target: Source;
  readonly name: string;
  /** What it names: part, spec, station, … */
  readonly what: string;
}

/** A declaration that could not be made plain data, because something threw: a defect of the tool. */
export interface Defect {
  /** What threw, as the subject of a sentence. */
  readonly what: string;
  readonly source: Source;
  readonly error: unknown;
}

/** Collects problems and links while syntax trees are made into plain data. */
export class Context {
  readonly problems: ResolveProblem[] = [];
  readonly links: Link[] = [];
  readonly defects: Defect[] = [];
  private readonly files = new Map<File, string>();
  private readonly procedures = new Map<string, { readonly node: Procedure; readonly range: Range }[]>();
  private reader: Procedure | null = null;
  /** What is expanded now: problems are reported where they are written, and say what led there. */
  private from: From | undefined;

  register(ast: File, uri: string) {
    this.files.set(ast, uri);
    const procedures = ast.declarations.filter((node) => node.$type === 'Procedure') as Procedure[];
    this.procedures.set(
      uri,
      procedures.map((node) => ({ node, range: this.source(node).range })),
    );
  }

  /** Reads names as the procedure sees them, also in text that it takes over from another. */
  readAs<T>(procedure: Procedure, read: () => T): T {
    this.reader = procedure;
    try {
      return read();
    } finally {
      this.reader = null;
    }
  }

  /** Does something for a declaration; what it throws costs that declaration alone. */
  attempt<T>(what: string, node: AstNode, work: () => T): T | null {
    try {
      return work();
    } catch (error) {
      this.defects.push({ what, source: this.source(node, 'name'), error });
      return null;
    }
  }

  /** Expands, for a call or a `like`, what is written elsewhere. */
  writtenOut<T>(from: From, work: () => T): T {
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
    return { file: this.fileOf(node), range: rangeOf(node, property, index) };
  }

  private fileOf(node: AstNode): string {
    let root: AstNode = node;
    while (root.$container !== undefined) root = root.$container;
    return this.files.get(root as File) ?? '';
  }

  /** A slip that no rule of its own names. `written`: the replacement is a guess at what this word means. */
  syntax(message: string, source: Source, replacement?: string, written?: string) {
    const guess = written === undefined ? {} : { written };
    this.problems.push({ kind: 'syntax', message, source, replacement, ...guess, from: this.from });
  }

  /** Ties a use to its declaration. A name in a procedure's own text leads where that procedure sees it. */
  link(use: Source, target: Source, name: string, what: string) {
    if (!this.isForeign(use)) this.links.push({ use, target, name, what });
  }

  /** It is in the text of another procedure, which is `like`: there the name may mean something else. */
  private isForeign(use: Source): boolean {
    if (this.reader === null) return false;
    const writer = this.procedures.get(use.file)?.find(({ range }) => holds(range, use.range));
    return writer !== undefined && writer.node !== this.reader;
  }

  unknown(name: string, what: string, candidates: Iterable<string>, source: Source) {
    this.problems.push({ kind: 'unknown-name', name, what, near: nearest(name, candidates), source, from: this.from });
  }

  /** Looks a name up among declared things, links it where it is written, or reports it there. */
  find<T extends { readonly name: string; readonly source: Source }>(
    name: string,
    what: string,
    among: readonly T[],
    use: Source,
  ): T | null {
    const found = among.find((item) => item.name === name);
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

function holds(outer: Range, inner: Range): boolean {
  const isBefore = (a: Range['start'], b: Range['start']) =>
    a.line < b.line || (a.line === b.line && a.character <= b.character);
  return isBefore(outer.start, inner.start) && isBefore(inner.end, outer.end);
}
