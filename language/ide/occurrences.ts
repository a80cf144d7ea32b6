/**
 * Every place where a name is written that means the same thing. References say which use leads to which declaration:
 * here the words at both ends are tied together, and so is what must keep one name though no reference says so.
 */
import { contains } from '../model/ranges.ts';
import type { Position, Source } from '../model/source.ts';
import type { Reference } from '../semantics/context.ts';
import type { DeclaredSymbol } from '../semantics/symbols.ts';
import type { Token } from '../syntax/token.ts';
import type { Snapshot } from './snapshot.ts';
import { rangeOfToken, scannedFile, tokensAt, tokensIn } from './words.ts';

/** One place where a name is written. */
export interface Occurrence {
  readonly source: Source;
  /** As it is written there: in quotes, or with the position of a copy behind it. */
  readonly written: string;
  readonly isDeclaration: boolean;
}

/** Occurrences of one name, in the order of files and text. */
export interface Name {
  readonly name: string;
  /** The words that declare it: `part`, `spec`, … */
  readonly kinds: readonly string[];
  /** What was pointed at. */
  readonly here: Occurrence;
  readonly occurrences: readonly Occurrence[];
}

/** A name without the quotes that may be around a label. */
export function bare(written: string): string {
  return written.replace(/^"|"$/gu, '');
}

/**
 * The name at a place with all its occurrences, in the file or in the workspace; null where there is none that is
 * declared. Those in one file are found without a look at declarations that have no part in it.
 */
export function nameAt(
  snapshot: Snapshot,
  file: string,
  position: Position,
  within: 'file' | 'workspace',
): Name | null {
  const tokens = tokensAt(scannedFile(snapshot, file), position);
  if (tokens.length === 0) return null;
  const { result } = snapshot;
  const files = within === 'file' ? [file] : [...result.symbols.keys()];
  const ties = new Ties(snapshot, within === 'file' ? result.linksIn(file) : result.references, files);
  return tokens.map((token) => ties.nameOf(file, token)).find((name) => name !== null) ?? null;
}

/** A spec and the test that is judged by it may share a name, which results of jobs then have. */
const groupOf = (kind: string) =>
  kind === 'spec' || kind === 'test' ? 'reading' : kind === 'assembly' ? 'part' : kind;

/** They have no name of their own: a step has its words, a joint the name of its part. */
const nameless: ReadonlySet<string> = new Set(['step', 'joint', 'adjuster', 'only']);

/** Words that are tied together, by their places. */
class Ties {
  private readonly snapshot: Snapshot;
  private readonly parents = new Map<string, string>();
  private readonly words = new Map<string, { readonly file: string; readonly token: Token }>();
  private readonly kinds = new Map<string, string>();
  /** The words that are declared in each declaration, by group and name; by the place of its own name. */
  private readonly declared = new Map<string, Map<string, string>>();

  constructor(snapshot: Snapshot, references: readonly Reference[], files: readonly string[]) {
    this.snapshot = snapshot;
    for (const file of files)
      for (const symbol of snapshot.result.symbols.get(file) ?? []) {
        const names = new Map<string, string>();
        this.declared.set(placeOf({ file, range: symbol.nameRange }), names);
        this.gather(file, symbol, names);
      }
    for (const reference of references) this.refer(reference, files);
    this.tieProcedures(references);
  }

  /** The name that a word is tied to; null: it is not declared. */
  nameOf(file: string, token: Token): Name | null {
    const key = keyOf(file, token);
    if (!this.words.has(key)) return null;
    const root = this.root(key);
    const all = [...this.words.keys()].filter((other) => this.root(other) === root);
    const kinds = all.flatMap((one) => this.kinds.get(one) ?? []);
    const declared = all.find((one) => this.kinds.has(one));
    if (declared === undefined) return null;
    const occurrences = all.map((one): Occurrence => {
      const word = this.words.get(one)!;
      return {
        source: { file: word.file, range: rangeOfToken(word.token) },
        written: word.token.image,
        isDeclaration: this.kinds.has(one),
      };
    });
    return {
      name: bare(this.words.get(declared)!.token.image),
      kinds: [...new Set(kinds)],
      here: occurrences[all.indexOf(key)]!,
      occurrences: occurrences.sort((one, other) => compare(one.source, other.source)),
    };
  }

  private gather(file: string, symbol: DeclaredSymbol, within: Map<string, string>) {
    for (const word of symbol.declares) {
      const { name, kind } = word;
      const token = nameless.has(kind) ? undefined : this.declaring(file, word);
      if (token === undefined) continue;
      const key = this.add(file, token);
      this.kinds.set(key, kind);
      const place = `${groupOf(kind)} ${name}`;
      const known = within.get(place);
      if (known === undefined) within.set(place, key);
      else this.tie(known, key);
    }
    for (const child of symbol.children) this.gather(file, child, within);
  }

