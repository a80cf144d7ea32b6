import type { Range } from '../model/source.ts';
import { english, type Said, say } from '../say/say.ts';
import type { File } from './generated/ast.ts';
import { inside, linesOf } from './inside.ts';
import { statementsOf } from './layout.ts';
import type { ProblemCode } from './problem-code.ts';
import { type ParserError, read } from './rules.ts';
import { type Scanned, scan } from './scan.ts';
import type { Statement } from './statement.ts';
import { syntaxMessage } from './syntax-messages.ts';
import { keyword, type Slip, type Token } from './token.ts';
import { type Harm, markUnread } from './unread.ts';

/** A problem of spelling or syntax, at its place. */
export interface SyntaxProblem {
  readonly code: ProblemCode;
  readonly message: Said;
  readonly range: Range;
}

/** Longest text that is read, in characters: some hundred thousand lines. */
const longestText = 4_000_000;

/** What the parser made of a text, for the parse after an edit. */
export interface Parsed {
  readonly ast: File;
  readonly problems: readonly SyntaxProblem[];
  /** Its lines, until another parse has taken them over. */
  scanned: Scanned | null;
}

/**
 * Parses one file. Never throws: what cannot be read is in `problems`, and costs the statement that it is
 * in, no other. After an error the statement is set aside and the text parsed again: the parser itself does not
 * recover, since it would guess across lines.
 *
 * `before`: what the text was parsed to before an edit. Its statements are taken over where they are the same, so its tree
 * must not be used anymore.
 */
export function parse(text: string, before: Parsed | null = null): Parsed {
  if (text.length > longestText) {
    const message = say`This file has ${text.length} characters; the longest that is read has ${longestText}. Split the declarations over several files.`;
    return {
      ast: emptyFile(),
      problems: [{ code: 'too-much-to-read', message, range: pointRange(0, 0) }],
      scanned: null,
    };
  }
  const scanned = scan(text, before?.scanned ?? null);
  if (before !== null) before.scanned = null;
  return parsedWith(read, scanned);
}

/** Parses the lines of a text with what reads its statements. */
export function parsedWith(readAll: typeof read, scanned: Scanned): Parsed {
  const {
    lines,
    source: { text },
  } = scanned;
  const { statements, reports } = statementsOf(lines);
  const damage = new Map<number, Harm>();
  const problems: SyntaxProblem[] = [];
  let rounds = Math.max(4, Math.min(60, Math.floor(3_000_000 / (text.length + 1))));
  for (;;) {
    const marked = markUnread(statements, damage);
    const { file, error } = readAll(marked);
    if (error === null || rounds-- === 0 || !setAside(error, marked, damage)) {
      if (error !== null) problems.push(syntaxProblem(error, marked), unreadRest(error));
      const flawed = lines.filter(({ isFlawed }) => isFlawed);
      const slips = [...flawed.flatMap((line) => line.slips), ...flawed.flatMap(({ cuts }) => cuts), ...reports];
      const spelling = [...slips.map(spellingProblem), ...(flawed.length === 0 ? [] : openQuotes(marked))];
      return { ast: file, problems: inOrder(text, [...spelling, ...withoutEcho(problems, spelling)]), scanned };
    }
    problems.push(syntaxProblem(error, marked));
  }
}

/** Marks the statement of an error as damaged. False where it is already, or cannot be found. */
function setAside(error: ParserError, statements: readonly Statement[], damage: Map<number, Harm>): boolean {
  // At the end of the text the last statement breaks off.
  const { tokens } = statements[error.statement] ?? statements[error.statement - 1] ?? {};
  if (tokens === undefined) return false;
  const { offset } = tokens[0]!;
  const keep = error.statement === statements.length ? 0 : error.index;
  const before = damage.get(offset);
  if (before !== undefined && before.keep === 0) return false;
  if (before?.resume !== undefined) {
    damage.set(offset, { keep: before.keep });
    return true;
  }
  const resume = before === undefined && keep > 1 ? resumeIn(tokens, keep) : -1;
  if (resume > keep) {
    damage.set(offset, { keep, resume });
    return true;
  }
  damage.set(offset, {
    keep: before === undefined ? keep : before.keep === 1 ? 0 : Math.min(keep, before.keep - 1, 1),
  });
  return true;
}

