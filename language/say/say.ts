import { listFormat } from './list-format.ts';

/**
 * What is said to a person, as data: an English text with numbered holes, and what is in them. It is the same for all
 * languages until somebody reads it, so a finding can be kept, compared and sent to another thread; `i18n/` puts it into
 * a language.
 */

declare const template: unique symbol;

/** `The {0} was slackened.` Only `say` makes them, so that each is found in the source, and none is forgotten. */
type Template = string & { readonly [template]: true };

/**
 * A text and what fills its holes. A text fills one as it is: a name, the author's words, a word of the language, a figure
 * as it is written. What is English is said itself.
 */
export type Said = readonly [Template, ...(string | number | Said)[]];

/** What a hole takes. */
export type Filling = string | number | Said;

/** Made once for each place in the source. */
const templates = new WeakMap<TemplateStringsArray, Said>();

/** Puts what is said into the language of whoever reads it. */
export type Tell = (said: Filling) => string;

/** Says something: say\`The ${part} was slackened.\` is the template `The {0} was slackened.` with its part. */
export function say(strings: TemplateStringsArray, ...fillings: readonly Filling[]): Said {
  let bare = templates.get(strings);
  if (bare === undefined) {
    bare = [strings.reduce((text, next, index) => `${text}{${index - 1}}${next}`) as Template];
    templates.set(strings, bare);
  }
  return fillings.length === 0 ? bare : [bare[0], ...fillings];
}

/** Forms that are no texts of their own; each language has its way with them. */
const forms = {
  and: '{and}' as Template,
  or: '{or}' as Template,
  capital: '{capital}' as Template,
  lower: '{lower}' as Template,
  joined: '{joined}' as Template,
  inEach: '{in each}' as Template,
  term: '{term}' as Template,
};

/** `shim, spring and seat` */
export function listed(items: readonly Filling[]): Said {
  return [forms.and, ...items];
}

/** `shim, spring or seat` */
export function either(items: readonly Filling[]): Said {
  return [forms.or, ...items];
}

/** At the beginning of a sentence. */
export function capital(text: Filling): Said {
  return [forms.capital, text];
}

/** An author's title in the middle of a sentence: `nozzle nut`. An abbreviation keeps its capitals. */
export function lower(title: string): Said {
  return [forms.lower, title];
}

/** Several texts one after another, with a blank between them or something else. */
export function joined(texts: readonly Filling[], between: Filling = ' '): Said {
  return [forms.joined, between, ...texts];
}

/** A word of a closed list, such as a kind of quantity: the word itself is its template. */
export function term(word: string): Said {
  return [forms.term, word];
}

/** The same for how something is: to be `set` is not to `set`, and has words of its own elsewhere. */
export function stateTerm(word: string): Said {
  return [forms.term, word, 'state'];
}

/** The same for what can be so of something: what is `kept` is said to be so, or not. */
export function propertyTerm(word: string): Said {
  return [forms.term, word, 'property'];
}

/** What is known in each language as it is: texts by the name of their language. */
export function inEach(texts: Readonly<Record<string, string>>): Said {
  return [forms.inEach, ...Object.entries(texts).flat()];
}

/** How a language says what is given as a template and its fillings in that language. */
export interface Telling {
  readonly language: string;
  readonly text: (template: string, fillings: readonly string[], said: Said) => string;
  readonly term: (word: string, sense?: string) => string;
  readonly and: (items: readonly string[]) => string;
  readonly or: (items: readonly string[]) => string;
  readonly lower: (title: string) => string;
}

/** What is said, in a language. */
export function rendered(said: Filling, telling: Telling): string {
  if (typeof said !== 'object') return String(said);
  const [form, ...all] = said;
  const fillings = all.map((one) => rendered(one, telling));
  switch (form) {
    case forms.and:
      return telling.and(fillings);
    case forms.or:
      return telling.or(fillings);
    case forms.lower:
      return telling.lower(fillings[0]!);
    case forms.capital:
      return fillings[0]!.charAt(0).toUpperCase() + fillings[0]!.slice(1);
    case forms.joined:
      return fillings.slice(1).join(fillings[0]);
    case forms.inEach:
      return fillings[fillings.indexOf(telling.language) + 1]!;
    case forms.term:
      return telling.term(fillings[0]!, fillings[1]);
    default:
      return telling.text(form, fillings, said);
  }
}

/** A template with its holes filled. */
export function filled(template: string, fillings: readonly string[]): string {
  return fillings.length === 0 ? template : template.replace(/\{(\d+)\}/gu, (hole, at) => fillings[Number(at)] ?? hole);
}

/** A title in the middle of a sentence: `nozzle nut`. */
export function lowered(title: string): string {
  return /^\p{Lu}\p{Ll}/u.test(title) ? title.charAt(0).toLowerCase() + title.slice(1) : title;
}

const inEnglish: Telling = {
  language: 'en',
  text: filled,
  term: (word) => word,
  // Most lists have one.
  and: (items) => (items.length === 1 ? items[0]! : listFormat('en-GB', 'conjunction').format(items)),
  or: (items) => listFormat('en-GB', 'disjunction').format(items),
  lower: lowered,
};

/** What is said, in English. */
export function english(said: Filling): string {
  return rendered(said, inEnglish);
}
