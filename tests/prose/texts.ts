/** The texts that are searched for phrases: pages, string literals and comments, each piece with the line it begins on. */
import { globSync, readFileSync } from 'node:fs';

export interface Piece {
  readonly file: string;
  readonly line: number;
  readonly text: string;
}

/** Pages of prose. */
const pages = ['*.md', 'extension/**/*.md', 'language/**/*.md', 'procedures/**/*.md'];
/** What the editor shows from the manifest. */
const manifests = ['package.json'];
/** Messages, help texts and fixed words: string literals. */
const messages = [
  'language/{grammar,resolve,settings,work-out,certificate}/*.ts',
  'language/i18n/en.ts',
  'server/{cli,print,workspace}/*.ts',
  'extension/*.ts',
];
/** Source whose comments have been gone over. Add a folder once its comments are clean. */
const comments = ['language/{grammar,resolve}/*.ts', 'server/cli/*.ts', 'tests/prose/*.ts'];

const among = (patterns: readonly string[], kind: Kind) =>
  globSync([...patterns])
    .filter((file) => !/\.test\.ts$|generated|node_modules|prose[\\/]phrases/u.test(file))
    .flatMap((file) => piecesIn(file.replaceAll('\\', '/'), readFileSync(file, 'utf8'), kind));

/** Every piece of text in the project that is searched. Runs in its top folder. */
export function piecesToSearch(): Piece[] {
  return [
    ...among(pages, 'page'),
    ...among(manifests, 'messages'),
    ...among(messages, 'messages'),
    ...among(comments, 'comments'),
  ];
}

export function piecesIn(file: string, text: string, kind: Kind): Piece[] {
  switch (kind) {
    case 'page':
      return matches(file, withoutExamples(text), /^.*\S.*$/gmu);
    case 'messages':
      return matches(file, withoutCode(text), literal);
    case 'comments':
      return matches(file, text, comment);
  }
}

type Kind = 'page' | 'messages' | 'comments';

const literal = /'(?:[^'\\\n]|\\.)*'|"(?:[^"\\\n]|\\.)*"|`[^`]*`/gu;
const comment = /\/\*\*?[\s\S]*?\*\/|(?<=^|\s)\/\/.*$/gmu;

function matches(file: string, text: string, pattern: RegExp): Piece[] {
  return [...text.matchAll(pattern)].map((match) => ({
    file,
    line: text.slice(0, match.index).split('\n').length,
    text: match[0],
  }));
}

/** Code blocks are the language's, and the title of a rule and the list of rules repeat what the rule says of itself. */
function withoutExamples(page: string): string {
  return page
    .replace(/^(```|~~~)[\s\S]*?^\1$/gmu, blank)
    .replace(/^ {4}.*$/gmu, blank)
    .replace(/^.* \*(Error|Warning|Hint)\.\*$|^\| \[[a-z-]+\]\(.*$/gmu, blank);
}

/** String literals without comments around them and expressions in them. */
function withoutCode(source: string): string {
  return source.replace(comment, blank).replace(/\$\{[^{}`]*\}/gu, blank);
}

/** Nothing, on as many lines. */
function blank(text: string): string {
  return text.replace(/[^\n]/gu, ' ');
}
