/** What is packed: the notices of others' work, and a page that shows no broken picture. */
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Metafile } from 'esbuild';
import { describe, expect, it, test } from 'vitest';
import { bundles } from '../server/build/bundles.ts';
import { type Contents, contents } from '../server/build/contents.ts';
import { beside, bundled, noticesOf, packageIn } from '../server/build/notices.ts';
import { packedManifest, targets } from '../server/build/package.ts';
import { packagedReadme } from '../server/build/package-readme.ts';
import { root } from './library.ts';

const read = (path: string) => readFileSync(join(root, path), 'utf8');
const ignored = read('.vscodeignore').split('\n');

describe('the notices', () => {
  const metafiles = JSON.parse(read('out/metafiles.json')) as Metafile[];
  const written = read('out/THIRD-PARTY-NOTICES.txt');
  const folders = [...bundled(metafiles), ...beside(root)];

  it('are packed', () => {
    expect(ignored).toContain('!out/THIRD-PARTY-NOTICES.txt');
  });

  it('find every package of the bundles', () => {
    const inputs = metafiles.flatMap(({ inputs: all }) => Object.keys(all));
    const used = metafiles.flatMap(({ outputs }) =>
      Object.values(outputs).flatMap((output) => Object.keys(output.inputs)),
    );
    const foreign = used.filter((input) => input.includes('node_modules/'));
    expect(foreign.length).toBeGreaterThan(500);
    expect(foreign.filter((input) => !folders.some((folder) => input.startsWith(`${folder}/`)))).toEqual([]);
    expect(inputs.length).toBeGreaterThanOrEqual(used.length / metafiles.length);
  });

  test.each(folders)('name %s, with the text of its license', (folder) => {
    const one = packageIn(root, folder);
    expect(one.texts.join('\n').length, folder).toBeGreaterThan(200);
    expect(written).toContain(`- ${one.name} ${one.version} (${one.license})`);
    for (const text of one.texts) expect(written.includes(text), `${folder}: its whole text`).toBe(true);
  });

  it('refuse a package that names no license', () => {
    const folder = mkdtempSync(join(tmpdir(), 'handtight-package-'));
    writeFileSync(join(folder, 'package.json'), '{ "name": "nameless", "version": "1.0.0" }');
    expect(() => packageIn(folder, '.')).toThrow(/license/u);
    rmSync(folder, { recursive: true });
    expect(noticesOf([])).toContain('LICENSE');
  });
});

