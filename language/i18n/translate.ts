import { type Diagnostic, stated } from '../model/diagnostic.ts';
import { listFormat } from '../say/list-format.ts';
import { english, type Filling, filled, lowered, rendered, type Tell, type Telling } from '../say/say.ts';
import { Messages } from './message.ts';
import type { Bundle } from './messages/bundle.ts';
import { de } from './messages/de/index.ts';
import { es } from './messages/es/index.ts';
import type { Language } from './words.ts';

const bundles: Readonly<Record<Exclude<Language, 'en'>, Bundle>> = { es, de };

const made = new Map<Language, Telling>();

function tellingIn(language: Exclude<Language, 'en'>): Telling {
  const known = made.get(language);
  if (known !== undefined) return known;
  const telling = tellingOf(language, bundles[language]);
  made.set(language, telling);
  return telling;
}

/** How a language tells what is said: by its bundle, and in English what is not in that. */
function tellingOf(language: string, bundle: Bundle): Telling {
  const messages = new Messages(language);
  return {
    language,
    text: (template, fillings, [, ...said]) => {
      const text = Object.hasOwn(bundle, template) ? bundle[template]! : template;
      // What was inside an English sentence may begin one here: a title, not a name.
      const first = /^\p{Lu}/u.test(template) ? /^\{(\d+)\}/u.exec(text)?.[1] : undefined;
      if (first !== undefined && typeof said[Number(first)] === 'object') {
        const at = Number(first);
        fillings = fillings.with(at, fillings[at]!.charAt(0).toUpperCase() + fillings[at]!.slice(1));
      }
      if (!text.includes(', select, ')) return filled(text, fillings);
      const words = said.map((one, at) => [`en${at}`, english(one).trim().replace(/\W+/gu, '_')]);
      return String(messages.of(text).format(Object.fromEntries([...fillings.entries(), ...words])));
    },
    term: (word, sense) => bundle[sense === undefined ? word : `${word} (${sense})`] ?? word,
    and: (items) => listFormat(language, 'conjunction').format(items),
    or: (items) => listFormat(language, 'disjunction').format(items),
    // A noun is written with a capital in German wherever it is.
    lower: language === 'de' ? (title) => title : lowered,
  };
}

/** What is said, in a language. */
export function inLanguage(said: Filling, language: Language): string {
  return language === 'en' ? english(said) : rendered(said, tellingIn(language));
}

/** Who reads what is said: their language, and how it is put into it. */
export interface Reader {
  readonly language: Language;
  readonly tell: Tell;
}

export function readerOf(language: Language): Reader {
  return { language, tell: (said) => inLanguage(said, language) };
}

/** A finding in a language; of what was not said as data, the English is left. */
export function translated(diagnostic: Diagnostic, language: Language): Diagnostic {
  if (language === 'en') return diagnostic;
  const { said, related, fix } = diagnostic;
  const words = (english: string, as: Filling | undefined) => (as === undefined ? english : inLanguage(as, language));
  return {
    ...diagnostic,
    ...(said === undefined ? {} : stated(said, (one) => inLanguage(one, language))),
    ...(related === undefined
      ? {}
      : { related: related.map((place) => ({ ...place, message: words(place.message, place.said) })) }),
    ...(fix === undefined ? {} : { fix: { ...fix, title: words(fix.title, fix.said) } }),
  };
}
