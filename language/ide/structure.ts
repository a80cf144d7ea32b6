/** Blocks, statements and words of a text: what can be folded away, and what a selection grows to. */

import { contains } from '../model/ranges.ts';
import type { Position, Range } from '../model/source.ts';
import { statementsOf } from '../syntax/layout.ts';
import { scan } from '../syntax/scan.ts';
import type { Token } from '../syntax/token.ts';

export interface Fold {
  readonly start: number;
  readonly end: number;
  readonly isRemark: boolean;
}

/** Blocks from the line of their brace to the line before its end, and remarks of several lines. */
export function foldsOf(text: string): Fold[] {
  const { lines } = scan(text);
  const folds: Fold[] = [];
  const open: number[] = [];
  for (const { tokens, number } of lines)
    for (const { image } of tokens) {
      if (image === '{') open.push(number);
      const start = image === '}' ? open.pop() : undefined;
      if (start !== undefined && number - 1 > start) folds.push({ start, end: number - 1, isRemark: false });
    }
  const written = text.split(/\r\n|\n|\r/u);
  const isRemark = (line: number) => /^\s*\/\//u.test(written[line] ?? '');
  for (let line = 0; line < written.length; line++) {
    const start = line;
    while (isRemark(line)) line++;
    if (line - start > 1) folds.push({ start, end: line - 1, isRemark: true });
  }
  return folds.sort((one, other) => one.start - other.start);
}

/** The ranges around a place, each in the next: the word, the list it is in, the statement, the inside of its block, the block. */
export function rangesAround(text: string, position: Position): Range[] {
  const { lines } = scan(text);
  const { statements } = statementsOf(lines);
  const all = statements
    .map(({ tokens }) => tokens.filter(({ isMade }) => !isMade))
    .filter((tokens) => tokens.length > 0);
  const ranges: Range[] = [];
  const add = (range: Range | null) => {
    const last = ranges.at(-1);
    if (range === null || !contains(range, position)) return;
    if (last !== undefined && !(contains(range, last.start) && contains(range, last.end))) return;
    if (last === undefined || JSON.stringify(last) !== JSON.stringify(range)) ranges.push(range);
  };
  const at = all.findIndex((tokens) => contains(between(tokens), position));
  if (at >= 0) {
    const tokens = all[at]!;
    const word = tokens.findIndex((token) => contains(between([token]), position));
    if (word >= 0) {
      add(between([tokens[word]!]));
      add(listAround(tokens, word));
    }
    add(between(tokens));
  }
  // The blocks, from the innermost: what their braces hold, then with their head.
  const open: { readonly head: number; readonly brace: Token }[] = [];
  const blocks: { readonly inner: Range; readonly whole: Range }[] = [];
  for (const [index, tokens] of all.entries())
    for (const token of tokens) {
      if (token.image === '{') open.push({ head: index, brace: token });
      if (token.image !== '}') continue;
      const start = open.pop();
      if (start === undefined) continue;
      const whole = { start: between(all[start.head]!).start, end: between([token]).end };
      blocks.push({ inner: { start: between([start.brace]).end, end: between([token]).start }, whole });
    }
  for (const { inner, whole } of blocks.filter((block) => contains(block.whole, position))) {
    add(inner);
    add(whole);
  }
  return ranges;
}

/** Names with commas between them, around one. */
function listAround(tokens: readonly Token[], at: number): Range {
  let [start, end] = [at, at];
  const joins = (index: number) => tokens[index]?.image === ',' || tokens[index]?.image === '.';
  while (joins(start - 1) && start > 1) start -= 2;
  while (joins(end + 1) && end + 2 < tokens.length) end += 2;
  return between(tokens.slice(start, end + 1));
}

function between(tokens: readonly Token[]): Range {
  const [first, last] = [tokens[0]!, tokens.at(-1)!];
  return {
    start: { line: first.line.number, character: first.column },
    end: { line: last.endLine.number, character: last.endColumn },
  };
}
