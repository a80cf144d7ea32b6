import { isSelectElement, type MessageFormatElement, parse } from '@formatjs/icu-messageformat-parser';
import { describe, expect, it } from 'vitest';
import { rules } from '../../language/diagnostics/index.ts';
import type { Bundle } from '../../language/i18n/messages/bundle.ts';
import { de } from '../../language/i18n/messages/de/index.ts';
import { es } from '../../language/i18n/messages/es/index.ts';
import { translated } from '../../language/i18n/translate.ts';
import { type Diagnostic, fullMessage } from '../../language/model/diagnostic.ts';
import { drawnAs } from '../../language/model/drawn-as.ts';
import { units } from '../../language/quantities/unit-table.ts';
import type { Filling, Said } from '../../language/say/say.ts';
import { typeOf } from '../../language/syntax/token.ts';
import { wholeExample } from '../fixtures/example-base.ts';
import { check, pages } from '../fixtures/example-pages.ts';
import { issuedFor } from '../fixtures/issued-example.ts';
import { saidInSource } from './templates.ts';
import { terms } from './terms.ts';
import { texts } from './texts.ts';

const bundles: readonly (readonly ['es' | 'de', Bundle])[] = [
  ['es', es],
  ['de', de],
];

/** What has to be said in each language: the templates with a word in them, and the words of closed lists. */
const said = new Set([
  ...saidInSource()
    .map(({ template }) => template)
    .filter((template) => /\p{L}/u.test(template.replace(/\{\d+\}/gu, ''))),
  ...terms,
]);

/** The numbers of the holes of a text; those by whose English it chooses too. */
function holesOf(text: string): Set<string> {
  if (!text.includes(', select, ')) return new Set([...text.matchAll(/\{(\d+)\}/gu)].map(([, hole]) => hole!));
  const holes = new Set<string>();
  const walk = (elements: readonly MessageFormatElement[]) => {
    for (const element of elements) {
      if ('value' in element && typeof element.value === 'string' && element.type !== 0)
        holes.add(element.value.replace('en', ''));
      if (isSelectElement(element)) for (const { value } of Object.values(element.options)) walk(value);
    }
  };
  walk(parse(text));
  return holes;
}

describe.each(bundles)('the messages in %s', (_, bundle) => {
  it('are those that are said, no more and no fewer', () => {
    expect([...said].filter((template) => !Object.hasOwn(bundle, template))).toEqual([]);
    expect(Object.keys(bundle).filter((template) => !said.has(template))).toEqual([]);
  });

  it('have no hole that the English does not have, and begin and end with a blank where that does', () => {
    const ends = (text: string) => `${text.startsWith(' ')} ${text.endsWith(' ')}`;
    const wrong = Object.entries(bundle).filter(([template, text]) => {
      const known = holesOf(template);
      return [...holesOf(text)].some((hole) => !known.has(hole)) || ends(template) !== ends(text);
    });
    expect(wrong).toEqual([]);
  });
});

/** Findings of many kinds, each with the text that it is in. */
const found: readonly { readonly diagnostic: Diagnostic; readonly text: string }[] = [
  ...pages().flatMap(({ examples }) => examples.map(({ text }) => wholeExample(text).text)),
  ...texts,
].flatMap((text) => {
  const beside = issuedFor(text).map((file) => file.text);
  return check(text).diagnostics.map((diagnostic) => ({ diagnostic, text: [text, ...beside].join('\n') }));
});

/** Everything that a finding says. */
function saidOf({ said, related, fix }: Diagnostic): Said[] {
  const { message, why, help, when } = said!;
  return [message, why, help, when, ...(related ?? []).map((place) => place.said), fix?.said].filter(
    (one) => one !== undefined,
  );
}

/** What fills the holes as it is: names, words of the author's, figures. */
function namesIn(said: Filling): string[] {
  if (typeof said !== 'object') return [String(said)];
  const [form, ...fillings] = said;
  if (form === '{in each}' || form === '{term}') return [];
  return (form === '{joined}' ? fillings.slice(1) : fillings).flatMap(namesIn);
}

const wordsOf = (text: string) => text.toLowerCase().match(/\p{L}+/gu) ?? [];

describe('what is found', () => {
  it('is said as data, all of it', () => {
    const unsaid = found.filter(
      ({ diagnostic: { said, related, fix } }) =>
        said === undefined ||
        (related ?? []).some((place) => place.said === undefined) ||
        (fix !== undefined && fix.said === undefined),
    );
    expect(unsaid.map(({ diagnostic }) => fullMessage(diagnostic))).toEqual([]);
  });

  it('has no English in its holes: what is filled in as it is comes from the text, or is a word of the language', () => {
    const known = new Set([
      ...[...typeOf.keys()].flatMap(wordsOf),
      ...units.flatMap(({ name, spellings }) => [name, ...spellings].flatMap(wordsOf)),
      ...rules.map(({ code }) => code).flatMap(wordsOf),
      ...drawnAs.flatMap(wordsOf),
    ]);
    const english = found.flatMap(({ diagnostic, text }) => {
      const written = new Set(wordsOf(text));
      return (
        saidOf(diagnostic)
          .flatMap(namesIn)
          // The number of a step, the code of a character.
          .filter((name) => !/^(?:R?[\d.]+[a-z]?|U\+\w+)$/u.test(name))
          .filter((name) => wordsOf(name).some((word) => !known.has(word) && !written.has(word)))
          .map((name) => `${diagnostic.rule}: ${name}`)
      );
    });
    expect([...new Set(english)]).toEqual([]);
  });

  it.each(['es', 'de'] as const)('keeps every name and every figure in %s', (language) => {
    const lost = found.flatMap(({ diagnostic }) => {
      const all = translated(diagnostic, language);
      const words = [fullMessage(all), ...(all.related ?? []).map(({ message }) => message), all.fix?.title]
        .join('\n')
        .toLowerCase();
      return saidOf(diagnostic)
        .flatMap(namesIn)
        .filter((name) => !words.includes(name.trim().toLowerCase()))
        .map((name) => `${diagnostic.rule}: ${name} in ${words}`);
    });
    expect([...new Set(lost)]).toEqual([]);
  });
});
