import type { IToken } from 'chevrotain';

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
export function beyondBounds(rows: readonly (readonly IToken[])[]): { token: IToken; message: string } | null {
  let depth = 0;
  for (const row of rows) {
    if (row.length > bounds.statement)
      return {
        token: row[0]!,
        message: `This statement has ${row.length} words and symbols; the longest that is read has ${bounds.statement}. Nothing in this file is read until the statement is split into several`,
      };
    let inRow = 0;
    for (const token of row) {
      if (token.image === '{') depth++;
      else if (token.image === '}') depth = Math.max(0, depth - 1);
      else if (token.image === '(' || token.image === 'then') inRow++;
      else if (token.image === ')') inRow--;
      if (depth + inRow > bounds.depth)
        return {
          token,
          message: `This is nested in more than ${bounds.depth} blocks or brackets. Nothing in this file is read until it is nested less deeply`,
        };
      if (/^(?:QUANTITY|NUMBER)$/u.test(token.tokenType.name) && token.image.length > bounds.number)
        return {
          token,
          message: `This number has ${token.image.length} characters; the longest that is read has ${bounds.number}. Nothing in this file is read until it is shorter`,
        };
    }
  }
  return null;
}

/** A name or words in quotes that are too long, cut to what is read; reported. Any other token as it is. */
export function cut(token: IToken, report: (token: IToken, message: string) => void): IToken {
  const isWords = token.tokenType.name === 'STRING';
  const most = isWords ? bounds.words : bounds.name;
  if (token.image.length <= most || !(isWords || token.tokenType.name === 'ID')) return token;
  report(
    token,
    isWords
      ? `This text has ${token.image.length} letters; at most ${most} are read. Shorten it, or split it over several steps`
      : `This name has ${token.image.length} letters; at most ${most} are read. Give it a shorter one, with the long one in quotes after it`,
  );
  return { ...token, image: isWords ? `${token.image.slice(0, most - 1)}"` : token.image.slice(0, most) };
}
