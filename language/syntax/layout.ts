import type { ILexingError, IToken, TokenType } from 'chevrotain';
import { beyondBounds, cut } from './bounds.ts';
import {
  blockHeads,
  continuing,
  declarationHeads,
  fluidWords,
  itemHeads,
  kindWords,
  reserved,
  stepBlocks,
  stepWords,
} from './keywords.ts';
import { nearest } from './nearest.ts';
import { type Damage, markUnread } from './unread.ts';

type Types = Readonly<Record<string, TokenType>>;

/**
 * The token pass: makes statements out of raw tokens.
 *
 * - a statement ends in exactly one EOL; blank and comment lines vanish;
 * - a line goes on if the next begins with a word that can only continue it, or after a comma if the next is
 *   indented deeper than the statement's first line;
 * - `{` and `}` get an EOL on the inside, so that a block may be on one line;
 * - a missing or superfluous brace is repaired where a head shows it, and reported there;
 * - a statement that begins with an unknown word, or that `damage` names, becomes one UNREAD token.
 *
 * Pure: raw tokens in, tokens and reports out; offsets of the text are kept.
 */
export function lines(raw: readonly IToken[], types: Types, damage: Damage = new Map()) {
  const reports: ILexingError[] = [];
  const report = (token: IToken, message: string) => reports.push(lexingError(token, message));
  const cutToLength = raw.map((token) => cut(token, report));
  const rows = joinRows(splitRows(positions(cutToLength, types)));
  const beyond = beyondBounds(rows);
  if (beyond !== null) return { tokens: [], reports: [lexingError(beyond.token, beyond.message)] };
  const braced = repairBraces(rows, types, report);
  return { tokens: markUnread(braced, types, damage), reports };
}

/**
 * `rinse spacer 2 in cal-oil` is the spacer of position 2 in a fluid, and no two inches: a name before it and a fluid
 * behind it show that.
 */
function positions(raw: readonly IToken[], types: Types): IToken[] {
  return raw.flatMap((token, index) => {
    const [before, behind] = [raw[index - 1]?.tokenType.name, raw[index + 1]?.tokenType.name];
    const isPosition =
      token.tokenType.name === 'QUANTITY' &&
      /^\d+ in$/u.test(token.image) &&
      before === 'ID' &&
      behind !== undefined &&
      (behind === 'ID' || fluidWords.includes(behind));
    return isPosition ? split(token, token.image.length - ' in'.length, types) : [token];
  });
}

/** A number and the word `in` out of one token. */
function split(token: IToken, length: number, types: Types): IToken[] {
  const piece = (name: string, image: string, from: number): IToken => ({
    ...token,
    image,
    tokenType: types[name]!,
    tokenTypeIdx: types[name]!.tokenTypeIdx!,
    startOffset: token.startOffset + from,
    endOffset: token.startOffset + from + image.length - 1,
    startColumn: (token.startColumn ?? 1) + from,
    endColumn: (token.startColumn ?? 1) + from + image.length - 1,
  });
  return [piece('NUMBER', token.image.slice(0, length), 0), piece('in', 'in', length + 1)];
}

/** Raw tokens by line of text; lines with nothing in them are left out. */
function splitRows(raw: readonly IToken[]): IToken[][] {
  const rows: IToken[][] = [[]];
  for (const token of raw) {
    if (token.tokenType.name === 'EOL') rows.push([]);
    else rows.at(-1)!.push(token);
  }
  return rows.filter((row) => row.length > 0);
}

/**
 * Rows that go on are put behind the row that they continue. In a unit of a job each row is a statement of its own, unless a comma
 * ends the one before: any word may begin a result there.
 */
function joinRows(rows: readonly IToken[][]): IToken[][] {
  const joined: IToken[][] = [];
  let inUnit = false;
  for (const row of rows) {
    const statement = joined.at(-1);
    if (statement !== undefined && goesOn(statement, row, inUnit)) for (const token of row) statement.push(token);
    else joined.push([...row]);
    const [head, last] = [keyword(joined.at(-1)![0]), keyword(row.at(-1))];
    if (last === '{') inUnit = head === 'unit';
    else if (head === '}') inUnit = false;
  }
  return joined;
}

function goesOn(statement: readonly IToken[], row: readonly IToken[], inUnit: boolean): boolean {
  const [first, second] = row;
  const word = keyword(first);
  const last = keyword(statement.at(-1));
  if (word === '{') return last !== '{' && last !== '}';
  if (last === '{' || last === '}') return false;
  const deeper = column(first!) > column(statement[0]!);
  if (last === ',') return deeper;
  if (inUnit) return false;
  if (word === 'lap') return keyword(second) === 'if';
  if (word === 'read') return deeper && keyword(statement[0]) === 'test' && kindWords.includes(second?.image ?? '');
  if (word === 'allow') return deeper;
  return word !== null && continuing.includes(word);
}

