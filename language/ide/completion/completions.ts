/** Completion: names with their words, verbs where a step begins, words of the language where they fit. */
import { rules } from '../../diagnostics/index.ts';
import type { Position } from '../../model/source.ts';
import { spellingOf, verbs, verbTable } from '../../syntax/verbs/index.ts';
import { allDeclared, type Declared } from '../declared.ts';
import { offsetAt } from '../offset.ts';
import type { Snapshot } from '../snapshot.ts';
import { type Place, placeAt } from './place.ts';
import { inScope, scopeAt } from './scope.ts';
import { snippets } from './snippets.ts';
import { wantedAt } from './wanted-at.ts';

/** One thing that may be written at a place. */
export interface Suggestion {
  readonly label: string;
  readonly kind: 'name' | 'parameter' | 'verb' | 'word' | 'snippet' | 'rule';
  /** Of a name: what it names, as `DeclaredSymbol.kind` calls it. */
  readonly names?: string;
  /** The author's words for it, or what it is. */
  readonly detail?: string;
  /** What is shown behind the label. */
  readonly description?: string;
  /** Markdown. */
  readonly documentation?: string;
  /** What is written instead of the label. A snippet is in the syntax of the protocol, with gaps to fill. */
  readonly insert?: { readonly text: string; readonly snippet: boolean };
  /** Suggestions are shown in the order of these. */
  readonly order: string;
}

export interface CompletionOptions {
  /** The editor puts the cursor into the gaps of a snippet. */
  readonly snippets: boolean;
  /** Nobody asked, a blank was typed: words that may follow would be taken by the Enter that ends the line. */
  readonly onlyNames: boolean;
}

/** What may be written at a place of a file. Names stay what they were at the last check while a line is half typed. */
export function completionsAt(
  snapshot: Snapshot,
  file: string,
  position: Position,
  options: CompletionOptions,
): Suggestion[] {
  const text = snapshot.textOf(file) ?? '';
  return completionsIn(snapshot, text, offsetAt(text, position), options);
}

/** What may be written at an offset of a text, which is seen as one of the workspace's. */
export function completionsIn(
  { result, textOf }: Snapshot,
  text: string,
  offset: number,
  { snippets: offersSnippets, onlyNames }: CompletionOptions,
): Suggestion[] {
  const place = placeAt(text, offset);
  const all = wantedAt(place);
  const wanted = onlyNames ? { ...all, words: [], verbs: false } : all;
  const suggestions: Suggestion[] = [];
  if (wanted.names.length > 0) {
    const declaredNames = allDeclared(result);
    const scope = scopeAt(place, declaredNames, (declared) => headWords(declared, textOf));
    const seen = new Set<string>();
    for (const { symbol } of inScope(declaredNames, scope, wanted.names)) {
      if (symbol.name === '' || seen.has(symbol.name)) continue;
      seen.add(symbol.name);
      const detail = symbol.title === '' ? symbol.kind : symbol.title;
      suggestions.push({
        label: symbol.name,
        kind: 'name',
        names: symbol.kind,
        detail,
        description: detail,
        // Names before words, and the likeliest kind before the others.
        order: `1${wanted.names.indexOf(symbol.kind)}${symbol.name}`,
      });
    }
    for (const label of parametersAt(place))
      suggestions.push({ label, kind: 'parameter', detail: 'parameter', order: `0${label}` });
  }
  if (wanted.verbs) {
    for (const verb of verbs) {
      const label = spellingOf(verb);
      suggestions.push({
        label,
        kind: 'verb',
        detail: 'step',
        documentation: verbTable[verb].does,
        order: `2${label}`,
      });
    }
    for (const label of ['hazard', 'only']) suggestions.push({ label, kind: 'word', order: `3${label}` });
  }
  for (const label of new Set(wanted.words)) suggestions.push({ label, kind: 'word', order: `4${label}` });
  for (const { name, prefix, description, body } of snippets) {
    if (
      !offersSnippets ||
      place.before.length > 0 ||
      !(wanted.words.includes(prefix) || (wanted.verbs && snippetVerbs.has(prefix)))
    )
      continue;
    suggestions.push({
      label: prefix,
      kind: 'snippet',
      detail: description,
      description: name,
      insert: { text: body, snippet: true },
      order: `5${prefix}`,
    });
  }
  if (wanted.rules) {
    for (const { code, title } of rules) {
      suggestions.push({
        label: code,
        kind: 'rule',
        detail: title,
        insert: offersSnippets
          ? { text: `${code} because "$1"$0`, snippet: true }
          : { text: `${code} because ""`, snippet: false },
        order: `1${code}`,
      });
    }
  }
  return suggestions;
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
function headWords({ uri, symbol }: Declared, textOf: Snapshot['textOf']): readonly string[] {
  const text = textOf(uri);
  if (text === null) return [];
  const start = offsetAt(text, symbol.range.start);
  const brace = text.indexOf('{', start);
  return brace < 0 ? [] : (placeAt(text.slice(start, brace + 1), brace + 1 - start).blocks.at(-1)?.head ?? []);
}
