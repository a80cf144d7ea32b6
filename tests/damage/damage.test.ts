/**
 * Nothing throws: files of the library without one of their tokens, and cut off behind it, are checked, and all is made of
 * them that `language/` makes. Here a part of the ways, spread over all files; `npm run damage` tries all of them.
 */
import { describe, expect, it } from 'vitest';
import { libraryFiles } from '../library.ts';
import { damagesOf, thrown } from './damages.ts';
import { everythingOf } from './everything.ts';

const all = libraryFiles(true);
/** A prime, so that no habit of the files falls in step with it. */
const every = 307;

describe.each(all.map((file) => [file.uri, file] as const))('%s', (_, file) => {
  it('throws nothing where it is broken', () => {
    const damages = damagesOf(file.text).filter((_, index) => index % every === 0);
    expect(damages.length).toBeGreaterThan(0);
    expect(thrown(file, all, damages)).toEqual([]);
  });
});

/** Beginnings, as they are typed, and heads with a piece missing. */
const begun = [
  'procedure',
  'procedure p',
  'procedure p {',
  'procedure "P" for valve at shop {',
  'procedure p "P" approved by',
  'procedure p like',
  'job',
  'job 2207',
  'job 2207 received',
  'job 2207 of x approved by',
  'job of x {\n}',
  'job 2207 of rebuild-valve revision',
  'family "Relief valve" {\n  part "Body"\n  joint to body\n  face lapped\n  port on\n  adjuster sets\n}',
  'shop {\n  station\n  gauge range\n  stock x from 1 mm\n  master m at\n}',
  'sequence {\n}',
  'procedure p for valve at my-bench {\n  stage {\n    receive\n  }\n  repair {\n  }\n  number {\n  }\n  spec "Opening"\n  hazard\n}',
];

describe('what is typed from nothing', () => {
  const [first] = all.filter(({ uri }) => uri.endsWith('first.rebuild'));

  it.each(begun)('throws nothing, and is reported: %s', (text) => {
    for (const typed of [text, `${text}\n`, text.replace(/[^\n]$/u, '')]) {
      const { diagnostics } = everythingOf([first!, { uri: 'typed.rebuild', text: typed }]);
      expect(diagnostics.some(({ source }) => source.file === 'typed.rebuild')).toBe(true);
    }
  });
});