/** Puts EOL where statements end and repairs braces where a head shows that one is missing or too many. */
function repairBraces(
  rows: readonly IToken[][],
  types: Types,
  report: (token: IToken, message: string) => void,
): IToken[] {
  const out: IToken[] = [];
  /** The words that opened the blocks which are open here, outermost first. */
  const open: string[] = [];
  const atStart = () => out.length === 0 || out.at(-1)!.tokenType.name === 'EOL';
  const end = (near: IToken) => {
    if (!atStart()) out.push(madeToken(types, 'EOL', near));
  };
  const close = (near: IToken, before: boolean) => {
    end(near);
    out.push(madeToken(types, '}', near, before));
    end(out.at(-1)!);
    open.pop();
  };

  rows.forEach((read, place) => {
    const following = rows[place + 1];
    const depth = depthOf(read, open);
    while (open.length > depth) {
      const last = rows[place - 1]!.at(-1)!;
      report(last, `the ${open.at(-1)} is not closed here: put } after this line`);
      close(read[0]!, true);
    }
    const row = withName(read, open, types, report);
    let head = '';
    const opensAt = open.length;
    row.forEach((token, index) => {
      if (token.image === '{') {
        if (atStart()) {
          report(token, 'this { opens nothing: write the head before it, or delete it');
          return;
        }
        open.push(head);
        out.push(token);
        end(token);
        return;
      }
      if (token.image === '}') {
        if (open.length === 0) {
          report(token, 'this } closes nothing: delete it');
          return;
        }
        if (index === row.length - 1 && wouldStrand(open, following)) {
          const what = open.length === 1 ? `${following![0]!.image} follows` : 'steps follow';
          report(token, `this } ends the ${open.at(-1)}, but ${what} it: delete it`);
          return;
        }
        end(token);
        out.push(token);
        open.pop();
        head = '';
        end(token);
        return;
      }
      if (atStart()) {
        const read = nearestHead(token, row.slice(index + 1), open.length, types, report);
        head = read.image;
        out.push(read);
      } else out.push(token);
    });
    if (!atStart() && needsBlock(row, head, open)) {
      const last = row.at(-1)!;
      report(last, `the head of this ${head} ends without {: put { at the end of the line`);
      out.push(madeToken(types, '{', last));
      end(out.at(-1)!);
      open.push(head);
      if (following === undefined || column(following[0]!) <= column(row[0]!)) close(out.at(-1)!, false);
    }
    end(row.at(-1)!);
    // A block that begins in a line with its first step ends there too, unless deeper lines follow.
    while (
      open.length > opensAt &&
      inlineBlock(row) &&
      !(following !== undefined && column(following[0]!) > column(row[0]!))
    ) {
      report(row.at(-1)!, `the ${open.at(-1)} that begins on this line is not closed: put } at its end`);
      close(row.at(-1)!, false);
    }
  });
  while (open.length > 0) {
    report(out.at(-1)!, `the ${open.at(-1)} is not closed: put } at the end`);
    close(out.at(-1)!, false);
  }
  return out;
}

/** What has a name of its own, by what it is in. */
const namedItems: ReadonlyMap<string, readonly string[]> = new Map([
  ['shop', ['station', 'wrench', 'gauge', 'tool', 'fluid', 'stock', 'master']],
  ['family', ['part']],
  ['procedure', ['spec', 'number', 'stage', 'repair', 'sequence']],
]);

/**
 * `family "Relief valve" {`, `part "ball"`, `stage {`: a head without its name gets one, or everything in it would
 * be lost, and all that names it be unknown. Reported.
 */
