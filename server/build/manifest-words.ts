/**
 * The words of the manifest in each language. The manifest is written in English; for packing, each of its texts becomes
 * a key, and the texts go into the files where an editor looks for them.
 */
import { readFileSync } from 'node:fs';

type Json = string | number | boolean | null | readonly Json[] | { readonly [key: string]: Json };

/** Properties with words that somebody reads, and with the page that has them. */
const shown = new Set([
  ...['title', 'description', 'markdownDescription', 'label', 'displayName'],
  ...['enumDescriptions', 'markdownEnumDescriptions', 'markdown'],
]);

/** The languages besides English, each with its words by the English ones. */
export const manifestWords: readonly (readonly [string, Readonly<Record<string, string>>])[] = ['es', 'de'].map(
  (language) => [language, JSON.parse(readFileSync(`extension/l10n/manifest.${language}.json`, 'utf8'))],
);

/** Every text of a part of the manifest that somebody reads. */
export function shownTexts(part: Json, isShown = false): string[] {
  if (typeof part === 'string') return isShown ? [part] : [];
  if (typeof part !== 'object' || part === null) return [];
  if (Array.isArray(part)) return part.flatMap((one) => shownTexts(one, isShown));
  return Object.entries(part).flatMap(([key, value]) => shownTexts(value, shown.has(key)));
}

/** A part of the manifest with a key in place of each text, and the files with the texts, by their name. */
export function localized<Part extends Json>(
  part: Part,
): { readonly part: Part; readonly files: Record<string, string> } {
  const texts = [...new Set(shownTexts(part))];
  const keyOf = new Map(texts.map((text, index) => [text, `text${index}`]));
  const put = (one: Json, isShown = false): Json => {
    if (typeof one === 'string') return isShown ? `%${keyOf.get(one)}%` : one;
    if (typeof one !== 'object' || one === null) return one;
    if (Array.isArray(one)) return one.map((each) => put(each, isShown));
    return Object.fromEntries(Object.entries(one).map(([key, value]) => [key, put(value, shown.has(key))]));
  };
  const file = (words: (text: string) => string) =>
    `${JSON.stringify(Object.fromEntries(texts.map((text) => [keyOf.get(text)!, words(text)])), null, 2)}\n`;
  return {
    part: put(part) as Part,
    files: {
      'package.nls.json': file((text) => text),
      ...Object.fromEntries(
        manifestWords.map(([language, words]) => [`package.nls.${language}.json`, file((text) => words[text] ?? text)]),
      ),
    },
  };
}
