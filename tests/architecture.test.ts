/** Invariants of the source that a test can hold. */
import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, relative } from 'node:path';
import { describe, expect, it } from 'vitest';
import { root } from './library.ts';

const sources = readdirSync(join(root, 'language'), { recursive: true, withFileTypes: true })
  .filter((entry) => entry.isFile() && entry.name.endsWith('.ts') && !entry.name.endsWith('.test.ts'))
  .map((entry) => join(entry.parentPath, entry.name))
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

/** Of Node: what a browser has not. */
const ofNode = /^node:|^(?:vscode-languageserver|vscode-jsonrpc)\/node$/u;

describe('server/', () => {
  it('writes to the streams of the command in one place, where hidden characters are written out', () => {
    const writing = filesIn('server/cli').filter(({ text }) => /std(out|err)\.write\(|console\./u.test(text));
    // main.ts reports that even this failed.
    expect(writing.map(({ path }) => path)).toEqual(['server/cli/main.ts', 'server/cli/say.ts']);
  });

  it('leaves to the language server the protocol: what is known of the language comes from language/ide', () => {
    const reached = filesIn('server/lsp').flatMap(({ text }) =>
      [...text.matchAll(/(?:from|import\()\s*'\.\.\/\.\.\/language\/([^/']+)\//gu)].map(([, layer]) => layer!),
    );
    expect([...new Set(reached)].sort()).toEqual(['config', 'db', 'ide', 'model']);
    const model = filesIn('server/lsp').filter(({ text }) => /^import (?!type)[^;]*language\/model\//mu.test(text));
    expect(model.map(({ path }) => path)).toEqual([]);
  });

  it('gives the language server its host at its two entries, so that it runs in a browser too', () => {
    const lsp = filesIn('server/lsp');
    expect(importing(ofNode, lsp).sort()).toEqual([
      'server/lsp/main.ts',
      'server/lsp/node-main.ts',
      'server/lsp/protocol.ts',
    ]);
    expect(importing(/\/host\/(?:print\/|node\.ts|browser\.ts)/u, lsp).sort()).toEqual([
      'server/lsp/browser-main.ts',
      'server/lsp/node-server.ts',
    ]);
    expect(importing(ofNode, filesIn('server/host')).sort()).toEqual(['server/host/node.ts']);
    expect(filesIn('server/lsp').filter(({ text }) => /\b(?:Buffer|process|NodeJS)\./u.test(text))).toEqual([]);
  });
});

describe('language/', () => {
  it('does no input or output, and knows no editor', () => {
    expect(importing(/^(node:|fs$|path$|vscode|langium\/lsp)/u)).toEqual([]);
    expect(
      sources
        .filter(({ text }) => /\bprocess\.|\bBuffer\b|\bNodeJS\.|Date\.now\(|new Date\(\)|Math\.random\(/u.test(text))
        .map(({ path }) => path),
    ).toEqual([]);
  });

  it('does not reach into server, extension, procedures or tests', () => {
    expect(importing(/\/(server|extension|procedures|tests)\//u)).toEqual([]);
  });

  it('sees syntax nodes in syntax, semantics and db only', () => {
    const beyond = sources.filter(({ path }) => !/^language\/(?:syntax|semantics|db)\//u.test(path));
    expect(importing(/langium|chevrotain|generated\/ast/u, beyond)).toEqual([]);
  });
});

/** Folders of `language/` that are layers of their own inside another. */
const inner =
  /^language\/((?:documents|analysis|syntax)\/(?:figures|drawing|traveler|specs|certificate|renderers|cautions|verbs)|[^/]+)\//u;

/** Which layers of `language/` a layer imports from: data flows one way, so nothing reaches back. */
const layers: Readonly<Record<string, readonly string[]>> = {
  say: [],
  quantities: ['say'],
  'syntax/verbs': [],
  model: ['quantities', 'say', 'syntax/verbs'],
  i18n: ['model', 'quantities', 'say'],
  engineering: ['model', 'quantities', 'say'],
  syntax: ['model', 'quantities', 'say', 'syntax/verbs'],
  analysis: ['engineering', 'model', 'quantities', 'say', 'syntax/verbs'],
  'analysis/cautions': ['analysis', 'model', 'quantities', 'say', 'syntax/verbs'],
  semantics: ['analysis', 'engineering', 'model', 'quantities', 'say', 'syntax', 'syntax/verbs'],
  diagnostics: [
    'analysis',
    'analysis/cautions',
    'engineering',
    'i18n',
    'judgment',
    'model',
    'quantities',
    'say',
    'semantics',
    'syntax',
    'syntax/verbs',
  ],
  calculator: ['engineering', 'model', 'quantities', 'say', 'syntax'],
  recommendations: ['analysis', 'engineering', 'i18n', 'model', 'quantities', 'say'],
  judgment: ['analysis', 'engineering', 'i18n', 'model', 'quantities', 'recommendations'],
  drafting: ['analysis', 'model', 'quantities', 'say'],
  // What all documents share: the sheet as plain data, for what it is printed, and what things are called.
  documents: ['analysis', 'i18n', 'model', 'quantities'],
  'documents/figures': ['analysis', 'analysis/cautions', 'documents', 'engineering', 'i18n', 'model', 'quantities'],
  'documents/drawing': ['analysis', 'documents', 'documents/figures', 'i18n', 'model', 'quantities'],
  'documents/traveler': [
    'analysis',
    'analysis/cautions',
    'documents',
    'documents/drawing',
    'documents/figures',
    'i18n',
    'judgment',
    'model',
    'quantities',
    'recommendations',
    'syntax/verbs',
  ],
  'documents/specs': ['documents', 'documents/figures', 'engineering', 'i18n', 'model', 'quantities'],
  'documents/certificate': ['analysis', 'documents', 'documents/figures', 'i18n', 'judgment', 'model', 'quantities'],
  // HTML, Typst and text of a document: nothing in language/ takes them, the command and the server do.
  'documents/renderers': ['documents', 'documents/drawing', 'documents/specs', 'i18n'],
  config: ['diagnostics', 'i18n', 'model', 'say', 'syntax'],
  db: ['analysis', 'config', 'diagnostics', 'model', 'say', 'semantics', 'syntax'],
  archive: ['analysis', 'db', 'documents', 'documents/certificate', 'judgment', 'model', 'quantities'],
  ide: [
    'analysis',
    'analysis/cautions',
    'config',
    'db',
    'diagnostics',
    'documents/renderers',
    'documents/specs',
    'documents/traveler',
    'drafting',
    'engineering',
    'i18n',
    'model',
    'quantities',
    'recommendations',
    'say',
    'semantics',
    'syntax',
    'syntax/verbs',
  ],
};

describe('the layers of language/', () => {
  const layerOf = (path: string) => inner.exec(path)?.[1];
  const reached = (layer: string) => [
    ...new Set(
      sources
        .filter(({ path }) => layerOf(path) === layer)
        .flatMap(({ path, text }) =>
          [...text.matchAll(/from '(\.[^']+)'/gu)].map(([, module]) =>
            layerOf(join(dirname(path), module!).replaceAll('\\', '/')),
          ),
        )
        .filter((other) => other !== undefined && other !== layer),
    ),
  ];

  it('are all of its folders', () => {
    const folders = [...new Set(sources.map(({ path }) => layerOf(path)))].filter((one) => one !== undefined);
    expect(Object.keys(layers).sort()).toEqual(folders.sort());
  });

  it('lie in one order: the table has no circle', () => {
    const left = new Map(Object.entries(layers));
    for (let before = -1; before !== left.size; ) {
      before = left.size;
      for (const [layer, below] of left) if (below.every((one) => !left.has(one))) left.delete(layer);
    }
    expect([...left.keys()]).toEqual([]);
  });

  it.each(Object.keys(layers))('%s imports from the layers below it', (layer) => {
    expect(reached(layer).sort()).toEqual([...layers[layer]!].sort());
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
