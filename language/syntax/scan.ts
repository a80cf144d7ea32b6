import { numberPattern, quantityPattern } from '../quantities/index.ts';
import { type Said, say } from '../say/say.ts';
import { bounds, cut } from './bounds.ts';
import { fluidWords } from './keywords.ts';
import { nameLetters } from './name-pattern.ts';
import { tables } from './tables.generated.ts';
import { type Line, type Slip, type Source, slipOf, Token, typeOf } from './token.ts';

/*
 * The scanner. Lines matter, and no token goes beyond its line: so a text is scanned line by line, and after an edit only the
 * lines that it touches. A first character decides what a token can be.
 */

/** The lines of a text before an edit, which those of the text after it are made of. */
export interface Scanned {
  readonly source: Source;
  readonly lines: readonly Line[];
}

/**
 * The lines of a text. Those of `before` that are the same are moved to their place in the new text: what was made of them
 * belongs to the new text from then on.
 */
export function scan(text: string, before: Scanned | null = null): Scanned {
  if (before === null) {
    const source = { text };
    return { source, lines: linesIn(source, text, 0) };
  }
  const { source, lines } = before;
  const old = source.text;
  source.text = text;
  const start = sameAtStart(old, text);
  const end = Math.min(sameAtEnd(old, text), Math.min(old.length, text.length) - start);
  // A line is the same if the first character behind it is too, or the one that ends the line before it: what ends a line
  // may be two characters.
  const first = Math.max(0, countUpTo(lines, start - 1) - 1);
  const last = Math.max(first, countUpTo(lines, old.length - end));
  const shift = text.length - old.length;
  const from = lines[first]!.offset;
  const to = last < lines.length ? lines[last]!.offset + shift : text.length;
  // A copy: a token of it does not keep the whole text of every edit alive.
  const made = linesIn(source, ` ${text.slice(from, to)}`.slice(1), from, last < lines.length);
  const all = [...lines.slice(0, first), ...made, ...lines.slice(last)];
  for (let index = first; index < all.length; index++) {
    const line = all[index]!;
    if (index >= first + made.length) line.offset += shift;
    line.number = index;
  }
  return { source, lines: all };
}

/** How many lines begin at or before an offset. */
function countUpTo(lines: readonly Line[], offset: number): number {
  let [low, high] = [0, lines.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (lines[middle]!.offset <= offset) low = middle + 1;
    else high = middle;
  }
  return low;
}

const block = 4096;

function sameAtStart(one: string, other: string): number {
  const most = Math.min(one.length, other.length);
  let same = 0;
  while (same + block <= most && one.slice(same, same + block) === other.slice(same, same + block)) same += block;
  while (same < most && one.charCodeAt(same) === other.charCodeAt(same)) same++;
  return same;
}

function sameAtEnd(one: string, other: string): number {
  const most = Math.min(one.length, other.length);
  const [a, b] = [one.length, other.length];
  let same = 0;
  while (same + block <= most && one.slice(a - same - block, a - same) === other.slice(b - same - block, b - same))
    same += block;
  while (same < most && one.charCodeAt(a - same - 1) === other.charCodeAt(b - same - 1)) same++;
  return same;
}

/** The lines of a piece of a text. One that other lines follow ends where the next begins: it has no last, empty line. */
function linesIn(source: Source, piece: string, offset: number, followed = false): Line[] {
  const lines: Line[] = [];
  let start = 0;
  for (;;) {
    let end = start;
    while (end < piece.length && piece.charCodeAt(end) !== 10 && piece.charCodeAt(end) !== 13) end++;
    if (followed && start === piece.length) return lines;
    lines.push(scanLine(piece, start, end, { source, offset: offset + start, number: lines.length }));
    if (end === piece.length) return lines;
    start = end + (piece.charCodeAt(end) === 13 && piece.charCodeAt(end + 1) === 10 ? 2 : 1);
  }
}

const [partOfName, startOfName] = [1, 2];

const letter = new RegExp(`[${nameLetters}]`, 'u');

/** What each character up to ʯ is in a name. */
const inNames = Uint8Array.from({ length: 0x2b0 }, (_, code) => {
  const sign = String.fromCharCode(code);
  return letter.test(sign) ? partOfName | startOfName : /[0-9_]/u.test(sign) ? partOfName : 0;
});

function isIn(code: number, what: number): boolean {
  return code < inNames.length && (inNames[code]! & what) !== 0;
}

/** Keywords that are words, and the longest first of those that are signs. */
const words = new Map(tables.keywords.map((word) => [word, word]));
const signs = tables.keywords
  .filter((word) => !isIn(word.charCodeAt(0), startOfName))
  .sort((one, other) => other.length - one.length);

