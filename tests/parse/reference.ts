/**
 * Langium's own lexer and parser for the grammar. The program reads with a scanner and a parser of its own, which must give
 * the same. Tests that look into the concrete syntax take it from here.
 */
import type { IRecognitionException, IToken, TokenType } from 'chevrotain';
import { LLStarLookaheadStrategy } from 'chevrotain-allstar';
import {
  type AstNode,
  type CstNode,
  createDefaultCoreModule,
  createDefaultSharedCoreModule,
  DefaultLexer,
  DefaultTokenBuilder,
  DefaultValueConverter,
  EmptyFileSystem,
  type Grammar,
  type GrammarAST,
  inject,
  isAstNode,
  type LangiumCoreServices,
  type LexerResult,
  type TokenBuilderOptions,
  type ValueType,
} from 'langium';
import { numberPattern, quantityPattern } from '../../language/quantities/index.ts';
import { type File, reflection } from '../../language/syntax/generated/ast.ts';
import { RebuildGeneratedModule, RebuildGeneratedSharedModule } from '../../language/syntax/generated/module.ts';
import { parsedWith, type SyntaxProblem } from '../../language/syntax/parse.ts';
import type { ParserError } from '../../language/syntax/rules.ts';
import { endless, finished, type Scanned, unexpectedCharacter } from '../../language/syntax/scan.ts';
import type { Statement } from '../../language/syntax/statement.ts';
import { endOfText, type Line, Token, typeOf } from '../../language/syntax/token.ts';

/** Order of terminals: what can begin like another comes before it. */
const order = ['WS', 'COMMENT', 'EOL', 'DATE', 'QUANTITY', 'NUMBER', 'STRING', 'ID', 'UNREAD'];

/** Builds the tokens with QUANTITY and NUMBER taken from the table of units. */
class TokenBuilder extends DefaultTokenBuilder {
  override buildTokens(grammar: Grammar, options?: TokenBuilderOptions) {
    const tokens = super.buildTokens(grammar, options) as TokenType[];
    const digits = Array.from('0123456789');
    for (const token of tokens) {
      const pattern = token.name === 'QUANTITY' ? quantityPattern : token.name === 'NUMBER' ? numberPattern : null;
      if (pattern === null) continue;
      const sticky = new RegExp(pattern, 'uy');
      const match = (text: string, offset: number) => {
        endless.lastIndex = offset;
        sticky.lastIndex = offset;
        return sticky.exec(text) ?? (token.name === 'NUMBER' ? endless.exec(text) : null);
      };
      Object.assign(token, { PATTERN: match, LINE_BREAKS: false, start_chars_hint: digits });
    }
    const keywords = tokens.filter((token) => !order.includes(token.name));
    return [...keywords, ...order.flatMap((name) => tokens.filter((token) => token.name === name))];
  }
}

/** Text in quotes stays as written. */
class ValueConverter extends DefaultValueConverter {
  protected override runConverter(rule: GrammarAST.AbstractRule, input: string, node: CstNode): ValueType {
    if (rule.name === 'STRING') return input.replace(/^"/u, '').replace(/"$/u, '');
    return super.runConverter(rule, input, node);
  }
}

/** Langium's lexer; the parser gets the tokens that the token pass has made of its own. */
class Lexer extends DefaultLexer {
  made: IToken[] = [];

  raw(text: string): LexerResult {
    return super.tokenize(text);
  }

  override tokenize(): LexerResult {
    return { tokens: this.made, errors: [], hidden: [] };
  }

  typeOf(name: string): TokenType {
    return (this.definition as Record<string, TokenType>)[name]!;
  }
}

let services: LangiumCoreServices | null = null;

function langium() {
  if (services === null) {
    const shared = inject(createDefaultSharedCoreModule(EmptyFileSystem), RebuildGeneratedSharedModule);
    services = inject(createDefaultCoreModule({ shared }), RebuildGeneratedModule, {
      parser: {
        TokenBuilder: () => new TokenBuilder(),
        Lexer: (all: LangiumCoreServices) => new Lexer(all),
        ParserConfig: () => ({
          recoveryEnabled: false,
          maxLookahead: 1,
          lookaheadStrategy: new LLStarLookaheadStrategy({ logging: () => {} }),
        }),
        ValueConverter: () => new ValueConverter(),
      },
    });
    shared.ServiceRegistry.register(services);
  }
  return { parser: services.parser.LangiumParser, lexer: services.parser.Lexer as Lexer };
}

/** Parses as the program does, with Langium's lexer and parser: the nodes of the tree have a `$cstNode`. */
export function langiumParse(text: string): { readonly ast: File; readonly problems: readonly SyntaxProblem[] } {
  return parsedWith((statements) => readWithLangium(text, statements), scanWithLangium(text));
}

