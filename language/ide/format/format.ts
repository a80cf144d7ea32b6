/**
 * The layout of a text: indentation, blanks between words, columns of lines that are alike. Nothing but white space changes,
 * no line is joined, split or left out, and what is read of the text is the same: where it would not be, it stays as it is.
 */
import type { Edit } from '../../model/diagnostic.ts';
import type { Range } from '../../model/source.ts';
import { type Said, say } from '../../say/say.ts';
import { statementsOf } from '../../syntax/layout.ts';
import { parse } from '../../syntax/parse.ts';
import { scan } from '../../syntax/scan.ts';
import type { Line, Token } from '../../syntax/token.ts';
import { withColumns } from './columns.ts';
import { spaced } from './gaps.ts';

/** One line: its words, the remark behind them, and where it belongs. */
export interface LaidLine {
  readonly tokens: readonly Token[];
  readonly before: string;
  /** As it is laid out, without indentation and remark. */
  readonly code: string;
  readonly remark: string;
  readonly depth: number;
  /** It begins a statement that ends on it. */
  readonly isWhole: boolean;
  /** It goes on from the line above. */
  readonly goesOn: boolean;
  /** First word of the block that it is in; null at the margin. */
  readonly block: string | null;
}

const indentation = '  ';

/** The lines of a text, as they are and laid out. */
function laidOut(text: string): { readonly before: string; readonly after: string }[] {
  const { lines } = scan(text);
  const texts = text.split(/\r\n|\n|\r/u);
  const laid = withColumns(placed(lines, texts)).map((line) => ({ before: line.before, after: written(line) }));
  return isSame(text, laid.map(({ after }) => after).join('\n'))
    ? laid
    : laid.map(({ before }) => ({ before, after: before }));
}

function written({ code, remark, depth }: LaidLine): string {
  const whole = [code, remark].filter((part) => part !== '').join('   ');
  return whole === '' ? '' : `${indentation.repeat(depth)}${whole}`;
}

/** Where each line belongs: as deep as the braces that are open, and one more where it goes on from the line above. */
function placed(lines: readonly Line[], texts: readonly string[]): LaidLine[] {
  const { statements } = statementsOf(lines);
  const first = new Set(statements.flatMap(({ tokens }) => (tokens[0]!.isMade ? [] : [tokens[0]!.line.number])));
  const open: string[] = [];
  const wholes = new Map<number, number>();
  for (const { tokens } of statements) {
    const real = tokens.filter(({ isMade }) => !isMade);
    const numbers = new Set(real.map(({ line }) => line.number));
    for (const number of numbers) wholes.set(number, (wholes.get(number) ?? 0) + (numbers.size > 1 ? 2 : 1));
  }
  let head = '';
  const laid = lines.map((line, index): LaidLine => {
    const { tokens } = line;
    const before = texts[index] ?? '';
    const closing = tokens.findIndex(({ image }) => image !== '}');
    const closes = tokens.length > 0 && closing < 0 ? tokens.length : Math.max(0, closing);
    const goesOn = tokens.length > 0 && !first.has(index) && closes === 0 && tokens[0]!.image !== '{';
    const depth = Math.max(0, open.length - closes) + (goesOn ? 1 : 0);
    const block = open.at(-1) ?? null;
    if (!goesOn && tokens[0] !== undefined && tokens[0].image !== '{') head = tokens[0].image;
    for (const { image } of tokens) {
      if (image === '{') open.push(head);
      else if (image === '}') open.pop();
    }
    const last = tokens.at(-1);
    const rest = before.slice(last === undefined ? 0 : last.endColumn);
    return {
      tokens,
      before,
      code: spaced(line, before),
      remark: rest.trim().replace(/^\ufeff/u, ''),
      depth,
      goesOn,
      isWhole: wholes.get(index) === 1 && first.has(index),
      block,
    };
  });
  // A remark on a line of its own belongs to what follows it.
  let below = 0;
  return laid
    .toReversed()
    .map((line) => {
      if (line.tokens.length > 0) below = line.tokens[0]!.image === '}' ? line.depth + 1 : line.depth;
      return line.tokens.length > 0 ? line : { ...line, depth: below };
    })
    .toReversed();
}

/** The same is read: words, statements, and what is wrong. */
function isSame(one: string, other: string): boolean {
  const shape = (text: string) => {
    const { lines } = scan(text);
    const { statements, reports } = statementsOf(lines);
    return JSON.stringify([
      statements.map(({ tokens }) => tokens.map(({ name, image }) => [name, image])),
      reports.map(({ code, line }) => [code, line.number]),
      lines.map(({ tokens, slips }) => [tokens.length, slips.length]),
    ]);
  };
  return shape(one) === shape(other);
}

/** A text, laid out; the same text where it is. */
export function formatted(text: string): string {
  const ends = [...text.matchAll(/\r\n|\n|\r/gu)].map(([end]) => end);
  const whole = laidOut(text)
    .map(({ after }, index) => `${after}${ends[index] ?? ''}`)
    .join('');
  return text.startsWith('\ufeff') ? `\ufeff${whole}` : whole;
}

/** Where a text cannot be read, it is not laid out: the first place, and what is wrong there. Null: it can. */
export function unreadable(text: string): { readonly line: number; readonly message: Said } | null {
  const [problem] = parse(text).problems;
  return problem === undefined ? null : { line: problem.range.start.line, message: problem.message };
}

/** Why a text is not laid out. */
export function notLaidOut({ line, message }: NonNullable<ReturnType<typeof unreadable>>): Said {
  return say`Not laid out: line ${line + 1} cannot be read. ${message}`;
}

/** The edits that lay out a text, or the lines of a range of it. */
export function formatEdits(text: string, file: string, range: Range | null = null): Edit[] {
  return laidOut(text).flatMap(({ before, after }, line): Edit[] => {
    if (before === after || (range !== null && (line < range.start.line || line > range.end.line))) return [];
    // What is the same at both ends stays, and the cursor with it.
    const most = Math.min(before.length, after.length);
    let start = 0;
    while (start < most && before[start] === after[start]) start++;
    let end = 0;
    while (end < most - start && before.at(-1 - end) === after.at(-1 - end)) end++;
    const place = { start: { line, character: start }, end: { line, character: before.length - end } };
    return [{ source: { file, range: place }, text: after.slice(start, after.length - end) }];
  });
}

/** The edits when a line was ended or a block closed: of that line, and of those whose columns it shares. */
export function formatTyped(text: string, file: string, line: number): Edit[] {
  const lines = text.split(/\r\n|\n|\r/u);
  const head = (at: number) => /^\s*(\p{L}[\p{L}\d-]*)/u.exec(lines[at] ?? '')?.[1];
  const same = (at: number) => at === line || (head(at) !== undefined && head(at) === head(line));
  let [start, end] = [line, line];
  while (start > 0 && same(start - 1)) start--;
  while (end < lines.length - 1 && same(end + 1)) end++;
  const range = { start: { line: start, character: 0 }, end: { line: end, character: 0 } };
  return formatEdits(text, file, range);
}