const quantity = new RegExp(quantityPattern, 'uy');
const number = new RegExp(numberPattern, 'uy');
/** Digits without end that are no number: each of them would be tried again as the first of one. */
export const endless = new RegExp(`[\\d.,]{${10 * bounds.number},}`, 'y');
const date = /\d{4}-\d{2}-\d{2}/y;

/** What begins at an offset: its kind and where it ends. Null: nothing that has a meaning. */
interface Found {
  readonly name: string;
  readonly end: number;
}

const isBlank = (code: number) => code === 0x20 || code === 0x09 || code === 0xa0 || code === 0x202f || code === 0xfeff;

function ofPattern(pattern: RegExp, piece: string, at: number): number {
  pattern.lastIndex = at;
  return pattern.test(piece) ? pattern.lastIndex : -1;
}

/** The token that begins at an offset that is no blank. `end` is where its line ends. */
function tokenAt(piece: string, at: number, end: number): Found | null {
  const code = piece.charCodeAt(at);
  if (isIn(code, startOfName)) {
    let to = at + 1;
    for (;;) {
      while (to < end && isIn(piece.charCodeAt(to), partOfName)) to++;
      if (piece.charCodeAt(to) !== 0x2d || to + 1 >= end || !isIn(piece.charCodeAt(to + 1), partOfName)) break;
      to++;
    }
    return { name: words.get(piece.slice(at, to)) ?? 'ID', end: to };
  }
  if (code >= 0x30 && code <= 0x39) {
    const ofDate = ofPattern(date, piece, at);
    if (ofDate >= 0) return { name: 'DATE', end: ofDate };
    const ofQuantity = ofPattern(quantity, piece, at);
    if (ofQuantity >= 0) return { name: 'QUANTITY', end: ofQuantity };
    const ofNumber = ofPattern(number, piece, at);
    const to = ofNumber < 0 ? ofPattern(endless, piece, at) : ofNumber;
    return to < 0 ? null : { name: 'NUMBER', end: to };
  }
  if (code === 0x22) {
    const quote = piece.indexOf('"', at + 1);
    return { name: 'STRING', end: quote < 0 || quote >= end ? end : quote + 1 };
  }
  // A sign that means nothing in a text, and is what the token pass makes of a line that it cannot read.
  if (code === 0) return { name: 'UNREAD', end: at + 1 };
  const sign = signs.find((one) => piece.startsWith(one, at));
  return sign === undefined ? null : { name: sign, end: at + sign.length };
}

/** Words that a label follows, which begins with a digit more often than not. */
const labeled: ReadonlySet<string> = new Set(['serial', 'number', 'job', 'order', 'revision']);

/** What is on a body or an order: `3003B`, `04-11C`, `12/7`. It is no figure, whatever unit it seems to have. */
const digitLabel = /\d[\p{L}\d]*(?:[-./][\p{L}\d]+)*/uy;

/** A label that begins with a digit; null: it is a number, or none begins there. Of other words than `serial` it has a letter. */
function labelAt(before: string, piece: string, at: number, end: number): Found | null {
  if (!labeled.has(before)) return null;
  const to = ofPattern(digitLabel, piece, at);
  const isAlone = to === end || isBlank(piece.charCodeAt(to));
  const isLabel = before === 'serial' ? /[^\d.]|\..*\./u : /\p{L}/u;
  return to >= 0 && to <= end && isAlone && isLabel.test(piece.slice(at, to)) ? { name: 'ID', end: to } : null;
}

/** The remark that begins with //, or a blank; or nothing of these. */
function isSkipped(piece: string, at: number): boolean {
  const code = piece.charCodeAt(at);
  return isBlank(code) || (code === 0x2f && piece.charCodeAt(at + 1) === 0x2f);
}

/** Most lines have nothing wrong. */
const none: readonly Slip[] = [];

function scanLine(piece: string, start: number, end: number, place: Pick<Line, 'source' | 'offset' | 'number'>): Line {
  const line: Line = { ...place, tokens: [], isFlawed: false, slips: none, cuts: none, row: null };
  const slips: Slip[] = [];
  let at = start;
  while (at < end) {
    const code = piece.charCodeAt(at);
    if (isBlank(code)) {
      at++;
      continue;
    }
    if (code === 0x2f && piece.charCodeAt(at + 1) === 0x2f) break;
    const before = line.tokens.at(-1)?.image ?? '';
    const found = labelAt(before, piece, at, end) ?? tokenAt(piece, at, end);
    if (found !== null) {
      const image =
        found.name.length === found.end - at && words.has(found.name) ? found.name : piece.slice(at, found.end);
      line.tokens.push(
        new Token(found.name, typeOf.get(found.name)!, image, line, at - start, line, found.end - start),
      );
      at = found.end;
      continue;
    }
    const from = at;
    do at++;
    while (at < end && !isSkipped(piece, at) && tokenAt(piece, at, end) === null);
    slips.push({
      line,
      column: from - start,
      length: at - from,
      code: 'stray-character',
      message: unexpectedCharacter(String.fromCodePoint(piece.codePointAt(from)!)),
    });
    // `# remark`, as in other languages: reported, and what follows it on its line is not read.
    if (code === 0x23) break;
  }
  if (slips.length > 0) line.slips = slips;
  return finished(line);
}

