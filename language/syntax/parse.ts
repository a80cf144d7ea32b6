import type { ILexingError, IToken } from 'chevrotain';
import { LLStarLookaheadStrategy } from 'chevrotain-allstar';
import {
  createDefaultCoreModule,
  createDefaultSharedCoreModule,
  DefaultLexer,
  EmptyFileSystem,
  inject,
  type LangiumCoreServices,
  type LexerResult,
} from 'langium';
import type { Range } from '../model/source.ts';
import type { File } from './generated/ast.ts';
import { RebuildGeneratedModule, RebuildGeneratedSharedModule } from './generated/module.ts';
import { inside, linesOf } from './inside.ts';
import { keyword, lines } from './layout.ts';
import { type ParserError, syntaxMessage } from './syntax-messages.ts';
import { RebuildTokenBuilder } from './tokens.ts';
import { type Harm, statements } from './unread.ts';
import { RebuildValueConverter } from './values.ts';
import { withoutFragments } from './whole.ts';

/** A problem of spelling or syntax, at its place. */
export interface SyntaxProblem {
  readonly message: string;
  readonly range: Range;
}

export interface Parsed {
  readonly ast: File;
  readonly problems: readonly SyntaxProblem[];
}

/** Longest text that is read, in characters: some hundred thousand lines. */
const longestText = 4_000_000;

/** Langium's lexer with the token pass behind it. */
class LineLexer extends DefaultLexer {
  damage = new Map<number, Harm>();
  tokens: readonly IToken[] = [];
  private raw: LexerResult | null = null;

  /** Forgets the text of the last parse. */
  begin() {
    this.damage = new Map();
    this.raw = null;
  }

  override tokenize(text: string): LexerResult {
    this.raw ??= withoutRemarks(super.tokenize(text));
    const { tokens, reports } = lines(this.raw.tokens, this.definition, this.damage);
    this.tokens = tokens;
    return { ...this.raw, tokens, errors: [...this.raw.errors, ...reports] };
  }
}

