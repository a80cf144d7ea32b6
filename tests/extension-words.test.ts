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
    const { description, displayName, contributes } = manifest;
    expect(Object.keys(words).sort()).toEqual(
      [...new Set(shownTexts({ description, displayName, contributes }))].sort(),
    );
    for (const [text, other] of Object.entries(words)) expect(holes(other)).toEqual(holes(text));
  });
});
