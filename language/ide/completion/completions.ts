/** Completion: names with their words, verbs where a step begins, words of the language where they fit. */
import { rules } from '../../diagnostics/index.ts';
import { unitLines } from '../../drafting/unit-lines.ts';
import type { Position } from '../../model/source.ts';
import { kindOfUnit, type UnitName } from '../../quantities/index.ts';
import { type Filling, joined, say, term } from '../../say/say.ts';
import { spellingOf, verbs } from '../../syntax/verbs/index.ts';
import type { Declared } from '../declared.ts';
import { offsetAt } from '../offset.ts';
import type { Snapshot } from '../snapshot.ts';
import { type StateAt, stateAt } from '../state-at.ts';
import { fitAt, torqueOf } from './by-state.ts';
import { unitsAt } from './figures.ts';
import { type Place, placeAt } from './place.ts';
import { inScope, scopeAt } from './scope.ts';
import { snippets } from './snippets.ts';
import type { Slot, Wanted } from './wanted.ts';
import { wantedAt } from './wanted-at.ts';
import { wholeSteps } from './whole-steps.ts';

/** One thing that may be written at a place. */
export interface Suggestion {
  readonly label: string;
  readonly kind: 'name' | 'parameter' | 'verb' | 'word' | 'snippet' | 'rule' | 'step' | 'unit';
  /** Of a name: what it names, as `DeclaredSymbol.kind` calls it. */
  readonly names?: string;
  /** The author's words for it, or what it is. */
  readonly detail?: Filling;
  /** What is shown behind the label. */
  readonly description?: Filling;
  /** What `documentationOf` describes: a verb, a rule, or the declaration that a name is in. */
  readonly about?: string;
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
  const place = placeAt(text, offsetAt(text, position));
  const known = stateAt(snapshot, file, place);
  return suggestionsAt(snapshot, place, known, options, text);
}

/** What may be written at an offset of a text, which is seen as one of the workspace's. */
export function completionsIn(
  snapshot: Snapshot,
  text: string,
  offset: number,
  options: CompletionOptions,
): Suggestion[] {
  return suggestionsAt(snapshot, placeAt(text, offset), null, options, text);
}

/** @param known what is known of the unit there */
function suggestionsAt(
  snapshot: Snapshot,
  place: Place,
  known: StateAt | null,
  { snippets: offersSnippets, onlyNames }: CompletionOptions,
  text: string,
): Suggestion[] {
  const all = wantedAt(place);
  const wanted = onlyNames ? { ...all, words: [], verbs: false } : all;
  const suggestions: Suggestion[] = [
    ...unitSuggestions(snapshot, place, text),
    ...nameSuggestions(snapshot, place, wanted, known),
  ];
  if (wanted.verbs && known !== null)
    for (const [index, { text: label, why }] of wholeSteps(known).entries())
      suggestions.push({ label, kind: 'step', detail: why, description: why, order: `1${inOrder(index)}` });
  if (wanted.verbs) {
    for (const verb of verbs) {
      const label = spellingOf(verb);
      suggestions.push({ label, kind: 'verb', detail: term('step'), about: verb, order: `2${label}` });
    }
    for (const label of ['hazard', 'only']) suggestions.push({ label, kind: 'word', order: `3${label}` });
  }
  const lines = offersSnippets && !onlyNames ? unitSnippet(snapshot, place) : null;
  if (lines !== null)
    suggestions.push({
      label: 'results',
      kind: 'snippet',
      detail: say`All that is written down of a unit, in the order of the card; tab goes to the next blank`,
      description: say`Results of a unit`,
      insert: { text: lines, snippet: true },
      order: '0',
    });
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
        detail: term(title),
        about: code,
        insert: offersSnippets
          ? { text: `${code} because "$1"$0`, snippet: true }
          : { text: `${code} because ""`, snippet: false },
        order: `1${code}`,
      });
    }
  }
  return suggestions;
}

/** Lines of a unit with a gap for each figure; null: no unit is there, or nothing is known of its procedure. */
function unitSnippet({ result }: Snapshot, { blocks, before }: Place): string | null {
  const [outer] = blocks;
  if (blocks.at(-1)?.word !== 'unit' || outer === undefined || before.length > 0) return null;
  const of = outer.head[outer.head.indexOf('of') + 1];
  const procedure =
    (outer.head[1] === undefined ? null : result.jobOf(outer.head[1]))?.procedure ??
    result.procedureOf(of ?? '')?.procedure;
  if (procedure === undefined) return null;
  let gaps = 0;
  return unitLines(procedure, (like) => `\${${++gaps}:${like}}`).join('\n');
}

/** Sorts as the number does. */
const inOrder = (index: number) => String(index).padStart(3, '0');

/** Names that fit there: by what is known of the unit, or as they are declared. */
function nameSuggestions(
  { result, textOf }: Snapshot,
  place: Place,
  wanted: Wanted,
  known: StateAt | null,
): Suggestion[] {
  if (wanted.names.length === 0) return [];
  const scope = scopeAt(place, result, (declared) => headWords(declared, textOf));
  const fitOf = wanted.slot === undefined || known === null ? null : fitAt(wanted.slot, known);
  const seen = new Set<string>();
  const declared = inScope(result, scope, wanted.names).flatMap((one) => {
    const { name } = one.symbol;
    return name === '' || seen.has(name) || !seen.add(name) ? [] : [{ ...one, fit: fitOf?.(name) ?? null }];
  });
  const fitting = declared.filter(({ fit }) => fit !== 'left out');
  const names = (fitting.length > 0 ? fitting : declared).map(({ symbol, within, fit: how }): Suggestion => {
    const { name, kind, title } = symbol;
    const fit = how === 'left out' ? null : how;
    const words = title === '' ? term(kind) : title;
    const label = known !== null && wanted.slot !== undefined ? labelOf(name, wanted.slot, known) : name;
    return {
      label,
      kind: 'name',
      names: kind,
      detail: fit?.note == null ? words : joined([words, fit.note], ': '),
      description: fit?.note ?? words,
      about: `${within.kind} ${within.name}`,
      // Names before words, and the likeliest kind before the others.
      order: fit === null ? `1${wanted.names.indexOf(kind)}${name}` : `0${inOrder(fit.rank)}${name}`,
    };
  });
  const parameters = parametersAt(place).map(
    (label): Suggestion => ({ label, kind: 'parameter', detail: term('parameter'), order: `0${label}` }),
  );
  return [...names, ...parameters];
}

/** A joint with what it is torqued to. */
function labelOf(name: string, { verb, clause, named }: Slot, { procedure }: StateAt): string {
  const spec = verb === 'torque' && clause === 'object' && named.length === 0 ? torqueOf(procedure, name) : null;
  return spec === null ? name : `${name} to ${spec}`;
}

/** The kinds of quantity that may follow a figure, each in its units. */
function unitSuggestions({ result }: Snapshot, place: Place, text: string): Suggestion[] {
  const name = place.blocks[0]?.head ?? [];
  const of = name[0] === 'job' ? name[name.indexOf('of') + 1] : name[1];
  const kindOfSpec = (spec: string) =>
    result.procedureOf(of ?? '')?.procedure.specs.find((one) => one.name === spec)?.kind ?? null;
  return unitsAt(place, kindOfSpec, text).map(
    (label, index): Suggestion => ({
      label,
      kind: 'unit',
      detail: say`unit of ${term(kindOfUnit(label as UnitName))}`,
      order: `0${inOrder(index)}`,
    }),
  );
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
