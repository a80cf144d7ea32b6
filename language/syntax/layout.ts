import { type Said, say } from '../say/say.ts';
import { beyondBounds } from './bounds.ts';
import {
  blockHeads,
  continuing,
  declarationHeads,
  itemHeads,
  itemsWithin,
  kindWords,
  namedItems,
  reserved,
  stepBlocks,
  stepWords,
  writtenBlocks,
} from './keywords.ts';
import { nearest } from './nearest.ts';
import type { ProblemCode } from './problem-code.ts';
import { Row, Statement } from './statement.ts';
import { keyword, type Line, madeToken, type Slip, slipOf, type Token } from './token.ts';

type Report = (token: Token, code: ProblemCode, message: Said) => void;

/**
 * The token pass: makes statements out of the tokens of lines.
 *
 * - a statement ends in exactly one EOL; blank and comment lines vanish;
 * - a line goes on if the next begins with a word that can only continue it, or after a comma if the next is
 *   indented deeper than the statement's first line;
 * - `{` and `}` get an EOL on the inside, so that a block may be on one line: `{` is the last of its statement, and `}` alone
 *   in one;
 * - a missing or superfluous brace is repaired where a head shows it, and reported there.
 *
 * Pure: lines in, statements and reports out; a token keeps its place in the text.
 */
export function statementsOf(lines: readonly Line[]): { statements: Statement[]; reports: Slip[] } {
  const reports: Slip[] = [];
  const report: Report = (token, code, message) => reports.push(slipOf(token, code, message));
  const rows = joinRows(lines);
  const beyond = beyondBounds(rows);
  if (beyond !== null) return { statements: [], reports: [slipOf(beyond.token, 'too-much-to-read', beyond.message)] };
  return { statements: repairBraces(rows, report), reports };
}

/**
 * Rows that go on are put behind the row that they continue. In a unit of a job each row is a statement of its own, unless a comma
 * ends the one before: any word may begin a result there.
 */
function joinRows(lines: readonly Line[]): Row[] {
  const rows: Row[] = [];
  const read = lines.filter(({ tokens }) => tokens.length > 0);
  let inUnit = false;
  let start = 0;
  read.forEach(({ tokens }, index) => {
    const goes = index > start && goesOn(read[start]!.tokens[0]!, read[index - 1]!.tokens.at(-1)!, tokens, inUnit);
    if (!goes && index > start) {
      rows.push(Row.of(read, start, index));
      start = index;
    }
    const [head, last] = [keyword(read[start]!.tokens[0]), keyword(tokens.at(-1))];
    if (last === '{') inUnit = head !== null && writtenBlocks.includes(head);
    else if (head === '}') inUnit = false;
  });
  if (read.length > 0) rows.push(Row.of(read, start, read.length));
  return rows;
}

/** A row goes on from the statement that has this first and this last token so far. */
function goesOn(head: Token, end: Token, row: readonly Token[], inUnit: boolean): boolean {
  const [first, second] = row;
  const word = keyword(first);
  const last = keyword(end);
  if (word === '{') return last !== '{' && last !== '}';
  if (last === '{' || last === '}') return false;
  const deeper = first!.column > head.column;
  if (last === ',') return deeper;
  if (inUnit) return false;
  if (word === 'lap') return keyword(second) === 'if';
  if (word === 'read') return deeper && keyword(head) === 'test' && kindWords.includes(second?.image ?? '');
  if (word === 'allow') return deeper;
  return word !== null && goOn.has(word);
}

const goOn = new Set(continuing);