function withName(
  row: readonly IToken[],
  open: readonly string[],
  types: Types,
  report: (token: IToken, message: string) => void,
): readonly IToken[] {
  const [head, second, third] = row;
  const word = keyword(head);
  const named = open.length === 0 ? declarationHeads : open.length === 1 ? (namedItems.get(open[0]!) ?? []) : [];
  if (word === null || second === undefined || !named.includes(word)) return row;
  const isLabel = word === 'job' || word === 'number';
  const kind = second.tokenType.name;
  if (kind === 'ID' || (isLabel && kind !== '{' && !reserved.includes(second.image))) return row;
  if (keyword(second) !== null && /^\p{L}/u.test(second.image) && !reserved.includes(second.image)) return row;
  const id = (image: string, at: IToken): IToken => ({
    ...at,
    image,
    tokenType: types.ID!,
    tokenTypeIdx: types.ID!.tokenTypeIdx!,
  });
  if (kind === 'STRING') {
    const words = second.image.replace(/^"|"$/gu, '');
    const isName = /^\p{L}[\p{L}\d_-]*$/u.test(words);
    if (isName && (third?.tokenType.name === 'STRING' || words === words.toLowerCase())) {
      report(second, `a name is written without quotes: write ${word} ${words}`);
      return [head!, id(words, second), ...row.slice(2)];
    }
    const made =
      words
        .toLowerCase()
        .replace(/[^\p{L}\d]+/gu, '-')
        .replace(/^[-\d]+|-$/gu, '')
        .slice(0, 40) || word;
    report(
      second,
      `the name is missing before the title: write ${word} ${made} ${second.image}, or another short name`,
    );
    return [head!, id(made, head!), ...row.slice(1)];
  }
  // A reserved word in place of a name: the parser has the better message.
  if (kind !== '{' && third?.tokenType.name === 'STRING') return row;
  if (kind !== '{' && !['for', 'at', 'of', 'on', 'in', 'with'].includes(second.image)) return row;
  report(head!, `the name of this ${word} is missing: write a short one of your own after ${word}`);
  return [head!, id(`${word}-${head!.startLine}`, head!), ...row.slice(1)];
}

/** How many blocks may be open at a line: a head there shows where it belongs. */
function depthOf(row: readonly IToken[], open: readonly string[]): number {
  const word = keyword(row[0]);
  const next = row[1];
  const named = next !== undefined && !['{', ',', '}'].includes(next.image);
  if (word === null || !named) return open.length;
  if (declarationHeads.includes(word) && word !== 'sequence' && column(row[0]!) === 1) return 0;
  if (itemHeads.includes(word) && open.length > 1) return 1;
  return open.length;
}

/** Its first `{` has something behind it on the line. */
function inlineBlock(row: readonly IToken[]): boolean {
  const brace = row.findIndex((token) => token.image === '{');
  return brace >= 0 && brace < row.length - 1;
}

/** A `}` after which a step would be directly inside a procedure, or what belongs to a declaration in none. */
function wouldStrand(open: readonly string[], following: readonly IToken[] | undefined): boolean {
  const word = keyword(following?.[0]);
  if (open.length === 1)
    return word !== null && column(following![0]!) > 1 && namedItems.get(open[0]!)?.includes(word) === true;
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
function needsBlock(row: readonly IToken[], head: string, open: readonly string[]): boolean {
  if (keyword(row[0]) !== head || row.length < 2) return false;
  if (head === 'sequence') return open.length <= 1;
  if (declarationHeads.includes(head)) return open.length === 0;
  return blockHeads.includes(head) && open.length === 1;
}

/** `stge prove at tester {`: a misspelled head is read as the nearest one, or its whole block would be lost. */
function nearestHead(
  token: IToken,
  rest: readonly IToken[],
  depth: number,
  types: Types,
  report: (token: IToken, message: string) => void,
): IToken {
  const brace = rest.findIndex((other) => other.image === '{');
  if (token.tokenType.name !== 'ID' || brace < 1) return token;
  const heads =
    depth === 0
      ? declarationHeads
      : depth === 1
        ? blockHeads.filter((word) => !declarationHeads.includes(word))
        : ['only'];
  const [head] = nearest(token.image, heads);
  if (head === undefined) return token;
  report(token, `no such word: ${token.image}. It is read as ${head}; write ${head}`);
  return { ...token, image: head, tokenType: types[head]!, tokenTypeIdx: types[head]!.tokenTypeIdx! };
}

/** The token's word where it is a keyword; null for names, numbers and texts. */
export function keyword(token: IToken | undefined): string | null {
  return token !== undefined && token.tokenType.name === token.image ? token.image : null;
}

function column(token: IToken): number {
  return token.startColumn ?? 1;
}

/** A token that is in no text: it has the place where `near` ends (or begins), and no length. */
export function madeToken(types: Types, name: string, near: IToken, before = false): IToken {
  const type = types[name]!;
  const offset = before ? near.startOffset : (near.endOffset ?? near.startOffset) + 1;
  const line = (before ? near.startLine : near.endLine) ?? 1;
  const column = before ? (near.startColumn ?? 1) : (near.endColumn ?? 1) + 1;
  return {
    image: name === 'EOL' || name === '{' || name === '}' ? '' : name,
    tokenType: type,
    tokenTypeIdx: type.tokenTypeIdx!,
    startOffset: offset,
    endOffset: offset - 1,
    startLine: line,
    endLine: line,
    startColumn: column,
    endColumn: column - 1,
  } as IToken;
}

function lexingError(token: IToken, message: string): ILexingError {
  return {
    message,
    offset: token.startOffset,
    line: token.startLine,
    column: token.startColumn,
    length: Math.max(token.image.length, 1),
  } as ILexingError;
}
