import { capital, type Said, say } from '../say/say.ts';
import type { ProblemCode } from './problem-code.ts';
import type { Row } from './statement.ts';
import { tables } from './tables.generated.ts';

/** A text, as it is now. Its lines and nodes ask it for their words. */
export interface Source {
  text: string;
}

/** A word, number or sign that means nothing, or goes beyond what is read. */
export interface Slip {
  readonly line: Line;
  /** Counted from zero, in UTF-16 code units. */
  readonly column: number;
  readonly length: number;
  readonly code: ProblemCode;
  readonly message: Said;
}

/** A line of a text. Its tokens know their place in the line only: a line moves with all that was made of it. */
export interface Line {
  readonly source: Source;
  /** Of its first character in the text. */
  offset: number;
  /** Counted from zero. */
  number: number;
  tokens: Token[];
  /** It has a slip or a cut, or a text without its closing quote. */
  isFlawed: boolean;
  slips: readonly Slip[];
  /** What is longer than what is read, and texts that are still to be written. */
  cuts: readonly Slip[];
  /** The row that begins here, once it is known. */
  row: Row | null;
}

/** The number of each kind of token. 0 is none, 1 the end of the text. */
export const typeOf: ReadonlyMap<string, number> = new Map(
  [...tables.terminals, ...tables.keywords].map((name, index) => [name, index + 2]),
);
export const noType = 0;
export const endType = 1;

/** A word, number or sign. Nothing in it changes; only its line may move. */
export class Token {
  /** Its kind: the name of a terminal, or the keyword itself. */
  readonly name: string;
  readonly type: number;
  /** What is read of it. */
  readonly image: string;
  readonly line: Line;
  readonly column: number;
  /** One of several lines ends on another than it begins on. */
  readonly endLine: Line;
  readonly endColumn: number;

  constructor(name: string, type: number, image: string, line: Line, column: number, endLine: Line, endColumn: number) {
    this.name = name;
    this.type = type;
    this.image = image;
    this.line = line;
    this.column = column;
    this.endLine = endLine;
    this.endColumn = endColumn;
  }

  /** A text without its closing quote. */
  get isOpen(): boolean {
    return this.name === 'STRING' && (this.image.length < 2 || !this.image.endsWith('"'));
  }

  get offset(): number {
    return this.line.offset + this.column;
  }

  get end(): number {
    return this.endLine.offset + this.endColumn;
  }

  /** It is in no text: the token pass has put it in. */
  get isMade(): boolean {
    return this.endColumn === this.column && this.endLine === this.line;
  }

  /** The same place, read as another word. */
  readAs(name: string, image: string): Token {
    return new Token(name, typeOf.get(name)!, image, this.line, this.column, this.endLine, this.endColumn);
  }
}

/** The token's word where it is a keyword; null for names, numbers and texts. */
export function keyword(token: Token | undefined): string | null {
  return token !== undefined && token.name === token.image ? token.image : null;
}

/** A token that is in no text: it has the place where `near` ends (or begins), and no length. */
export function madeToken(name: string, near: Token, before = false): Token {
  const line = before ? near.line : near.endLine;
  const column = before ? near.column : near.endColumn;
  const image = name === 'EOL' || name === '{' || name === '}' ? '' : name;
  return new Token(name, typeOf.get(name)!, image, line, column, line, column);
}

/** What is wrong with a token, as a sentence. */
export function slipOf({ line, column, image }: Token, code: ProblemCode, message: Said): Slip {
  const sentence = say`${capital(message)}.`;
  return { line, column, length: Math.max(image.length, 1), code, message: sentence };
}

const nowhere: Line = {
  source: { text: '' },
  offset: 0,
  number: 0,
  tokens: [],
  isFlawed: false,
  slips: [],
  cuts: [],
  row: null,
};
/** Behind the last token of a text. */
export const endOfText = new Token('EOF', endType, '', nowhere, 0, nowhere, 0);
