/** What somebody reads goes through the tag that puts it into their language: English anywhere else is found here. */
import { globSync, readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { parseAst } from 'vitest/node';
import { drawnAs } from '../../language/model/drawn-as.ts';
import { units } from '../../language/quantities/unit-table.ts';
import { typeOf } from '../../language/syntax/token.ts';
import { phrases } from '../../language/syntax/verbs/phrases.ts';

interface Node {
  readonly type: string;
  readonly start: number;
  readonly value?: unknown;
  readonly tag?: { readonly name?: string };
  readonly callee?: { readonly name?: string; readonly property?: { readonly name?: string } };
  readonly quasis?: readonly { readonly value: { readonly cooked: string } }[];
}

function isNode(value: unknown): value is Node {
  return typeof value === 'object' && value !== null && 'type' in value;
}

/** Tags and functions whose texts are translated. */
const translates = new Set(['say', 'worded', 'term', 'stateTerm', 'propertyTerm']);

/** What is for those who work on Handtight, or for a library that takes it as it is. */
const passes = new Set(['Error', 'error', 'warn', 'setAttribute', 'html']);

/** Two words after one another, or three with figures and names between them. */
const prose = /\p{L}{2,}[,:;]? \(?\p{L}{2,}|(?:\p{L}{2,}[^\p{L}]+\{\}[^\p{L}]*){2}\p{L}{2,}/u;

/** The texts of a source that look like prose and are put into no language. */
function unsaidIn(source: string): string[] {
  const found: string[] = [];
  const walk = (node: Node) => {
    if (/^(?:Import|TSLiteralType|TSTypeAlias|ExportAll)/u.test(node.type)) return;
    const name = node.callee?.name ?? node.callee?.property?.name ?? node.tag?.name;
    const isSaid = name !== undefined && translates.has(name);
    if (isSaid && node.type === 'CallExpression') return;
    if (name !== undefined && passes.has(name)) return;
    const text =
      node.type === 'Literal' && typeof node.value === 'string'
        ? node.value
        : node.type === 'TemplateLiteral'
          ? node.quasis!.map(({ value }) => value.cooked).join('{}')
          : '';
    if (prose.test(text)) found.push(text);
    for (const [key, value] of Object.entries(node)) {
      if (isSaid && key === 'quasi') {
        for (const inside of (value as { expressions: readonly Node[] }).expressions) walk(inside);
        continue;
      }
      if (Array.isArray(value)) value.filter(isNode).forEach(walk);
      else if (isNode(value)) walk(value);
    }
  };
  walk(parseAst(source, { lang: 'ts' }) as unknown as Node);
  return found;
}

const folders = '{language/{calculator,ide,recommendations,documents/specs},server/{cli,lsp,mcp,host/print}}';

/** Texts that are in no language but their own, by file. */
const ofTheirOwn: readonly { readonly files: RegExp; readonly texts: RegExp; readonly why: string }[] = [
  { files: /\/verb-words\.ts$/u, texts: /^[a-z]/u, why: 'examples of steps, which are in the language of the files' },
  { files: /\/snippets\.ts$/u, texts: /\$\{\d/u, why: 'declarations to write over' },
  { files: /\/(?:check|specs)-schema\.ts$/u, texts: /^[A-Z]/u, why: 'of data, for those who write programs' },
  { files: /\/calculator\//u, texts: /^[a-z-]+=/u, why: 'figures as they are typed' },
  {
    files: /\/cli\/main\.ts$/u,
    texts: /^handtight: The answer|^the disk that/u,
    why: 'said when nothing else can be loaded',
  },
  { files: /\/lsp\/(?:canceled|start)\.ts$/u, texts: /^The request was canceled\.$/u, why: 'no editor shows it' },
  {
    files: /\/page\/page\.ts$/u,
    texts: /^\nbody \{|^<!doctype/u,
    why: 'a style sheet, and a page around what is said',
  },
  { files: /\/hover\.ts$/u, texts: /^<rect/u, why: 'a picture' },
  { files: /\/report-github\.ts$/u, texts: /^file=/u, why: 'a command to a program' },
];

/** Names of cases and of properties, which nobody reads: their words are elsewhere. */
const cases = new Set([
  ...['settles out', 'too thin', 'too thick', 'too coarse', 'left out', 'no reading', 'no shim', 'changed since'],
  ...['no limit', 'no aim', 'no rate', 'other kind', 'several parts', 'in time', 'at once', 'stays with', 'the unit'],
  ...['to spec', 'to limit', 'by spec', 'to bring', 'as words', 'at limit', 'at station', 'worked out', 'or digits'],
  ...['under pressure', 'clean outside', 'signed off', 'as one'],
]);

/** Words of the files' language, kinds of quantities and units: a text of nothing else is no prose. */
const words = new Set([
  ...[...typeOf.keys()].flatMap((word) => word.split(' ')),
  ...units.flatMap(({ name, kind }) => [...name.split(' '), ...kind.split(' ')]),
  ...phrases.flatMap(({ said }) => said.flatMap((one) => one.split(' '))),
  ...drawnAs,
  // Of a job: words there, and names elsewhere.
  ...['brought', 'taken-in', 'done', 'waiting', 'exchange'],
]);
const isOfLanguage = (text: string) => (text.match(/[\p{L}-]+/gu) ?? []).every((word) => words.has(word));

const sources = globSync(`${folders}/**/*.ts`)
  .map((file) => file.replaceAll('\\', '/'))
  .filter((file) => !/\.test\.ts$|\.d\.ts$/u.test(file))
  .sort()
  .flatMap((file) => unsaidIn(readFileSync(file, 'utf8')).map((text) => ({ file, text })))
  .filter(({ text }) => !cases.has(text) && !isOfLanguage(text));

it('every text of the editor and the command is said in the language of its reader', () => {
  const unsaid = sources.filter(
    ({ file, text }) => !ofTheirOwn.some(({ files, texts }) => files.test(file) && texts.test(text)),
  );
  expect(unsaid.map(({ file, text }) => `${file}: ${text}`)).toEqual([]);
});

it('what is let through is still there', () => {
  const idle = ofTheirOwn.filter(
    ({ files, texts }) => !sources.some(({ file, text }) => files.test(file) && texts.test(text)),
  );
  expect(idle.map(({ why }) => why)).toEqual([]);
});
