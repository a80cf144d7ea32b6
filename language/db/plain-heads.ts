import { declarationId } from '../semantics/declaration-id.ts';
import { bounds } from '../syntax/bounds.ts';
import { reserved } from '../syntax/keywords.ts';
import type { Declaration } from './declarations.ts';

const name = '[A-Za-z][A-Za-z0-9_]*(?:-[A-Za-z0-9_]+)*';
const words = '"[^"]*"';
const language = '[A-Za-z]+';
const label = `(?:${words}|${name}|[0-9]+(?:\\.[0-9]+)?)`;
const head = new RegExp(
  `^(?:(?<plain>shop|family) (?<n1>${name})(?: ${words})?(?:(?<=^shop .*) language ${language})?` +
    `|sequence (?<n2>${name})(?: ${words})?(?: with ${name}(?:; ?${name})*)?` +
    `|procedure (?<n3>${name})(?: ${words})?(?<more>(?: (?:(?:for|at|like) ${name}|revision ${label}|language ${language}|written by ${words}` +
    `|approved by ${words}(?: on [0-9]{4}-[0-9]{2}-[0-9]{2})?))*)) \\{$`,
  'u',
);
const fact = new RegExp(`(?:${words})|(for|like) (${name})|revision (${label})`, 'gu');
const partNumber = new RegExp(`^number (${label})(?: ${words})?(?: \\{)?$`, 'u');

/** Begins the head of a declaration, or goes on with one. */
const atMargin = /^(?:shop|family|procedure|sequence|for|at|like|revision|language|written|approved|\{)/u;
const begins = /^(?:shop|family|procedure|sequence)\b/u;
/** Is written at the margin, or where a part number is, and nowhere else. */
const misplaced = /^(?:shop|family|procedure|job)\b/u;

const inWords = /"[^"]*"?|\/\/.*/gu;
const unknown = /[^\x20-\x7e\n\r\t\u00a0-\u024f\u03a9\u03bc\u2010-\u2027\u2030-\u205e\u2100-\u22ff]/u;

/**
 * What a file declares, where all of it is written so plainly that it can be seen without parsing it: a folder has thousands, and
 * what is in most is worked out later, or elsewhere. Null for any other file.
 */
export function plainHeads(uri: string, text: string): Declaration[] | null {
  if (unknown.test(text) || !text.includes('{')) return null;
  const found = new Heads(uri);
  for (const line of text.split(/\r\n|\n|\r/u)) if (!found.read(line)) return null;
  return found.end();
}

class Heads {
  private readonly uri: string;
  private readonly found: Declaration[] = [];
  private readonly ordinals = new Map<string, number>();
  private depth = 0;
  /** The head that is read now, as far as it goes. */
  private head = '';
  private numbers: string[] = [];

  constructor(uri: string) {
    this.uri = uri;
  }

  /** Null where a block does not end. */
  end(): Declaration[] | null {
    return this.depth === 0 && this.head === '' ? this.found : null;
  }

  /** False where a line is not plain. */
  read(line: string): boolean {
    const isBare = !line.includes('"') && !line.includes('//');
    const full = isBare ? line : line.replace(inWords, (one) => (one.startsWith('"') ? one : ''));
    const bare = (isBare ? line : full.replace(inWords, '""')).trim();
    if (bare === '') return true;
    if (line.length > bounds.statement) return false;
    if (this.depth === 0) return this.readHead(full.trim(), bare);
    if (misplaced.test(bare)) return false;
    if (/^sequence\b/u.test(bare) && this.depth !== 1) return false;
    if (/^(?:stage|repair)\b/u.test(bare) && this.depth !== 1) return false;
    if (this.isNumber(bare) && !this.readNumber(spaced(full.trim()))) return false;
    for (const sign of bare) {
      if (sign === '{') this.depth++;
      else if (sign === '}' && --this.depth < 0) return false;
    }
    return this.depth < bounds.depth;
  }

  private readHead(full: string, bare: string): boolean {
    if (!atMargin.test(bare) || begins.test(bare) !== (this.head === '')) return false;
    this.head += `${this.head === '' ? '' : ' '}${spaced(full)}`;
    if (!bare.endsWith('{')) return true;
    const known = head.exec(this.head)?.groups;
    if (known === undefined) return false;
    const { plain, n1, n2, n3, more } = known;
    const named = n1 ?? n2 ?? n3!;
    if (reserved.includes(named) || named.length > bounds.name) return false;
    const kind =
      plain === 'shop' ? 'Shop' : plain === 'family' ? 'Family' : n2 === undefined ? 'Procedure' : 'Sequence';
    const ordinal = this.ordinals.get(`${kind} ${named}`) ?? 0;
    this.ordinals.set(`${kind} ${named}`, ordinal + 1);
    this.numbers = [];
    this.found.push({
      id: declarationId(this.uri, kind, named, ordinal),
      name: named,
      numbers: this.numbers,
      ...factsIn(more ?? ''),
    });
    this.head = '';
    this.depth = 1;
    return true;
  }

  /** In the steps it is a word like others. */
  private isNumber(bare: string): boolean {
    return this.depth === 1 ? /\bnumber\b/u.test(bare) : /^number\b/u.test(bare);
  }

  private readNumber(full: string): boolean {
    const number = partNumber.exec(full)?.[1];
    const isOfProcedure = this.depth === 1 && this.found.at(-1)!.id.includes('\0Procedure\0');
    if (number === undefined || !isOfProcedure || reserved.includes(number)) return false;
    this.numbers.push(unquoted(number));
    return true;
  }
}

/** With one space wherever there are several, but for words in quotes. */
function spaced(line: string): string {
  return line.replace(/"[^"]*"|[ \t]+/gu, (one) => (one.startsWith('"') ? one : ' '));
}

function factsIn(more: string): Pick<Declaration, 'like' | 'family' | 'revision'> {
  const facts = { like: null, family: null, revision: null } as Record<'like' | 'family' | 'revision', string | null>;
  for (const [, word, named, revision] of more.matchAll(fact)) {
    if (word === 'like') facts.like ??= named!;
    else if (word === 'for') facts.family ??= named!;
    else if (revision !== undefined) facts.revision ??= unquoted(revision);
  }
  return facts;
}

function unquoted(text: string): string {
  return text.replace(/^"|"$/gu, '');
}
