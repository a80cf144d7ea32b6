import type { AstNode } from 'langium';
import type { File } from './generated/ast.ts';
import type { Element, Rule } from './grammar-tables.ts';
import { type Coming, type First, Fork, following, RuleStates, State } from './lookahead.ts';
import { Place } from './place.ts';
import { Statement } from './statement.ts';
import { tables } from './tables.generated.ts';
import { endOfText, endType, noType, type Token, typeOf } from './token.ts';

/*
 * The parser: each rule of the grammar becomes a function that reads it from left to right (recursive descent). It stops at the
 * first error and does not go back; `parse.ts` sets the statement aside. A statement that was read before, in this text or in the one
 * before an edit, and is made of the same tokens, is not read again: its line keeps what it was read as.
 */

/** The first token that fits nowhere, and what would have. */
export interface ParserError {
  readonly token: Token;
  /** The number of its statement, and its own in that. */
  readonly statement: number;
  readonly index: number;
  /** The last token that was read. */
  readonly previous?: Token;
  /** The rule that was being read. */
  readonly rule: string;
  /** The one token that could follow, where there is one. */
  readonly wanted: string | null;
}

/** A node that is being made. */
interface Node extends AstNode {
  $type: string;
  $container?: AstNode;
  readonly $place: Place;
  [property: string]: unknown;
}

const last = new Statement([endOfText]);

class Reader implements Coming {
  private readonly statements: readonly Statement[];
  /** The statement of the next token, its number and its tokens. */
  private statement: Statement;
  number = 0;
  private tokens: readonly Token[];
  /** The next token in its statement, and its type: none after an error, so that nothing is read anymore. */
  index = 0;
  type: number;
  /** The node that is being made; null: a fragment. */
  node: Node | null = null;
  /** The words that are being put together. */
  words = '';
  /** First and last token of what was read last. */
  first: Token | null = null;
  last: Token | null = null;
  error: ParserError | null = null;

  constructor(statements: readonly Statement[]) {
    this.statements = statements;
    this.statement = statements[0] ?? last;
    this.tokens = this.statement.tokens;
    this.type = this.tokens[0]!.type;
  }

  take(): Token {
    const token = this.tokens[this.index++]!;
    if (this.index === this.tokens.length) this.goTo(this.number + 1);
    else this.type = this.tokens[this.index]!.type;
    return token;
  }

  ahead(count: number): number {
    let at = this.index + count;
    let { number, tokens } = this;
    while (at >= tokens.length) {
      const next = this.statements[++number];
      if (next === undefined) return endType;
      at -= tokens.length;
      tokens = next.tokens;
    }
    return tokens[at]!.type;
  }

  fail(rule: string, wanted: string | null) {
    if (this.error !== null) return;
    const { tokens, index, number } = this;
    const previous = tokens[index - 1] ?? this.statements[number - 1]?.tokens.at(-1) ?? endOfText;
    this.error = { token: tokens[index]!, statement: number, index, previous, rule, wanted };
    this.type = noType;
  }

  /** The error of a text that goes on behind what was read. */
  get left(): ParserError | null {
    const { error, type, tokens, index, number } = this;
    if (error !== null || type === endType) return error;
    return { token: tokens[index]!, statement: number, index, rule: '', wanted: null };
  }

  /** Notes the first and the last token since a place that are in the text; false: there is none. */
  bound(number: number, index: number): boolean {
    let [at, place] = [number, index];
    for (let token: Token | undefined; ; place++) {
      if (at === this.number && place === this.index) return false;
      token = this.statements[at]!.tokens[place];
      if (token === undefined) [at, place] = [at + 1, -1];
      else if (!token.isMade) {
        this.first = token;
        break;
      }
    }
    [at, place] = [this.number, this.index - 1];
    for (let token: Token | undefined; ; place--) {
      token = this.statements[at]?.tokens[place];
      if (token === undefined) {
        at--;
        place = this.statements[at]!.tokens.length;
      } else if (!token.isMade) {
        this.last = token;
        return true;
      }
    }
  }

  /** Goes behind what begins here, if the rule has read the same statements before; null: it has not. */
  recall(rule: unknown): Node | null {
    const { known } = this.statement;
    if (known === null || known.rule !== rule) return null;
    const { node, statements } = known;
    if (statements === null) {
      this.index = this.tokens.length - 1;
      this.type = eol;
      return node as Node;
    }
    for (let at = 1; at < statements.length; at++)
      if (this.statements[this.number + at] !== statements[at]) return null;
    this.goTo(this.number + statements.length);
    return node as Node;
  }

  /**
   * Keeps what a rule has made of the statements from one on, if it has read them to their end, and would not go on behind it
   * whatever followed.
   */
  keep(rule: RuleReader, node: Node, from: number) {
    const leavesEnd = this.number === from && this.type === eol;
    if (!leavesEnd && (this.index > 0 || !rule.takesEnd)) return;
    const statements = leavesEnd ? null : this.statements.slice(from, this.number);
    this.statements[from]!.known = { rule, node, statements };
  }

