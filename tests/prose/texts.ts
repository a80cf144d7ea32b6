/** The texts that are searched for phrases: pages, string literals and comments, each piece with the line it begins on. */
import { globSync, readFileSync } from 'node:fs';

export interface Piece {
  readonly file: string;
  readonly line: number;
  readonly text: string;
}

/** Pages of prose. */
const pages = ['*.md', '{extension,language,procedures,server,tests}/**/*.md'];
/** Programs: their comments, and the messages, help texts and fixed words in their string literals. */
const programs = ['{extension,language,server,tests}/**/*.ts', 'language/**/*.langium'];
/** The title and the texts that the editor shows from the manifest. */
const manifests = ['package.json'];

/** Strings in other languages, the spellings that a suggestion listens for, and the phrases themselves. */
const foreign =
  /^language\/i18n\/(?:messages\/)?(?:de|es)(?:\/[a-z]+)?\.ts$|^tests\/prose\/phrases(\.test)?\.ts$|^language\/(diagnostics\/suspect-words|quantities\/near-units)\.ts$/u;

/** Every piece of text in the project that is searched. Runs in its top folder. */
export function piecesToSearch(): Piece[] {
  return [
    ...among(pages, () => ['page']),
    ...among(manifests, () => ['strings']),
    ...among(programs, (file) =>
      foreign.test(file) ? ['comments'] : file.endsWith('.test.ts') ? ['comments', 'titles'] : ['comments', 'strings'],
    ),
  ];
}

function among(patterns: readonly string[], kindsOf: (file: string) => readonly Kind[]): Piece[] {
  return globSync([...patterns])
    .map((file) => file.replaceAll('\\', '/'))
    .filter((file) => !/generated|node_modules|^tests\/workbench\/host\//u.test(file))
    .flatMap((file) => kindsOf(file).flatMap((kind) => piecesIn(file, readFileSync(file, 'utf8'), kind)));
}

export function piecesIn(file: string, text: string, kind: Kind): Piece[] {
  switch (kind) {
    case 'page':
      return matches(file, withoutExamples(text), /^.*\S.*$/gmu);
    case 'strings':
      return matches(file, withoutCode(text), literal);
    case 'titles':
      return matches(file, withoutCode(text), title);
    case 'comments':
      return matches(file, text, comment);
  }
}

/** `titles`: of the strings of a test, which are mostly text of the language, only the names of tests. */
type Kind = 'page' | 'strings' | 'titles' | 'comments';

const literal = /'(?:[^'\\\n]|\\.)*'|"(?:[^"\\\n]|\\.)*"|`[^`]*`/gu;
const title = new RegExp(`(?:${literal.source})(?=,\\s*(?:async )?\\(?[^()]*\\)? =>)`, literal.flags);
const comment = /\/\*\*?[\s\S]*?\*\/|(?<=^|\s)\/\/.*$/gmu;

function matches(file: string, text: string, pattern: RegExp): Piece[] {
  return [...text.matchAll(pattern)].map((match) => ({
    file,
    line: text.slice(0, match.index).split('\n').length,
    text: match[0],
  }));
}

/** Code blocks are the language's. */
function withoutExamples(page: string): string {
  return page.replace(/^(```|~~~)[\s\S]*?^\1$/gmu, blank).replace(/^ {4}.*$/gmu, blank);
}

/** String literals without comments around them and expressions in them. */
function withoutCode(source: string): string {
  return source.replace(comment, blank).replace(/\$\{[^{}`]*\}/gu, blank);
}

/** Nothing, on as many lines. */
function blank(text: string): string {
  return text.replace(/[^\n]/gu, ' ');
}
