import { type Said, say } from '../say/say.ts';
import type { Row } from './statement.ts';
import type { Token } from './token.ts';

/**
 * How much of a text is read. Nobody writes what is beyond these; the work of reading it grows faster than its length.
 */
export const bounds = {
  /** Signs of a name. */
  name: 100,
  /** Signs of words in quotes. */
  words: 5_000,
  /** Signs of a number with its unit. */
  number: 60,
  /** Words, numbers and signs of a statement, all its lines together. */
  statement: 2_000,
  /** Blocks in one another, with brackets and “then” in a statement. */
  depth: 50,
} as const;

/** The token at which a text goes beyond what is read at all, and why; null: all of it can be read. */
export function beyondBounds(rows: readonly Row[]): { token: Token; message: Said } | null {
  let depth = 0;
  for (const { tokens, isFlat } of rows) {
    if (tokens.length > bounds.statement)
      return {
        token: tokens[0]!,
        message: say`This statement has ${tokens.length} words and symbols; the longest that is read has ${bounds.statement}. Nothing in this file is read until the statement is split into several`,
      };
    if (isFlat) continue;
    let inRow = 0;
    for (const token of tokens) {
      if (token.image === '{') depth++;
      else if (token.image === '}') depth = Math.max(0, depth - 1);
      else if (token.image === '(' || token.image === 'then') inRow++;
      else if (token.image === ')') inRow--;
      if (depth + inRow > bounds.depth)
        return {
          token,
          message: say`This is nested in more than ${bounds.depth} blocks or brackets. Nothing in this file is read until it is nested less deeply`,
        };
      if (isLongNumber(token))
        return {
          token,
          message: say`This number has ${token.image.length} characters; the longest that is read has ${bounds.number}. Nothing in this file is read until it is shorter`,
        };
    }
  }
  return null;
}

function isLongNumber({ name, image }: Token): boolean {
  return image.length > bounds.number && (name === 'QUANTITY' || name === 'NUMBER');
}

/** A token that opens or closes something, or is too long: what `beyondBounds` looks for. */
export function mayBeBeyond(token: Token): boolean {
  return (
    token.image === '{' ||
    token.image === '}' ||
    token.image === '(' ||
    token.image === ')' ||
    token.image === 'then' ||
    isLongNumber(token)
  );
}

/** A name or words in quotes that are too long, cut to what is read; reported. Any other token as it is. */
export function cut(token: Token, report: (message: Said) => void): Token {
  const isWords = token.name === 'STRING';
  const most = isWords ? bounds.words : bounds.name;
  if (token.image.length <= most || !(isWords || token.name === 'ID')) return token;
  report(
    isWords
      ? say`This text has ${token.image.length} letters; at most ${most} are read. Shorten it, or split it over several steps`
      : say`This name has ${token.image.length} letters; at most ${most} are read. Give it a shorter one, with the long one in quotes after it`,
  );
  return token.readAs(token.name, isWords ? `${token.image.slice(0, most - 1)}"` : token.image.slice(0, most));
}
