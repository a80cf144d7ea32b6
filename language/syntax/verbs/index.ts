/** The verbs of the language: one record each. Grammar lists, colors, the README's table and completion come from them. */
import { apart } from './apart.ts';
import { cleaning } from './cleaning.ts';
import { handling } from './handling.ts';
import { everywhere, type Phrase, type PhraseName, phrases } from './phrases.ts';
import { ports } from './ports.ts';
import { proving } from './proving.ts';
import { together } from './together.ts';
import type { Trait, VerbRecord } from './verb.ts';
import { waiting } from './waiting.ts';

const table = { ...handling, ...apart, ...ports, ...cleaning, ...together, ...proving, ...waiting };

/** Every verb of the language. A sequence's call is written out before the model is made. */
export type Verb = keyof typeof table;

export const verbs = Object.keys(table) as readonly Verb[];

export const verbTable: Readonly<Record<Verb, VerbRecord>> = table;

/** A verb as it is written. */
export const spellingOf = (verb: Verb): string => verbTable[verb].spelling ?? verb;

/** Whether a verb is one of those that have something in common. */
export const verbIs = (verb: Verb, trait: Trait): boolean => verbTable[verb].is?.includes(trait) ?? false;

/** The verbs that have something in common. */
export const verbsThat = (trait: Trait): readonly Verb[] => verbs.filter((verb) => verbIs(verb, trait));

/** Everything that may follow a verb and its objects, with the clauses of that verb alone first; resolve refuses the rest. */
export function phrasesAfter(verb: Verb): readonly Phrase[] {
  return known.get(verb)!;
}

/** Whether a phrase has a meaning after a verb. */
export const takesPhrase = (verb: Verb, phrase: PhraseName): boolean =>
  phrasesAfter(verb).some(({ name }) => name === phrase);

const named = new Map(phrases.map((phrase) => [phrase.name, phrase]));

const known = new Map(
  verbs.map((verb) => {
    const { objects, takes } = verbTable[verb];
    const all: readonly PhraseName[] = [
      ...takes,
      // What is fitted, guarded, taken off with it is a part; else it is what the work is done with.
      ...(takes.includes('with part') ? [] : (['with tool', 'with no fluid'] as const)),
      ...(objects.some((kind) => kind !== 'reading' && kind !== 'gate') ? (['with marks'] as const) : []),
      ...everywhere,
    ];
    // An adapter lies between a wrench and what it turns.
    const goesOn = ({ name: own, after = [], insteadOf }: Phrase) =>
      (own !== 'and adapter' || verbIs(verb, 'turns')) &&
      [...after, insteadOf].some((name) => (all as readonly (string | undefined)[]).includes(name));
    return [verb, [...all.map((name) => named.get(name)!), ...phrases.filter(goesOn)]] as const;
  }),
);