/** Puts EOL where statements end and repairs braces where a head shows that one is missing or too many. */
function repairBraces(rows: readonly Row[], report: Report): Statement[] {
  const out: Statement[] = [];
  let statement: Token[] = [];
  /** The words that opened the blocks which are open here, outermost first. */
  const open: string[] = [];
  /** The last token of the last statement. */
  const lastEnd = () => out.at(-1)!.tokens.at(-1)!;
  const end = (near: Token) => {
    if (statement.length === 0) return;
    out.push(new Statement([...statement, madeToken('EOL', near)]));
    statement = [];
  };
  const close = (near: Token, before: boolean) => {
    end(near);
    const brace = madeToken('}', near, before);
    statement.push(brace);
    end(brace);
    open.pop();
  };

  rows.forEach((read, place) => {
    if (read.isOrdinary) {
      out.push(read.statement);
      return;
    }
    const following = rows[place + 1]?.tokens;
    const depth = depthOf(read.tokens, open);
    while (open.length > depth) {
      const last = rows[place - 1]!.tokens.at(-1)!;
      report(last, 'unbalanced-brace', say`the ${open.at(-1)!} is not closed here: put } after this line`);
      close(read.tokens[0]!, true);
    }
    const row = withName(read.tokens, open, report);
    if (row === read.tokens && isWhole(read, open, following)) {
      if (read.braces === '{') open.push(row[0]!.image);
      else if (read.braces === '}') open.pop();
      out.push(read.statement);
      return;
    }
    let head = '';
    const opensAt = open.length;
    row.forEach((token, index) => {
      if (token.image === '{') {
        if (statement.length === 0) {
          report(token, 'unbalanced-brace', say`this { opens nothing: write the head before it, or delete it`);
          return;
        }
        open.push(head);
        statement.push(token);
        end(token);
        return;
      }
      if (token.image === '}') {
        if (open.length === 0) {
          report(token, 'unbalanced-brace', say`this } closes nothing: delete it`);
          return;
        }
        if (index === row.length - 1 && wouldStrand(open, following)) {
          const what = open.length === 1 ? say`${following![0]!.image} follows` : say`steps follow`;
          report(token, 'unbalanced-brace', say`this } ends the ${open.at(-1)!}, but ${what} it: delete it`);
          return;
        }
        end(token);
        statement.push(token);
        open.pop();
        head = '';
        end(token);
        return;
      }
      if (statement.length === 0) {
        const first = nearestHead(token, row.slice(index + 1), open.length, report);
        head = first.image;
        statement.push(first);
      } else statement.push(token);
    });
    if (statement.length > 0 && needsBlock(row, head, open)) {
      const last = row.at(-1)!;
      report(last, 'unbalanced-brace', say`the head of this ${head} ends without {: put { at the end of the line`);
      statement.push(madeToken('{', last));
      end(statement.at(-1)!);
      open.push(head);
      if (following === undefined || following[0]!.column <= row[0]!.column) close(lastEnd(), false);
    }
    end(row.at(-1)!);
    // A block that begins in a line with its first step ends there too, unless deeper lines follow.
    while (
      open.length > opensAt &&
      inlineBlock(row) &&
      !(following !== undefined && following[0]!.column > row[0]!.column)
    ) {
      report(
        row.at(-1)!,
        'unbalanced-brace',
        say`the ${open.at(-1)!} that begins on this line is not closed: put } at its end`,
      );
      close(row.at(-1)!, false);
    }
  });
  while (open.length > 0) {
    report(lastEnd(), 'unbalanced-brace', say`the ${open.at(-1)!} is not closed: put } at the end`);
    close(lastEnd(), false);
  }
  return out;
}

/** It is a statement as it is written, and its brace is right. */
function isWhole({ tokens, braces }: Row, open: readonly string[], following: readonly Token[] | undefined): boolean {
  if (braces === '{') return tokens[0]!.name !== 'ID';
  if (braces === '}') return open.length > 0 && !wouldStrand(open, following);
  return braces === 0 && !needsBlock(tokens, tokens[0]!.image, open);
}

/**
 * `family "Relief valve" {`, `part "ball"`, `stage {`: a head without its name gets one, or everything in it would
 * be lost, and all that names it be unknown. Reported.
 */
