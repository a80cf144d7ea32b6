/** Invariants of the source that a test can hold. */
import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, relative } from 'node:path';
import { describe, expect, it } from 'vitest';
import { root } from './library.ts';

const sources = readdirSync(join(root, 'language'), { recursive: true, withFileTypes: true })
  .filter((entry) => entry.isFile() && entry.name.endsWith('.ts') && !entry.name.endsWith('.test.ts'))
  .map((entry) => join(entry.parentPath, entry.name))
  // What only tests use may read files.
  .filter((path) => !/example-pages|injector-fixture|sound-procedure|example-base/u.test(path))
  .map((path) => ({ path: relative(root, path).replaceAll('\\', '/'), text: readFileSync(path, 'utf8') }));

const importing = (pattern: RegExp, among = sources) =>
  among
    .filter(({ text }) =>
      [...text.matchAll(/(?:from|import\()\s*'([^']+)'/gu)].some(([, module]) => pattern.test(module!)),
    )
    .map(({ path }) => path);

/** All source of a folder but its tests. */
function filesIn(folder: string) {
  return readdirSync(join(root, folder))
    .filter((name) => name.endsWith('.ts') && !name.endsWith('.test.ts'))
    .map((name) => ({ path: `${folder}/${name}`, text: readFileSync(join(root, folder, name), 'utf8') }));
}

describe('server/', () => {
  it('writes to the streams of the command in one place, where hidden characters are written out', () => {
    const writing = filesIn('server/cli').filter(({ text }) => /std(out|err)\.write\(|console\./u.test(text));
    // main.ts reports that even this failed.
    expect(writing.map(({ path }) => path)).toEqual(['server/cli/main.ts', 'server/cli/say.ts']);
  });
});

describe('language/', () => {
  it('does no input or output, and knows no editor', () => {
    expect(importing(/^(node:|fs$|path$|vscode|langium\/lsp)/u)).toEqual([]);
    expect(
      sources
        .filter(({ text }) => /\bprocess\.|Date\.now\(|new Date\(\)|Math\.random\(/u.test(text))
        .map(({ path }) => path),
    ).toEqual([]);
  });

  it('does not reach into server, extension, procedures or tests', () => {
    expect(importing(/\/(server|extension|procedures|tests)\//u)).toEqual([]);
  });

  it('sees syntax nodes in grammar, resolve and check only', () => {
    const beyond = sources.filter(({ path }) => !/^language\/(grammar|resolve)\/|^language\/check\.ts/u.test(path));
    expect(importing(/langium|chevrotain|generated\/ast/u, beyond)).toEqual([]);
  });
});

/** Which folders of `language/` a folder imports from: data flows one way, so no folder is reached back into. */
const layers: Readonly<Record<string, readonly string[]>> = {
  quantities: [],
  // A step is one of the verbs, and a verb acts on kinds of objects: each takes only types from the other.
  model: ['quantities', 'verbs'],
  verbs: ['model'],
  words: ['quantities'],
  calculations: ['model', 'quantities'],
  grammar: ['model', 'quantities', 'verbs'],
  replay: ['model', 'quantities', 'verbs'],
  cautions: ['model', 'quantities', 'replay', 'verbs'],
  drawing: ['model', 'replay', 'words'],
  resolve: ['calculations', 'grammar', 'model', 'quantities', 'replay', 'verbs'],
  // What a job must answer for is judged where the certificate is made: `record/implausible-result.ts`.
  rules: [
    'calculations',
    'cautions',
    'certificate',
    'grammar',
    'model',
    'quantities',
    'replay',
    'resolve',
    'verbs',
    'words',
  ],
  advice: ['calculations', 'model', 'quantities', 'rules', 'words'],
  sheet: ['advice', 'calculations', 'cautions', 'drawing', 'model', 'quantities', 'replay', 'rules', 'verbs', 'words'],
  settings: ['grammar', 'model', 'rules', 'sheet', 'words'],
  specs: ['calculations', 'model', 'quantities', 'sheet', 'words'],
  certificate: ['advice', 'calculations', 'model', 'quantities', 'replay', 'rules', 'sheet', 'words'],
  'work-out': ['calculations', 'grammar', 'model', 'quantities'],
};

describe('the layers of language/', () => {
  const folderOf = (path: string) => /^language\/([^/]+)\//u.exec(path)?.[1];
  const reached = (folder: string) => [
    ...new Set(
      sources
        .filter(({ path }) => folderOf(path) === folder)
        .flatMap(({ path, text }) =>
          [...text.matchAll(/from '(\.[^']+)'/gu)].map(([, module]) =>
            folderOf(join(dirname(path), module!).replaceAll('\\', '/')),
          ),
        )
        .filter((other) => other !== undefined && other !== folder),
    ),
  ];

  it('are all of its folders', () => {
    const folders = [...new Set(sources.map(({ path }) => folderOf(path)))].filter((one) => one !== undefined);
    expect(Object.keys(layers).sort()).toEqual(folders.sort());
  });

  it.each(Object.keys(layers))('%s imports from the folders below it', (folder) => {
    expect(reached(folder).sort()).toEqual([...layers[folder]!].sort());
  });
});

describe('what is said', () => {
  const all = ['language', 'server', 'extension'].flatMap((folder) =>
    readdirSync(join(root, folder), { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile() && entry.name.endsWith('.ts'))
      .map((entry) => join(entry.parentPath, entry.name)),
  );

  it('does not change with the language of the machine', () => {
    const asks = /\.(?:localeCompare|toLocale\w*)\(|\bIntl\.\w+(?:<[^>]*>)?\((?:\)|undefined\b|\[\])/u;
    expect(all.filter((path) => asks.test(readFileSync(path, 'utf8'))).map((path) => relative(root, path))).toEqual([]);
  });
});