/** `# remark`, as in other languages: reported, and what follows it on its line is not read. */
function withoutRemarks(raw: LexerResult): LexerResult {
  const ends = new Map<number, number>();
  const errors = raw.errors.filter((error) => {
    const line = error.line ?? 1;
    if (/^unexpected character: ->#/u.test(error.message) && !ends.has(line)) ends.set(line, error.offset);
    return error.offset <= (ends.get(line) ?? error.offset);
  });
  if (ends.size === 0) return raw;
  const isRead = (token: IToken) =>
    token.tokenType.name === 'EOL' || token.startOffset < (ends.get(token.startLine ?? 1) ?? Number.POSITIVE_INFINITY);
  return { ...raw, errors, tokens: raw.tokens.filter(isRead) };
}

let services: LangiumCoreServices | null = null;

/** Made at first use: building the parser takes a tenth of a second. */
function rebuildServices(): LangiumCoreServices {
  if (services === null) {
    const shared = inject(createDefaultSharedCoreModule(EmptyFileSystem), RebuildGeneratedSharedModule);
    services = inject(createDefaultCoreModule({ shared }), RebuildGeneratedModule, {
      parser: {
        TokenBuilder: () => new RebuildTokenBuilder(),
        Lexer: (all: LangiumCoreServices) => new LineLexer(all),
        // An error lists what could have followed; with two hundred words that may be names, to a depth of three, it
        // took 20 ms each. One token ahead is all that our messages say.
        ParserConfig: () => ({
          recoveryEnabled: false,
          maxLookahead: 1,
          lookaheadStrategy: new LLStarLookaheadStrategy({ logging: () => {} }),
        }),
        ValueConverter: () => new RebuildValueConverter(),
      },
    });
    shared.ServiceRegistry.register(services);
  }
  return services;
}

/**
 * Parses one file. Never throws: what cannot be read is in `problems`, and costs the statement that it is
 * in, no other. After an error the statement is set aside and the text parsed again: the parser itself does not
 * recover, since it would guess across lines.
 */
export function parse(text: string): Parsed {
  if (text.length > longestText) {
    const message = `This file has ${text.length} characters; the longest that is read has ${longestText}. Split the declarations over several files.`;
    return { ast: emptyFile(), problems: [{ message, range: pointRange(0, 0) }] };
  }
  const { parser } = rebuildServices();
  const lexer = parser.Lexer as LineLexer;
  lexer.begin();
  const problems: SyntaxProblem[] = [];
  let rounds = Math.max(4, Math.min(60, Math.floor(3_000_000 / (text.length + 1))));
  for (;;) {
    const result = parser.LangiumParser.parse<File>(text);
    const errors = result.parserErrors as readonly ParserError[];
    const error = errors[0];
    const found = statementOf(lexer.tokens);
    if (error === undefined || rounds-- === 0 || !setAside(error, lexer, found)) {
      if (error !== undefined) problems.push(syntaxProblem(error, lexer.tokens), unreadRest(error));
      const spelling = [...result.lexerErrors.map(lexingProblem), ...openQuotes(lexer.tokens)];
      return {
        ast: withoutFragments(result.value),
        problems: inOrder(text, [...spelling, ...withoutEcho(problems, spelling)]),
      };
    }
    problems.push(syntaxProblem(error, lexer.tokens));
  }
}

/** Marks the statement of an error as damaged. False where it is already, or cannot be found. */
function setAside(error: ParserError, lexer: LineLexer, found: ReadonlyMap<IToken, IToken[]>): boolean {
  const culprit = error.token;
  const statement = found.get(culprit) ?? found.get(error.previousToken!);
  if (statement === undefined) return false;
  const offset = statement[0]!.startOffset;
  const keep = Math.max(0, statement.indexOf(culprit));
  const before = lexer.damage.get(offset);
  if (before !== undefined && before.keep === 0) return false;
  if (before?.resume !== undefined) {
    lexer.damage.set(offset, { keep: before.keep });
    return true;
  }
  const resume = before === undefined && keep > 1 ? resumeIn(statement, keep) : -1;
  if (resume > keep) {
    lexer.damage.set(offset, { keep, resume });
    return true;
  }
  lexer.damage.set(offset, {
    keep: before === undefined ? keep : before.keep === 1 ? 0 : Math.min(keep, before.keep - 1, 1),
  });
  return true;
}

/** Where a head goes on behind what could not be read: `procedure p Title words for valve at bench {`. */
function resumeIn(statement: readonly IToken[], keep: number): number {
  const isHead = ['procedure', 'job', 'stage', 'repair'].includes(statement[0]!.image);
  const goesOn = ['for', 'at', 'like', 'of', 'revision', 'written', 'approved', 'customer', 'received'];
  return isHead ? statement.findIndex((token, index) => index > keep && goesOn.includes(keyword(token) ?? '')) : -1;
}

/** The statement that each token is in. */
function statementOf(tokens: readonly IToken[]): Map<IToken, IToken[]> {
  return new Map(statements(tokens).flatMap((statement) => statement.map((token) => [token, statement] as const)));
}

function syntaxProblem(error: ParserError, tokens: readonly IToken[]): SyntaxProblem {
  const next = tokens[tokens.indexOf(error.token) + 1];
  return { message: syntaxMessage(error, next), range: tokenRange(errorPlace(error)) };
}

/** At a line's end the last word is marked: a mark behind the line is hard to see. */
function errorPlace(error: ParserError): IToken {
  const before = error.previousToken;
  const atEnd =
    error.token.tokenType.name === 'EOL' || error.token.tokenType.name === 'EOF' || error.token.image === '';
  return atEnd && before !== undefined ? before : error.token;
}

function lexingProblem(error: ILexingError): SyntaxProblem {
  const line = (error.line ?? 1) - 1;
  const character = (error.column ?? 1) - 1;
  const unexpected = /^unexpected character: ->(.*)<- /su.exec(error.message);
  const message = unexpected === null ? `${error.message}.` : unexpectedCharacter(unexpected[1]!);
  return {
    message: capital(message),
    range: { start: { line, character }, end: { line, character: character + error.length } },
  };
}

/** Where lines are set aside no more, what follows is not read: it is said, or a clean end would look like a clean file. */
function unreadRest(error: ParserError): SyntaxProblem {
  const { range } = syntaxProblem(error, []);
  const below = { line: range.end.line + 1, character: 0 };
  return {
    message: 'What follows has not been read yet: correct the lines above first.',
    range: { start: below, end: { line: below.line, character: 1 } },
  };
}

/** The parser's message on a line that is already reported as misspelled adds nothing. */
function withoutEcho(problems: readonly SyntaxProblem[], spelling: readonly SyntaxProblem[]): SyntaxProblem[] {
  const lines = new Set(spelling.map(({ range }) => range.start.line));
  return problems.filter(({ range }) => !lines.has(range.start.line));
}

/** A text ends at its line, quoted or not, so that a missing quote does not swallow the file. */
function openQuotes(tokens: readonly IToken[]): SyntaxProblem[] {
  return tokens
    .filter((token) => token.tokenType.name === 'STRING' && !/^"[^"]*"$/u.test(token.image))
    .map((token) => ({
      message: 'The closing quote is missing: put " at the end of the text.',
      range: tokenRange(token),
    }));
}

function unexpectedCharacter(text: string): string {
  if (text.startsWith('#')) return 'a remark begins with //: write // instead of #.';
  if (/[“”„«»]/u.test(text)) return 'curly quotes are not read: use straight ones, "…".';
  if (/[–—]/u.test(text)) return 'a long dash is not read: write .. between the ends of a range, or - inside a name.';
  return `${text} has no meaning here: delete it, or put it inside "…".`;
}

function capital(text: string) {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** Range of a token on one line; at least one character. */
function tokenRange(token: IToken): Range {
  const start = { line: (token.startLine || 1) - 1, character: (token.startColumn || 1) - 1 };
  const end = { line: (token.endLine || token.startLine || 1) - 1, character: token.endColumn || start.character + 1 };
  return {
    start,
    end:
      end.line === start.line && end.character <= start.character
        ? { line: start.line, character: start.character + 1 }
        : end,
  };
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
      const key = `${range.start.line}:${range.start.character}:${message}`;
      return !seen.has(key) && seen.add(key);
    })
    .sort((a, b) => a.range.start.line - b.range.start.line || a.range.start.character - b.range.start.character);
}

function emptyFile(): File {
  return { $type: 'File', declarations: [] } as unknown as File;
}