function scanWithLangium(text: string): Scanned {
  const source = { text };
  const { tokens, errors } = langium().lexer.raw(text);
  const starts = [0, ...[...text.matchAll(/\r\n|\n|\r/gu)].map((end) => end.index + end[0].length)];
  const lines = starts.map((offset, number): Line => {
    return { source, offset, number, tokens: [], isFlawed: false, slips: [], cuts: [], row: null };
  });
  const remarks = new Map<number, number>();
  for (const error of errors) {
    const number = error.line! - 1;
    const line = lines[number]!;
    if (remarks.has(number)) continue;
    if (text[error.offset] === '#') remarks.set(number, error.offset);
    const message = unexpectedCharacter(String.fromCodePoint(text.codePointAt(error.offset)!));
    line.slips = [
      ...line.slips,
      { line, column: error.offset - line.offset, length: error.length, code: 'stray-character', message },
    ];
  }
  for (const { image, tokenType, startOffset, startLine } of tokens) {
    const line = lines[startLine! - 1]!;
    if (tokenType.name === 'EOL' || startOffset > (remarks.get(startLine! - 1) ?? startOffset)) continue;
    const column = startOffset - line.offset;
    const { name } = tokenType;
    line.tokens.push(new Token(name, typeOf.get(name)!, image, line, column, line, column + image.length));
  }
  return { source, lines: lines.map(finished) };
}

type LangiumError = IRecognitionException & { readonly previousToken?: IToken };

function readWithLangium(text: string, statements: readonly Statement[]): { file: File; error: ParserError | null } {
  const { parser, lexer } = langium();
  const places = new Map<IToken, { readonly token: Token; readonly statement: number; readonly index: number }>();
  lexer.made = statements.flatMap(({ tokens }, statement) =>
    tokens.map((token, index) => {
      const made = langiumToken(token, lexer.typeOf(token.name));
      places.set(made, { token, statement, index });
      return made;
    }),
  );
  const { value, parserErrors } = parser.parse<File>(text);
  const file = withoutFragments(value);
  const [error] = parserErrors as LangiumError[];
  if (error === undefined) return { file, error: null };
  const atEnd = { token: endOfText, statement: statements.length, index: 0 };
  const { previousToken } = error;
  return {
    file,
    error: {
      ...(places.get(error.token) ?? atEnd),
      ...(previousToken === undefined ? {} : { previous: places.get(previousToken)?.token ?? endOfText }),
      rule: error.context.ruleStack.at(-1)?.replace(/\u200b$/u, '') ?? '',
      wanted: /Expecting token of type '([^']+)'/u.exec(error.message)?.[1] ?? null,
    },
  };
}

function langiumToken(token: Token, tokenType: TokenType): IToken {
  return {
    image: token.image,
    tokenType,
    tokenTypeIdx: tokenType.tokenTypeIdx!,
    startOffset: token.offset,
    endOffset: token.end - 1,
    startLine: token.line.number + 1,
    endLine: token.endLine.number + 1,
    startColumn: token.column + 1,
    endColumn: token.endColumn,
  };
}

/** What the generated types ask for, and the grammar does not: one of several ways of writing has it. */
const mayLack: ReadonlyMap<string, string> = new Map([
  ['SpecValue', 'more'],
  ['Tolerance', 'both'],
  ['Minus', 'both'],
]);

/** Takes out of a tree what a broken line left without something that the grammar asks for. */
function withoutFragments(file: File): File {
  const nodes: AstNode[] = [file];
  for (const node of nodes) nodes.push(...childrenOf(node));
  // Parts come after what they are part of, so that a fragment is known before its container is judged.
  const fragments = new Set<AstNode>();
  for (const node of nodes.reverse()) {
    const values = node as unknown as Record<string, unknown>;
    for (const { name, optional } of propertiesOf(node)) {
      const value = values[name];
      if (Array.isArray(value)) {
        const whole = value.filter((one) => !fragments.has(one));
        if (whole.length < value.length) values[name] = whole;
        if (whole.length === 0 && !optional) fragments.add(node);
      } else if (isAstNode(value) && fragments.has(value)) {
        values[name] = undefined;
        if (!optional) fragments.add(node);
      } else if (value === undefined && !optional) fragments.add(node);
    }
  }
  return file;
}

function propertiesOf(node: AstNode) {
  const free = mayLack.get(node.$type);
  return Object.values(reflection.getTypeMetaData(node.$type).properties).map(({ name, optional }) => ({
    name,
    optional: optional === true || name === free,
  }));
}

function childrenOf(node: AstNode): AstNode[] {
  const values = node as unknown as Record<string, unknown>;
  return propertiesOf(node).flatMap(({ name }) => [values[name]].flat().filter(isAstNode));
}