/** Where a head goes on behind what could not be read: `procedure p Title words for valve at bench {`. */
function resumeIn(statement: readonly Token[], keep: number): number {
  const isHead = ['procedure', 'job', 'stage', 'repair'].includes(statement[0]!.image);
  const goesOn = [
    'for',
    'at',
    'like',
    'of',
    'revision',
    'language',
    'written',
    'approved',
    'customer',
    'received',
    'order',
  ];
  return isHead ? statement.findIndex((token, index) => index > keep && goesOn.includes(keyword(token) ?? '')) : -1;
}

function syntaxProblem(error: ParserError, statements: readonly Statement[]): SyntaxProblem {
  const next = statements[error.statement]?.tokens[error.index + 1];
  return { ...syntaxMessage(error, next), range: tokenRange(errorPlace(error)) };
}

/** At a line's end the last word is marked: a mark behind the line is hard to see. */
function errorPlace({ token, previous }: ParserError): Token {
  const atEnd = token.name === 'EOL' || token.name === 'EOF' || token.image === '';
  return atEnd && previous !== undefined ? previous : token;
}

function spellingProblem({ line, column, length, code, message }: Slip): SyntaxProblem {
  return {
    code,
    message,
    range: { start: { line: line.number, character: column }, end: { line: line.number, character: column + length } },
  };
}

/** Where lines are set aside no more, what follows is not read: it is said, or a clean end would look like a clean file. */
function unreadRest(error: ParserError): SyntaxProblem {
  const below = { line: tokenRange(errorPlace(error)).end.line + 1, character: 0 };
  return {
    code: 'too-much-to-read',
    message: say`What follows has not been read yet: correct the lines above first.`,
    range: { start: below, end: { line: below.line, character: 1 } },
  };
}

/** The parser's message on a line that is already reported as misspelled adds nothing. */
function withoutEcho(problems: readonly SyntaxProblem[], spelling: readonly SyntaxProblem[]): SyntaxProblem[] {
  const lines = new Set(spelling.map(({ range }) => range.start.line));
  return problems.filter(({ range }) => !lines.has(range.start.line));
}

/** A text ends at its line, quoted or not, so that a missing quote does not swallow the file. */
function openQuotes(statements: readonly Statement[]): SyntaxProblem[] {
  return statements
    .flatMap(({ tokens }) => tokens.filter(({ isOpen }) => isOpen))
    .map((token) => ({
      code: 'quote-missing',
      message: say`The closing quote is missing: put " at the end of the text.`,
      range: tokenRange(token),
    }));
}

/** Range of a token; at least one character. */
function tokenRange({ line, column, endLine, endColumn }: Token): Range {
  const start = { line: line.number, character: column };
  const isEmpty = endLine === line && endColumn <= column;
  return { start, end: isEmpty ? { ...start, character: column + 1 } : { line: endLine.number, character: endColumn } };
}

function pointRange(line: number, character: number): Range {
  return { start: { line, character }, end: { line, character } };
}

function inOrder(text: string, problems: SyntaxProblem[]): SyntaxProblem[] {
  const seen = new Set<string>();
  const lines = problems.length === 0 ? [] : linesOf(text);
  return problems
    .map((problem) => ({ ...problem, range: inside(lines, problem.range) }))
    .filter(({ message, range }) => {
      const key = `${range.start.line}:${range.start.character}:${english(message)}`;
      return !seen.has(key) && seen.add(key);
    })
    .sort((a, b) => a.range.start.line - b.range.start.line || a.range.start.character - b.range.start.character);
}

function emptyFile(): File {
  return { $type: 'File', declarations: [] } as unknown as File;
}
