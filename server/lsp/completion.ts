/** Completion: names with their words, verbs where a step begins, words of the language where they fit. */
import { type CompletionItem, CompletionItemKind, InsertTextFormat } from 'vscode-languageserver-types';
import type { CheckResult } from '../../language/db/workspace.ts';
import { spellingOf, verbs, verbTable } from '../../language/syntax/verbs/index.ts';
import { wantedAt } from './completion-context.ts';
import { type Place, placeAt } from './place.ts';
import { allDeclared, type Declared, inScope, scopeAt } from './scope.ts';
import { snippets } from './snippets.ts';

/** A rule's name and what it says, for `allow`. */
export interface RuleName {
  readonly code: string;
  readonly title: string;
}

/** What completion needs besides the text and the check. */
export interface CompletionOptions {
  readonly rules: readonly RuleName[];
  /** Text of any file of the workspace. */
  readonly textOf: (uri: string) => string | null;
  /** The client puts the cursor into the gaps of a snippet. */
  readonly snippets: boolean;
  /** Nobody asked, a blank was typed: words that may follow would be taken by the Enter that ends the line. */
  readonly onlyNames: boolean;
}

/**
 * What may be at an offset of a text.
 * @param result the last check: names stay what they were while a line is half typed
 */
export function completions(
  text: string,
  offset: number,
  result: CheckResult,
  { rules, textOf, snippets: offersSnippets, onlyNames }: CompletionOptions,
): CompletionItem[] {
  const place = placeAt(text, offset);
  const all = wantedAt(place);
  const wanted = onlyNames ? { ...all, words: [], verbs: false } : all;
  const items: CompletionItem[] = [];
  if (wanted.names.length > 0) {
    const declaredNames = allDeclared(result);
    const scope = scopeAt(place, declaredNames, (declared) => headWords(declared, textOf));
    const seen = new Set<string>();
    for (const declared of inScope(declaredNames, scope, wanted.names)) {
      const { symbol } = declared;
      if (symbol.name === '' || seen.has(symbol.name)) continue;
      seen.add(symbol.name);
      items.push({
        label: symbol.name,
        kind: completionKind(symbol.kind),
        detail: symbol.title === '' ? symbol.kind : symbol.title,
        labelDetails: { description: symbol.title === '' ? symbol.kind : symbol.title },
        // Names before words, and the likeliest kind before the others.
        sortText: `1${wanted.names.indexOf(symbol.kind)}${symbol.name}`,
      });
    }
  }
  if (wanted.names.length > 0) {
    for (const label of parametersAt(place))
      items.push({ label, kind: CompletionItemKind.Variable, detail: 'parameter', sortText: `0${label}` });
  }
  if (wanted.verbs) {
    for (const verb of verbs) {
      const label = spellingOf(verb);
      items.push({
        label,
        kind: CompletionItemKind.Keyword,
        detail: 'step',
        documentation: { kind: 'markdown', value: verbTable[verb].does },
        sortText: `2${label}`,
      });
    }
    for (const label of ['hazard', 'only'])
      items.push({ label, kind: CompletionItemKind.Keyword, sortText: `3${label}` });
  }
  for (const label of new Set(wanted.words))
    items.push({ label, kind: CompletionItemKind.Keyword, sortText: `4${label}` });
  for (const { name, prefix, description, body } of snippets) {
    if (
      !offersSnippets ||
      place.before.length > 0 ||
      !(wanted.words.includes(prefix) || (wanted.verbs && snippetVerbs.has(prefix)))
    )
      continue;
    items.push({
      label: prefix,
      kind: CompletionItemKind.Snippet,
      detail: description,
      labelDetails: { description: name },
      insertText: body,
      insertTextFormat: InsertTextFormat.Snippet,
      sortText: `5${prefix}`,
    });
  }
  if (wanted.rules) {
    for (const { code, title } of rules) {
      items.push({
        label: code,
        kind: CompletionItemKind.EnumMember,
        detail: title,
        ...(offersSnippets
          ? { insertText: `${code} because "$1"$0`, insertTextFormat: InsertTextFormat.Snippet }
          : { insertText: `${code} because ""` }),
        sortText: `1${code}`,
      });
    }
  }
  return items;
}

/** Snippets of steps; the others begin with a word that their block offers. */
const snippetVerbs = new Set(['test', 'check']);

/** What the sequence around a place is called with. */
function parametersAt({ blocks }: Place): readonly string[] {
  const head = blocks.find(({ word }) => word === 'sequence')?.head ?? [];
  const start = head.indexOf('with', 2);
  return start < 0 ? [] : head.slice(start + 1).filter((word) => word !== ';');
}

/** Words of a declaration's head: up to its brace. */
function headWords({ uri, symbol }: Declared, textOf: (uri: string) => string | null): readonly string[] {
  const text = textOf(uri);
  if (text === null) return [];
  const start = offsetOfLine(text, symbol.range.start.line) + symbol.range.start.character;
  const brace = text.indexOf('{', start);
  return brace < 0 ? [] : (placeAt(text.slice(start, brace + 1), brace + 1 - start).blocks.at(-1)?.head ?? []);
}

function offsetOfLine(text: string, line: number): number {
  let offset = 0;
  for (let at = 0; at < line; at++) {
    const next = text.indexOf('\n', offset);
    if (next < 0) return text.length;
    offset = next + 1;
  }
  return offset;
}

function completionKind(kind: string): CompletionItemKind {
  switch (kind) {
    case 'part':
    case 'face':
    case 'port':
    case 'adjuster':
      return CompletionItemKind.Field;
    case 'spec':
      return CompletionItemKind.Constant;
    case 'test':
      return CompletionItemKind.Event;
    case 'repair':
    case 'sequence':
      return CompletionItemKind.Function;
    case 'number':
      return CompletionItemKind.EnumMember;
    case 'shop':
    case 'family':
    case 'procedure':
    case 'job':
      return CompletionItemKind.Class;
    case 'station':
      return CompletionItemKind.Module;
    default:
      return CompletionItemKind.Value;
  }
}