  private goTo(number: number) {
    this.number = number;
    this.statement = this.statements[number] ?? last;
    this.tokens = this.statement.tokens;
    this.index = 0;
    this.type = this.tokens[0]!.type;
  }
}

/** Reads the statements of a file. */
export function read(statements: readonly Statement[]): { file: File; error: ParserError | null } {
  const reader = new Reader(statements);
  const file = rules.get(tables.entry)!.node(reader) ?? { $type: tables.entry, declarations: [] };
  return { file: file as unknown as File, error: reader.left };
}

/** Whole, and with all that its type asks for; null: a fragment of a broken line, or nothing at all. */
function finished(node: Node, reader: Reader, number: number, index: number): Node | null {
  if (!reader.bound(number, index)) return null;
  node.$place.first = reader.first;
  node.$place.last = reader.last;
  const { lists, flags, needed } = tables.types[node.$type]!;
  // A list that has grown keeps room for more: a copy has none.
  for (const name of lists) node[name] = (node[name] as unknown[] | undefined)?.slice() ?? [];
  for (const name of flags) node[name] ??= false;
  for (const name of needed) {
    const value = node[name];
    if (value === undefined || (Array.isArray(value) && value.length === 0)) return null;
  }
  return node;
}

/** A text in quotes is the author's own: it stays as written, and nothing in it is an escape. */
function wordsOf({ name, image }: Token): string {
  return name === 'STRING' ? image.slice(1, image.length > 1 && image.endsWith('"') ? -1 : undefined) : image;
}

// ---- the rules of the grammar as functions ---------------------------------------------------------------

type Read = (reader: Reader) => void;

/** A piece of a rule: what reads it, and where that begins. */
interface Piece {
  readonly read: Read;
  readonly start: State;
}

/** The property that a piece of a rule is for. */
interface Property {
  readonly operator: '=' | '+=' | '?=';
  readonly name: string;
}

const eol = typeOf.get('EOL')!;

class RuleReader {
  readonly states = new RuleStates();
  private readonly name: string;
  private readonly rule: Rule;
  private known: First | null = null;
  private ends: boolean | null = null;
  /** Reads a fragment: a part of the node that is being made. */
  part: Read = () => {};

  constructor(name: string, rule: Rule) {
    this.name = name;
    this.rule = rule;
  }

  get kind(): Rule['kind'] {
    return this.rule.kind;
  }

  /** What the rule can begin with. */
  get first(): First {
    this.known ??= firstOf(this.rule.element);
    return this.known;
  }

  /** It ends with an EOL. */
  get takesEnd(): boolean {
    this.ends ??= endsWithEol(this.rule.element);
    return this.ends;
  }

  /** Once all rules are there. */
  make() {
    const { read, start } = this.piece(this.rule.element, this.states.end);
    this.part = read;
    this.states.start.ways = [start];
  }

  /** Reads a node; null if nothing whole is read. */
  node(reader: Reader): Node | null {
    const { number, index } = reader;
    if (index === 0) {
      const known = reader.recall(this);
      if (known !== null) return known;
    }
    const outer = reader.node;
    reader.node = { $type: this.rule.type, $place: new Place() };
    this.part(reader);
    const node = reader.node === null ? null : finished(reader.node, reader, number, index);
    reader.node = outer;
    if (node !== null && index === 0 && reader.type !== noType) reader.keep(this, node, number);
    return node;
  }

  /** Reads words, and notes where they are; null if there are none. */
  words(reader: Reader): string | null {
    const { number, index, words: outer } = reader;
    reader.words = '';
    this.part(reader);
    const { words } = reader;
    reader.words = outer;
    return reader.bound(number, index) ? words : null;
  }

  private piece(element: Element, next: State, property: Property | null = null): Piece {
    switch (element[0]) {
      case 'token':
        return this.tokens([element[1]], element[1], next, property);
      case 'any':
        return this.tokens(element.slice(1), null, next, property);
      case 'call':
        return this.call(rules.get(element[1])!, next, property);
      case 'type':
        return { read: (reader) => this.retype(reader, element[1]), start: next };
      case 'assign':
        return this.piece(element[3], next, { operator: element[1], name: element[2] });
      case 'sequence':
        return this.sequence(element.slice(1) as Element[], next, property);
      case 'choice':
        return this.choice(element.slice(1) as Element[], next, property);
      case 'optional': {
        const { read, start } = this.piece(element[1], next, property);
        const [state, fork] = forkInto(element[1], start, next);
        return {
          start: state,
          read: (reader) => {
            if (fork.choose(reader) === 0) read(reader);
          },
        };
      }
      case 'many':
      case 'some':
        return this.loop(element[1], element[0] === 'some', next, property);
    }
  }

  private tokens(names: readonly string[], wanted: string | null, next: State, property: Property | null): Piece {
    const start = new State();
    const types = new Uint8Array(typeOf.size + 2);
    for (const name of names) types[typeOf.get(name)!] = 1;
    start.types = types;
    start.next = next;
    const isWords = this.rule.kind === 'words';
    const read: Read = (reader) => {
      if (types[reader.type] !== 1) {
        reader.fail(this.name, wanted);
        return;
      }
      const token = reader.take();
      if (token.isMade) return;
      if (property !== null) {
        put(reader, property, wordsOf(token));
        reader.node?.$place.add(property.name, token, token);
      } else if (isWords) reader.words += wordsOf(token);
    };
    return { read, start };
  }