  /** The word that declares a name; of a face the one behind the dot of its part. */
  private declaring(file: string, { name, kind, nameRange }: DeclaredSymbol['declares'][number]): Token | undefined {
    const tokens = tokensIn(scannedFile(this.snapshot, file), nameRange);
    return kind === 'face' ? tokens[2] : tokens.find(({ image }) => bare(image) === name);
  }

  private refer({ use, target, what }: Reference, files: readonly string[]) {
    const uses = tokensIn(scannedFile(this.snapshot, use.file), use.range).slice(0, 3);
    const targets = tokensIn(scannedFile(this.snapshot, target.file), target.range);
    for (const token of uses) {
      const there = targets.find(({ image }) => isNamed(bare(token.image), bare(image)));
      if (there === undefined || token.image === '.') continue;
      const declared = this.add(target.file, there);
      this.tie(this.add(use.file, token), declared);
      // What has no symbol here: a parameter of a sequence, and what is declared in another file than those that are looked at.
      if (what === 'parameter' || !files.includes(target.file)) this.kinds.set(declared, what);
    }
  }

  /** A procedure has the names of what it is like, and so has what it is for; and it tests what its family says. */
  private tieProcedures(references: readonly Reference[]) {
    const bases = this.heads(references, 'procedure');
    const families = this.heads(references, 'family');
    const shops = this.heads(references, 'shop');
    const proofs = this.proofs(references);
    for (const [key, names] of this.declared) {
      const chain = [key];
      for (let base = bases.get(key); base !== undefined && !chain.includes(base); base = bases.get(base))
        chain.push(base);
      for (const base of chain.slice(1)) this.tieSame(names, this.declared.get(base));
      for (const heads of [families, shops]) {
        const [own, ...others] = chain.flatMap((one) => heads.get(one) ?? []);
        if (own === undefined) continue;
        for (const other of others) this.tieSame(this.declared.get(own), this.declared.get(other));
        this.tieSame(names, proofs.get(own));
      }
    }
  }

  /** What the head of each procedure names, by the place of its own name. */
  private heads(references: readonly Reference[], what: string): Map<string, string> {
    return new Map(
      references.flatMap(({ use, target, what: kind }): [string, string][] => {
        const within = kind === what ? this.declarationAround(use, 'procedure') : undefined;
        return within === undefined ? [] : [[within, placeOf(target)]];
      }),
    );
  }

  /** The words for the tests of each family, by the place of its name. */
  private proofs(references: readonly Reference[]): Map<string, Map<string, string>> {
    const proofs = new Map<string, Map<string, string>>();
    for (const { use, name, what } of references) {
      const family = what === 'test' ? this.declarationAround(use, 'family') : undefined;
      if (family === undefined) continue;
      const known = proofs.get(family) ?? new Map<string, string>();
      proofs.set(family, known.set(`reading ${name}`, placeOf(use)));
    }
    return proofs;
  }

  private declarationAround({ file, range }: Source, kind: string): string | undefined {
    const symbols = this.snapshot.result.symbols.get(file) ?? [];
    const around = symbols.find((symbol) => symbol.kind === kind && contains(symbol.range, range.start));
    return around === undefined ? undefined : placeOf({ file, range: around.nameRange });
  }

  private tieSame(one: ReadonlyMap<string, string> | undefined, other: ReadonlyMap<string, string> | undefined) {
    for (const [name, key] of one ?? []) {
      const same = other?.get(name);
      if (same !== undefined) this.tie(key, same);
    }
  }

  private add(file: string, token: Token): string {
    const key = keyOf(file, token);
    if (!this.words.has(key)) {
      this.words.set(key, { file, token });
      this.parents.set(key, key);
    }
    return key;
  }

  private root(key: string): string {
    let at = key;
    for (let next = this.parents.get(at)!; next !== at; next = this.parents.get(at)!) at = next;
    this.parents.set(key, at);
    return at;
  }

  private tie(one: string, other: string) {
    if (this.parents.has(one) && this.parents.has(other)) this.parents.set(this.root(one), this.root(other));
  }
}

function keyOf(file: string, token: Token): string {
  return placeOf({ file, range: rangeOfToken(token) });
}

function placeOf({ file, range: { start } }: Source): string {
  return `${file}:${start.line}:${start.character}`;
}

/** Whether a word is a name, or that of one of its copies: `plunger-3`. */
function isNamed(written: string, name: string): boolean {
  return written === name || (written.startsWith(`${name}-`) && /^\d+$/u.test(written.slice(name.length + 1)));
}

function compare(one: Source, other: Source): number {
  if (one.file !== other.file) return one.file < other.file ? -1 : 1;
  const [a, b] = [one.range.start, other.range.start];
  return a.line - b.line || a.character - b.character;
}
