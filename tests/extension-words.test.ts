import { globSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { manifestWords, shownTexts } from '../server/build/manifest-words.ts';

const manifest = JSON.parse(readFileSync('package.json', 'utf8'));

/** What the client says: the first argument of each `l10n.t`. */
const said = new Set(
  globSync('extension/*.ts').flatMap((file) =>
    [...readFileSync(file, 'utf8').matchAll(/\bl10n\.t\(\s*('(?:[^'\\]|\\.)*'|"(?:[^"\\]|\\.)*")/gu)].map(
      ([, text]) =>
        JSON.parse(
          text!
            .replace(/^'|'$/gu, '"')
            .replace(/\\'/gu, "'")
            .replace(/(?<=.)"(?=.)/gu, '\\"'),
        ) as string,
    ),
  ),
);

const holes = (text: string) => [...new Set(text.match(/\{\d+\}|\]\(command:[^)]*\)/gu) ?? [])].sort();

describe('the words of the extension', () => {
  it.each(['es', 'de'])('are all in %s, and no others', (language) => {
    const bundle: Record<string, string> = JSON.parse(
      readFileSync(`extension/l10n/bundle.l10n.${language}.json`, 'utf8'),
    );
    expect(Object.keys(bundle).sort()).toEqual([...said].sort());
    for (const [text, words] of Object.entries(bundle)) expect(holes(words)).toEqual(holes(text));
  });

  it.each(manifestWords)('of the manifest are all in %s, and no others', (_, words) => {
    const { description, displayName, capabilities, contributes } = manifest;
    expect(Object.keys(words).sort()).toEqual(
      [...new Set(shownTexts({ description, displayName, capabilities, contributes }))].sort(),
    );
    for (const [text, other] of Object.entries(words)) expect(holes(other)).toEqual(holes(text));
  });

  it.each(manifestWords)('of the tour are pages in %s too, with the same pictures and as much text', (_, words) => {
    const pages = (manifest.contributes.walkthroughs[0].steps as { media: { markdown: string } }[]).map(
      ({ media }) => media.markdown,
    );
    // What is written in them is the author's; the words of the language, commands and settings stay.
    const kept = (path: string) => readFileSync(path, 'utf8').match(/\]\([^)]+\)|`[a-z][^`]*`|^ {4}\s*\w+/gmu);
    for (const page of pages) expect([page, kept(words[page]!)]).toEqual([page, kept(page)]);
  });
});