  private call(rule: RuleReader, next: State, property: Property | null): Piece {
    const [start, behind] = [new State(), new State()];
    start.callee = rule.states;
    start.next = behind;
    behind.ways = [next];
    rule.states.callers.push(behind);
    const isWords = this.rule.kind === 'words';
    const read: Read = (reader) => {
      if (rule.kind === 'fragment') rule.part(reader);
      else if (rule.kind === 'words') {
        const words = rule.words(reader);
        if (words === null) return;
        if (property !== null) {
          put(reader, property, words);
          reader.node?.$place.add(property.name, reader.first!, reader.last!);
        } else if (isWords) reader.words += words;
      } else {
        const node = rule.node(reader);
        // Where a rule is one of several others, its node is theirs.
        if (property === null) reader.node = node;
        else if (node !== null && reader.node !== null) {
          node.$container = reader.node;
          put(reader, property, node);
        }
      }
    };
    return { read, start };
  }

  private retype({ node }: Reader, type: string) {
    if (node !== null) node.$type = type;
  }

  private sequence(elements: readonly Element[], next: State, property: Property | null): Piece {
    const reads: Read[] = [];
    let start = next;
    for (const element of elements.toReversed()) {
      const piece = this.piece(element, start, property);
      reads.unshift(piece.read);
      start = piece.start;
    }
    const read: Read = (reader) => {
      for (const one of reads) {
        one(reader);
        if (reader.type === noType) return;
      }
    };
    return { read, start };
  }

  private choice(elements: readonly Element[], next: State, property: Property | null): Piece {
    const pieces = elements.map((element) => this.piece(element, next, property));
    const start = new State();
    start.ways = pieces.map((piece) => piece.start);
    const fork = new Fork(start.ways, () => elements.map(firstOf));
    const read: Read = (reader) => {
      const way = fork.choose(reader);
      if (way < 0) reader.fail(this.name, null);
      else pieces[way]!.read(reader);
    };
    return { read, start };
  }

  private loop(element: Element, isNeeded: boolean, next: State, property: Property | null): Piece {
    const again = new State();
    const { read: one, start } = this.piece(element, again, property);
    again.ways = [start, next];
    const fork = new Fork(again.ways, () => [firstOf(element), following(next)]);
    const read: Read = (reader) => {
      let isFirst = isNeeded;
      while (fork.choose(reader) === 0) {
        isFirst = false;
        one(reader);
      }
      if (isFirst) reader.fail(this.name, null);
    };
    return { read, start: isNeeded ? start : again };
  }
}

/** The fork before what may be there or not. */
function forkInto(element: Element, start: State, next: State): [State, Fork] {
  const state = new State();
  state.ways = [start, next];
  return [state, new Fork(state.ways, () => [firstOf(element), following(next)])];
}

function put(reader: Reader, { operator, name }: Property, value: unknown) {
  const { node } = reader;
  if (node === null) return;
  if (operator === '=') node[name] = value;
  else if (operator === '?=') node[name] = true;
  else if (node[name] === undefined) node[name] = [value];
  else (node[name] as unknown[]).push(value);
}

/** A piece of the grammar ends with an EOL in any case. */
function endsWithEol(element: Element): boolean {
  switch (element[0]) {
    case 'token':
      return element[1] === 'EOL';
    case 'call':
      return rules.get(element[1])!.takesEnd;
    case 'assign':
      return endsWithEol(element[3]);
    case 'sequence':
      return endsWithEol(element.at(-1) as Element);
    case 'choice':
      return (element.slice(1) as Element[]).every(endsWithEol);
    default:
      return false;
  }
}

/** What a piece of the grammar can begin with. */
function firstOf(element: Element): First {
  switch (element[0]) {
    case 'token':
    case 'any':
      return { types: new Set(element.slice(1).map((name) => typeOf.get(name as string)!)), isEmpty: false };
    case 'call':
      return rules.get(element[1])!.first;
    case 'type':
      return { types: new Set(), isEmpty: true };
    case 'assign':
      return firstOf(element[3]);
    case 'some':
      return firstOf(element[1]);
    case 'optional':
    case 'many':
      return { ...firstOf(element[1]), isEmpty: true };
    case 'choice': {
      const all = (element.slice(1) as Element[]).map(firstOf);
      return { types: new Set(all.flatMap(({ types }) => [...types])), isEmpty: all.some(({ isEmpty }) => isEmpty) };
    }
    case 'sequence': {
      const types = new Set<number>();
      for (const one of element.slice(1) as Element[]) {
        const first = firstOf(one);
        for (const type of first.types) types.add(type);
        if (!first.isEmpty) return { types, isEmpty: false };
      }
      return { types, isEmpty: true };
    }
  }
}

const rules = new Map(Object.entries(tables.rules).map(([name, rule]) => [name, new RuleReader(name, rule)]));
for (const rule of rules.values()) rule.make();