function withName(row: readonly Token[], open: readonly string[], report: Report): readonly Token[] {
  const [head, second, third] = row;
  const word = keyword(head);
  const named = open.length === 0 ? declarationHeads : open.length === 1 ? (namedItems.get(open[0]!) ?? []) : [];
  if (word === null || second === undefined || !named.includes(word)) return row;
  const isLabel = word === 'job' || word === 'number';
  const kind = second.name;
  if (kind === 'ID' || (isLabel && kind !== '{' && !reserved.includes(second.image))) return row;
  if (keyword(second) !== null && /^\p{L}/u.test(second.image) && !reserved.includes(second.image)) return row;
  if (kind === 'STRING') {
    const words = second.image.replace(/^"|"$/gu, '');
    const isName = /^\p{L}[\p{L}\d_-]*$/u.test(words);
    if (isName && (third?.name === 'STRING' || words === words.toLowerCase())) {
      report(second, 'not-a-name', say`a name is written without quotes: write ${word} ${words}`);
      return [head!, second.readAs('ID', words), ...row.slice(2)];
    }
    const made =
      words
        .toLowerCase()
        .replace(/[^\p{L}\d]+/gu, '-')
        .replace(/^[-\d]+|-$/gu, '')
        .slice(0, 40) || word;
    report(
      second,
      'not-a-name',
      say`the name is missing before the title: write ${word} ${made} ${second.image}, or another short name`,
    );
    return [head!, head!.readAs('ID', made), ...row.slice(1)];
  }
  // A reserved word in place of a name: the parser has the better message.
  if (kind !== '{' && third?.name === 'STRING') return row;
  if (kind !== '{' && !['for', 'at', 'of', 'on', 'in', 'with'].includes(second.image)) return row;
  report(head!, 'not-a-name', say`the name of this ${word} is missing: write a short one of your own after ${word}`);
  return [head!, head!.readAs('ID', `${word}-${head!.line.number + 1}`), ...row.slice(1)];
}

/** How many blocks may be open at a line: a head there shows where it belongs. */
function depthOf(row: readonly Token[], open: readonly string[]): number {
  const word = keyword(row[0]);
  const next = row[1];
  const named = next !== undefined && !['{', ',', '}'].includes(next.image);
  if (word === null || !named) return open.length;
  if (declarationHeads.includes(word) && word !== 'sequence' && row[0]!.column === 0) return 0;
  if (itemHeads.includes(word) && open.length > 1) return 1;
  return open.length;
}

/** Its first `{` has something behind it on the line. */
function inlineBlock(row: readonly Token[]): boolean {
  const brace = row.findIndex((token) => token.image === '{');
  return brace >= 0 && brace < row.length - 1;
}

/** A `}` after which a step would be directly inside a procedure, or what belongs to a declaration in none. */
function wouldStrand(open: readonly string[], following: readonly Token[] | undefined): boolean {
  const word = keyword(following?.[0]);
  if (open.length === 1)
    return word !== null && following![0]!.column > 0 && itemsWithin.get(open[0]!)?.includes(word) === true;
  return (
    open.length === 2 &&
    open[0] === 'procedure' &&
    stepBlocks.includes(open[1]!) &&
    word !== null &&
    word !== 'hazard' &&
    stepWords.includes(word)
  );
}

/** A head whose statement has no `{` although it must have a block. */
function needsBlock(row: readonly Token[], head: string, open: readonly string[]): boolean {
  if (keyword(row[0]) !== head || row.length < 2) return false;
  if (head === 'sequence') return open.length <= 1;
  if (declarationHeads.includes(head)) return open.length === 0;
  return blockHeads.includes(head) && open.length === 1;
}

/** `stge prove at tester {`: a misspelled head is read as the nearest one, or its whole block would be lost. */
function nearestHead(token: Token, rest: readonly Token[], depth: number, report: Report): Token {
  const brace = rest.findIndex((other) => other.image === '{');
  if (token.name !== 'ID' || brace < 1) return token;
  const heads =
    depth === 0
      ? declarationHeads
      : depth === 1
        ? blockHeads.filter((word) => !declarationHeads.includes(word))
        : ['only'];
  const [head] = nearest(token.image, heads);
  if (head === undefined) return token;
  report(token, 'unknown-word', say`no such word: ${token.image}. It is read as ${head}; write ${head}`);
  return token.readAs(head, head);
}