describe('the programs', () => {
  it('are packed, each with what it loads at its start', () => {
    const built = bundles.map(({ outfile }) => outfile!);
    expect(built.filter((file) => !ignored.includes(`!${file}`))).toEqual([]);
    for (const file of built)
      for (const [, beside] of read(file).matchAll(/\b(?:import|require)\("(\.\/[^"]+)"\)/gu))
        expect(built, `${file} loads ${beside}`).toContain(join('out', beside!));
  });
});

describe('the extension in a browser', () => {
  it('has an entry that loads nothing but the editor, and its server beside it', () => {
    const { browser, main } = packedManifest();
    expect([main, browser]).toEqual(['./out/extension.cjs', './out/extension-browser.js']);
    const metafiles = JSON.parse(read('out/metafiles.json')) as Metafile[];
    const entry = metafiles.flatMap(({ outputs }) => outputs['out/extension-browser.js'] ?? [])[0]!;
    expect([...new Set(entry.imports.map(({ path }) => path))]).toEqual(['vscode']);
    expect(
      Object.keys(entry.inputs).filter((file) =>
        /^(?:language\/(?:semantics|diagnostics)|node_modules\/zod)\//u.test(file),
      ),
    ).toEqual([]);
    expect(ignored).toContain('!out/contents.json');
  });

  it('has a manifest that does not call its entry a module: an editor in a browser loads none', () => {
    expect(packedManifest().type).toBeUndefined();
  });

  it('knows what comes with it: an address cannot be asked', () => {
    const listed: Contents = JSON.parse(read('out/contents.json'));
    expect(listed).toEqual(contents());
    expect(listed.samples).toContain('procedures/first/first.rebuild');
    expect(listed.samples.filter((path) => path.includes('flawed'))).toEqual([]);
    expect(listed.rulePages.length).toBeGreaterThan(100);
    expect([...listed.samples, ...listed.rulePages].filter((path) => !existsSync(join(root, path)))).toEqual([]);
  });
});

describe('the language server', () => {
  const metafiles = JSON.parse(read('out/metafiles.json')) as Metafile[];

  it('answers initialize without anything of the language', () => {
    const { inputs } = metafiles.find(({ outputs }) => outputs['out/language-server.cjs'] !== undefined)!;
    expect(Object.keys(inputs).sort()).toEqual([
      'server/lsp/capabilities.ts',
      'server/lsp/node-main.ts',
      'server/lsp/start.ts',
    ]);
  });

  it.each(['server/lsp/node-server.ts', 'server/lsp/browser-main.ts'])(
    'loads nothing that only pages and prints need before the first one: %s',
    (entry) => {
      const { inputs } = metafiles.find(({ outputs }) =>
        Object.values(outputs).some(({ entryPoint }) => entryPoint === entry),
      )!;
      const loaded = new Set([entry]);
      for (const file of loaded)
        for (const { path, kind } of inputs[file]?.imports ?? []) if (kind !== 'dynamic-import') loaded.add(path);
      expect(loaded.size).toBeGreaterThan(300);
      const late = /qrcode|typst|documents\/(?:renderers|specs)\/|traveler\/sheet\.ts|host\/print\//u;
      expect([...loaded].filter((file) => late.test(file))).toEqual([]);
      expect(Object.keys(inputs).filter((file) => late.test(file)).length).toBeGreaterThan(5);
    },
  );
});

describe('the platforms', () => {
  it('are those that the typesetter is built for, but phones', () => {
    const { optionalDependencies } = JSON.parse(
      read('node_modules/@myriaddreamin/typst-ts-node-compiler/package.json'),
    ) as { optionalDependencies: Record<string, string> };
    const built = Object.keys(optionalDependencies)
      .map((name) => name.replace('@myriaddreamin/typst-ts-node-compiler-', ''))
      .filter((name) => !name.startsWith('android'));
    expect(Object.values(targets).sort()).toEqual(built.sort());
  });
});

describe('the settings', () => {
  const settings: Record<string, Record<string, unknown>> = JSON.parse(read('package.json')).contributes.configuration
    .properties;

  it.each(Object.keys(settings))('%s has a description in Markdown, and of its values too', (name) => {
    const { markdownDescription, description, enumDescriptions } = settings[name]!;
    expect(markdownDescription).toMatch(/\.$/u);
    expect([description, enumDescriptions]).toEqual([undefined, undefined]);
  });
});

describe('the page of the extension', () => {
  const page = packagedReadme(read('README.md'));

  it('shows no picture, and leads to no file: the editor resolves neither', () => {
    expect(page).not.toMatch(/!\[/u);
    expect([...page.matchAll(/\]\((?!https:|#)([^)]+)\)/gu)].map(([, to]) => to)).toEqual([]);
    expect(read('README.md')).toMatch(/!\[/u);
  });

  it('says where the pictures are, and they are there', () => {
    expect(page).toContain('Handtight: Take the Tour');
    const { contributes } = JSON.parse(read('package.json'));
    const shown = (contributes.walkthroughs[0].steps as { media: { markdown: string } }[]).flatMap(({ media }) => {
      expect(existsSync(join(root, media.markdown))).toBe(true);
      return [...read(media.markdown).matchAll(/!\[[^\]]+\]\(([^)]+)\)/gu)].map(([, to]) =>
        join('extension/walkthrough', to!),
      );
    });
    expect(shown).toHaveLength(7);
    for (const picture of shown) {
      expect(existsSync(join(root, picture)), picture).toBe(true);
      expect(ignored).toContain(`!${picture}`);
    }
  });
});
