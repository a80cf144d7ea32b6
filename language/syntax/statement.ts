import { mayBeBeyond } from './bounds.ts';
import { blockHeads, declarationHeads, itemHeads, namedItems } from './keywords.ts';
import { type Line, madeToken, type Token } from './token.ts';
import { startOfUnread } from './unread.ts';

const heads = new Set([...declarationHeads, ...itemHeads, ...blockHeads, ...[...namedItems.values()].flat()]);

/** What the parser reads at once: the tokens of a statement, with the EOL that ends it. */
export class Statement {
  readonly tokens: readonly Token[];
  /** It begins with `}`. */
  readonly closes: boolean;
  /** Index of the `{` that it ends with, before its EOL; -1: it has none. */
  readonly brace: number;
  /** What begins here, as it was read before. */
  known: Known | null = null;
  private unread: number | null = null;

  constructor(tokens: readonly Token[]) {
    this.tokens = tokens;
    this.closes = tokens[0]!.name === '}';
    this.brace = tokens.at(-2)?.name === '{' ? tokens.length - 2 : -1;
  }

  /** As a line of a block of steps: index of the first word that is neither a step nor a call, or -1. */
  get startOfUnread(): number {
    this.unread ??= startOfUnread(this.tokens);
    return this.unread;
  }
}

/** The node that a rule has made of some statements, or of one without its EOL: then they are null. */
interface Known {
  readonly rule: unknown;
  readonly node: unknown;
  readonly statements: readonly Statement[] | null;
}

/** A line, with those that go on from it. It stays the same as long as its lines do, and so does its statement. */
export class Row {
  readonly tokens: readonly Token[];
  /** It has no brace or bracket, and no number too long to be read. */
  readonly isFlat: boolean;
  /** It has no brace, and is no head of anything. */
  readonly isOrdinary: boolean;
  /** The one brace that it has, at its end or alone; else how many it has. */
  readonly braces: '{' | '}' | number;
  private readonly lines: readonly Line[];
  private made: Statement | null = null;

  private constructor(lines: readonly Line[]) {
    this.lines = lines;
    this.tokens = lines.length === 1 ? lines[0]!.tokens : lines.flatMap(({ tokens }) => tokens);
    this.isFlat = !this.tokens.some(mayBeBeyond);
    const braces = this.tokens.filter(({ image }) => image === '{' || image === '}');
    const { image } = this.tokens.at(-1)!;
    const isOne = braces.length === 1 && (this.tokens.length === 1 ? image === '}' : image === '{');
    this.braces = isOne ? (image as '{' | '}') : braces.length;
    this.isOrdinary = braces.length === 0 && !heads.has(this.tokens[0]!.image);
  }

  /** The row of the lines from one on to another: the one that they had before, if they are the same. */
  static of(lines: readonly Line[], from: number, to: number): Row {
    const first = lines[from]!;
    const { row } = first;
    const count = to - from;
    let isSame = row?.lines.length === count;
    for (let index = 1; isSame && index < count; index++) isSame = row!.lines[index] === lines[from + index];
    if (!isSame) first.row = new Row(lines.slice(from, to));
    return first.row!;
  }

  /** All of it as one statement. */
  get statement(): Statement {
    this.made ??= new Statement([...this.tokens, madeToken('EOL', this.tokens.at(-1)!)]);
    return this.made;
  }
}
