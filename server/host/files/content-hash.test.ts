/** The hash on a sheet: it changes with all that prints, and with nothing else. */
import { describe, expect, it } from 'vitest';
import { checkFiles, type SourceFile, Workspace } from '../../../language/db/workspace.ts';
import { renderText } from '../../../language/documents/renderers/index.ts';
import { buildSheet } from '../../../language/documents/traveler/index.ts';
import { libraryFiles } from '../../../tests/library.ts';
import { contentHash } from './content-hash.ts';

const library = libraryFiles();
const checker = new Workspace();

/** Hash and words of a sheet: of a job by its number, of a procedure by its name. */
function printed(name: string, files: readonly SourceFile[], settings?: string, check = checker) {
  const result = check.check(files, settings === undefined ? null : { uri: 'handtight.json', text: settings });
  const job = result.jobs.find((one) => one.name === name) ?? null;
  const procedure = job?.procedure ?? result.procedures.find((one) => one.procedure.name === name)!.procedure;
  const { diagnostics } = result.procedures.find((one) => one.procedure.name === procedure.name)!;
  const sheet = buildSheet(procedure, {
    job,
    number: null,
    word: result.sheet.word,
    language: 'en',
    paper: 'a4',
    draft: false,
    diagnostics,
    hash: '',
  });
  return { hash: contentHash({ procedure, job }, { files, result }), words: renderText(sheet).join('\n') };
}

const hash = (name: string, files: readonly SourceFile[] = library, settings?: string) =>
  printed(name, files, settings).hash;

/** The library with one file changed. */
function changed(path: string, change: (text: string) => string): SourceFile[] {
  const files = library.map(({ uri, text }) => ({ uri, text: uri.endsWith(path) ? change(text) : text }));
  expect(files.filter(({ text }, index) => text !== library[index]!.text)).toHaveLength(1);
  return files;
}
const replaced = (path: string, one: string | RegExp, other: string) =>
  changed(path, (text) => text.replace(one, other));

describe('the hash of a sheet changes with', () => {
  it.each([
    ['its procedure', 'rebuild-one-spring', 'one-spring/procedure.rebuild', 'revision ', 'revision X'],
    ['its family', 'rebuild-one-spring', 'one-spring/family.rebuild', /"(?=\w)/u, '"A '],
    ['its shop', 'rebuild-one-spring', 'procedures/shop.rebuild', /"(?=\w)/u, '"A '],
    ['a sequence of another file', 'rebuild-one-spring', 'shared/sequences.rebuild', 'lint-free cloth', 'rag'],
    ['the base that it is like', 'rebuild-one-spring-filter', 'one-spring/procedure.rebuild', 'note "', 'note "X '],
    ['a sequence that its base calls', 'rebuild-one-spring-filter', 'shared/sequences.rebuild', 'both sides', 'above'],
    ['its job', '2207', 'job-2207.rebuild', /received \S+/u, 'received 2026-01-02'],
    ['the procedure of its job', '2207', 'one-spring/procedure.rebuild', 'revision ', 'revision X'],
  ])('%s', (_, name, path, one, other) => {
    expect(hash(name, replaced(path, one, other))).not.toBe(hash(name));
  });

  it('a sequence that another one calls, and the base of a base', () => {
    const of = (inner: string, base: string) => [
      { uri: 'one', text: `shop s "S" {\n station b "B"\n}\nfamily f "F" {\n part p "P"\n proven by x\n}\n` },
      { uri: 'two', text: `sequence outer {\n inner\n}\nsequence inner {\n do "${inner}"\n}\n` },
      { uri: 'three', text: `procedure a for f at s {\n stage one at b {\n do "${base}"\n outer\n }\n}\n` },
      { uri: 'four', text: 'procedure b like a {\n}\nprocedure c like b {\n}\n' },
    ];
    const sound = hash('c', of('this', 'that'));
    expect(hash('c', of('other', 'that'))).not.toBe(sound);
    expect(hash('c', of('this', 'other'))).not.toBe(sound);
  });

  it('whatever changes a word of the sheet, wherever in the workspace it is written', () => {
    const sound = printed('2207', library);
    const quotes = library.flatMap(({ uri, text }) =>
      [...text.matchAll(/"(?=\w)/gu)].map(({ index }) => ({ uri, index })),
    );
    let words = 0;
    for (const { uri, index } of quotes.filter((_, at) => at % 9 === 1)) {
      const other = printed(
        '2207',
        changed(uri, (text) => `${text.slice(0, index + 1)}Changed ${text.slice(index + 1)}`),
      );
      if (other.words === sound.words) continue;
      words++;
      expect(other.hash, `${uri} at ${index}`).not.toBe(sound.hash);
    }
    expect(words).toBeGreaterThan(8);
  });

  it('the settings that print: the word for the sheet, and the severity of what is open', () => {
    const sound = hash('2207', library, '{}');
    expect(sound).toBe(hash('2207'));
    expect(hash('2207', library, '{ "sheet": { "word": "Job card" } }')).not.toBe(sound);
    expect(hash('2207', library, '{ "severities": { "part-not-located": "off" } }')).not.toBe(sound);
    // They can be chosen for each print, and whoever opens the link on the sheet cannot know them.
    expect(hash('2207', library, '{ "sheet": { "language": "de", "paper": "letter" } }')).toBe(sound);
  });
});

describe('the hash of a sheet is the same with', () => {
  const sound = hash('2207');

  it.each([
    ['the files in another order', [...library].reverse()],
    ['other paths', library.map(({ uri, text }) => ({ uri: `C:\\work\\${uri.replaceAll('/', '\\')}`, text }))],
    ['CR LF', library.map(({ uri, text }) => ({ uri, text: text.replaceAll('\n', '\r\n') }))],
    ['CR', library.map(({ uri, text }) => ({ uri, text: text.replaceAll('\n', '\r') }))],
    ['a byte order mark', library.map(({ uri, text }) => ({ uri, text: `\uFEFF${text}` }))],
    ['other remarks', library.map(({ uri, text }) => ({ uri, text: text.replace(/\n/gu, ' // note\n') }))],
    [
      'other blank lines and indentation',
      library.map(({ uri, text }) => ({ uri, text: text.replace(/\n(?= )/gu, '\n\n\t') })),
    ],
    ['all in one file', [{ uri: 'all', text: library.map(({ text }) => text).join('\n') }]],
    ['one file more', [...library, { uri: 'more', text: 'sequence other {\n  receive\n}\n' }]],
    [
      'another procedure in its file',
      changed('one-spring/procedure.rebuild', (text) => `sequence z {\n tag\n}\n${text}`),
    ],
    ['another job changed', replaced('job-2198.rebuild', /received \S+/u, 'received 2026-01-02')],
    ['another family changed', replaced('two-spring/family.rebuild', /"(?=\w)/u, '"A ')],
    ['one that is like its procedure changed', replaced('like/procedure.rebuild', 'invented', 'own')],
  ])('%s', (_, files) => {
    expect(hash('2207', files)).toBe(sound);
  });

  it('a checker that is kept, as in the editor, and one made for it, as on the command line', () => {
    expect(printed('2207', library, undefined, new Workspace()).hash).toBe(sound);
    expect(checkFiles(library).restated).toBe(0);
  });
});
