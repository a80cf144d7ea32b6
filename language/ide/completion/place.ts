/**
 * The place of a position in a text, from the text alone: completion is requested on half-typed lines, and the
 * parser has set such a line aside. Strings and comments are stepped over; braces are counted.
 */

import { numberPattern, quantityPattern } from '../../quantities/index.ts';
import { continuing } from '../../syntax/keywords.ts';

/** What encloses a position. */
export interface Place {
  /** Head words of the blocks around the position, outermost first: `['procedure', 'stage']`. */
  readonly blocks: readonly Block[];
  /** Words and marks of the statement before the word being typed, strings as `"`. */
  readonly before: readonly string[];
  /** Offset of the first of them, or of what is being typed: where the statement begins. */
  readonly start: number;
  /** The statement that ends on the line above, where the position begins a line: clauses of its may follow here. */
  readonly above: readonly string[];
  /** What is typed of the word at the position. */
  readonly partial: string;
  /** Inside a string or a comment: nothing to complete. */
  readonly quoted: boolean;
}

/** A block that is open at the position. */
export interface Block {
  /** First word of its head. */
  readonly word: string;
  /** All words of its head, strings as `"`. */
  readonly head: readonly string[];
  /** Offset of its brace. */
  readonly start: number;
}

/** A figure with its unit is one word: units are no words of the language. */
const token = new RegExp(
  String.raw`\/\/[^\n\r]*|"[^"\n\r]*"?|[A-Za-zÀ-ʯ][\wÀ-ʯ]*(?:-[\wÀ-ʯ]*)*|${quantityPattern}|${numberPattern}|\r\n|[\n\r]|[^\s]`,
  'gu',
);

/** Words that a line begins with when it goes on from the line above: those of the token pass. */
const goesOn = new Set(continuing);

/** Reads the text up to the offset. Linear in the text before it. */
export function placeAt(text: string, offset: number): Place {
  const blocks: Block[] = [];
  let statement: string[] = [];
  let above: string[] = [];
  let partial = '';
  let start = offset;
  let quoted = false;
  /** A line end was passed: the next word decides whether the statement goes on. */
  let newLine = false;
  token.lastIndex = 0;
  const upTo = text.slice(0, offset);
  for (let match = token.exec(upTo); match !== null; match = token.exec(upTo)) {
    const [word] = match;
    const atEnd = token.lastIndex === upTo.length;
    partial = '';
    if (word.startsWith('//')) {
      quoted = atEnd;
      continue;
    }
    if (word === '\n' || word === '\r' || word === '\r\n') {
      newLine = true;
      continue;
    }
    if (newLine) {
      newLine = false;
      const comma = statement.at(-1) === ',';
      if (!comma && !goesOn.has(word) && word !== '{') {
        above = statement;
        statement = [];
      }
    }
    if (!atEnd) above = [];
    if (statement.length === 0) start = match.index;
    if (word.startsWith('"')) {
      quoted = atEnd && (word.length === 1 || !word.endsWith('"'));
      statement.push('"');
    } else if (word === '{') {
      blocks.push({ word: statement[0] ?? '', head: statement, start: match.index });
      statement = [];
    } else if (word === '}') {
      blocks.pop();
      statement = [];
    } else if (atEnd && /^[A-Za-zÀ-ʯ]/u.test(word)) {
      partial = word;
    } else {
      statement.push(word);
    }
  }
  // An empty line begins a statement, unless a comma keeps the one above it open.
  if (newLine && statement.at(-1) !== ',') {
    above = statement;
    statement = [];
  }
  if (statement.length === 0 && partial === '') start = offset;
  return { blocks, before: statement, start, above: statement.length === 0 ? above : [], partial, quoted };
}