const blankMessage = say`This blank is still to be filled in: write the figure, the name or the words in the place of “…”.`;

const emptyMessage = say`These quotes are empty, and whatever needs their words would take them as given. Write the words, or delete the quotes and what introduces them.`;

/** Whether empty quotes behind some words are reported for what they lack: a reason, a serial, a customer, who did the work. */
function hasOwnReport(before: Token | undefined, first: Token | undefined): boolean {
  const word = before?.image ?? '';
  const two = `${first?.image ?? ''} ${word}`;
  return ['because', 'serial', 'hold', 'customer'].includes(word) || ['done by', 'serial none'].includes(two);
}

/** Words that say nothing without what is to be filled in behind them. */
const leading = new Set(
  'with within to in from by on at for or of least most above below ± +/- accept reject if source spread hold because class graduated'.split(
    ' ',
  ),
);

/**
 * Leaves a blank out, with what says nothing without it, so that the rest of its line is read: `torque nut with …` is a
 * torque, `reshim (… times)` a repair.
 */
function readBlank(line: Line, slip: Slip): Slip {
  const { tokens } = line;
  const at = tokens.findIndex(({ column }) => column > slip.column);
  const behind = at < 0 ? tokens.length : at;
  let from = behind;
  if (tokens[behind - 1]?.name === '(') {
    const close = tokens.findIndex(({ name }, index) => index >= behind && name === ')');
    tokens.splice(behind - 1, close < 0 ? 1 : close - behind + 2);
  } else {
    while (from > 1 && leading.has(tokens[from - 1]!.name)) from--;
    tokens.splice(from, behind - from);
  }
  return { ...slip, code: 'blank-left', message: blankMessage };
}

/** Names and texts are cut to what is read, a position is no length in inches, and blanks are left out. */
export function finished(line: Line): Line {
  const isBlankLeft = ({ column }: Slip) => line.source.text.charCodeAt(line.offset + column) === 0x2026;
  if (line.slips.some(isBlankLeft))
    line.slips = line.slips.map((slip) => (isBlankLeft(slip) ? readBlank(line, slip) : slip));
  const { tokens } = line;
  const cuts: Slip[] = [];
  let hasPosition = false;
  tokens.forEach((token, index) => {
    const read = cut(token, (message) => cuts.push(slipOf(token, 'too-much-to-read', message)));
    if (token.image === '"…"') cuts.push({ ...slipOf(token, 'blank-left', blankMessage), message: blankMessage });
    if (/^"\s*"$/u.test(token.image) && !hasOwnReport(tokens[index - 1], tokens[index - 2]))
      cuts.push({ ...slipOf(token, 'blank-left', emptyMessage), message: emptyMessage });
    tokens[index] = read;
    if (read.isOpen) line.isFlawed = true;
    hasPosition ||= isPosition(tokens[index - 1], token, tokens[index + 1]);
  });
  if (hasPosition)
    line.tokens = tokens.flatMap((token, index) =>
      isPosition(tokens[index - 1], token, tokens[index + 1]) ? split(token) : [token],
    );
  if (cuts.length > 0) line.cuts = cuts;
  if (line.slips.length > 0 || cuts.length > 0) line.isFlawed = true;
  return line;
}

/**
 * `rinse spacer 2 in cal-oil` is the spacer of position 2 in a fluid, and no two inches: a name before it and a fluid
 * behind it show that.
 */
function isPosition(before: Token | undefined, token: Token, behind: Token | undefined): boolean {
  return (
    token.name === 'QUANTITY' &&
    before?.name === 'ID' &&
    behind !== undefined &&
    (behind.name === 'ID' || fluidWords.includes(behind.name)) &&
    /^\d+ in$/u.test(token.image)
  );
}

/** A number and the word `in` out of one token. */
function split({ image, line, column, endColumn }: Token): Token[] {
  const digits = image.slice(0, -' in'.length);
  const behind = column + digits.length;
  return [
    new Token('NUMBER', typeOf.get('NUMBER')!, digits, line, column, line, behind),
    new Token('in', typeOf.get('in')!, 'in', line, behind + 1, line, endColumn),
  ];
}

export function unexpectedCharacter(text: string): Said {
  if (text.startsWith('#')) return say`A remark begins with //: write // instead of #.`;
  if (/[“”„«»]/u.test(text)) return say`Curly quotes are not read: use straight ones, "…".`;
  if (/[–—]/u.test(text))
    return say`A long dash is not read: write .. between the ends of a range, or - inside a name.`;
  return say`${text} has no meaning here: delete it, or put it inside "…".`;
}
