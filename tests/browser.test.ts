/** The language server in a worker of a browser: bundled for one, and run where there is nothing of Node. */
import { existsSync } from 'node:fs';
import { isBuiltin } from 'node:module';
import { createContext, runInContext } from 'node:vm';
import { build } from 'esbuild';
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import type { CompletionItem, Hover, Diagnostic as LspDiagnostic } from 'vscode-languageserver-types';
import { browserWorker } from '../server/build/bundles.ts';
import type { PrintResult, SheetResult, SpecsResult } from '../server/lsp/requests.ts';
import { libraryFiles, root } from './library.ts';
import { noBrowser } from './sheet/chromium.ts';
import { startBrowser } from './workbench/browser.ts';

interface Message {
  readonly id?: number | string;
  readonly method?: string;
  readonly params?: unknown;
  readonly result?: unknown;
  readonly error?: { readonly message: string };
}

/** A worker that runs the server. */
interface Worker {
  send(message: Message): void;
  hear(listener: (message: Message) => void): void;
  end(): Promise<void>;
}

const folder = 'memfs:/shop';
const files = new Map(libraryFiles().map(({ uri, text }) => [`${folder}/${uri}`, text]));
const uri = `${folder}/procedures/first/first.rebuild`;
/** In a folder that is passed over. */
const hidden = `${folder}/node_modules/old.rebuild`;
files.set(hidden, 'nothing that can be read');

/** An editor that has the files of the library, and speaks with a server in a worker. */
class Editor {
  readonly #worker: Worker;
  readonly #waiting = new Map<unknown, { done: (result: unknown) => void; fail: (error: Error) => void }>();
  readonly diagnostics = new Map<string, LspDiagnostic[]>();
  /** Checks that have ended. */
  checks = 0;
  #ids = 0;

  constructor(worker: Worker) {
    this.#worker = worker;
    worker.hear(({ id, method, params, result, error }) => {
      if (method === undefined) {
        const waiting = this.#waiting.get(id)!;
        if (error === undefined) waiting.done(result);
        else waiting.fail(new Error(error.message));
      } else if (id !== undefined) worker.send({ id, result: this.#answer(method, params) });
      else if (method === 'textDocument/publishDiagnostics') {
        const { uri: of, diagnostics } = params as { uri: string; diagnostics: LspDiagnostic[] };
        this.diagnostics.set(of, diagnostics);
      } else if (method === 'handtight/checked') this.checks++;
    });
  }

  #answer(method: string, params: unknown): unknown {
    if (method === 'handtight/findFiles') return [...files.keys()];
    if (method !== 'handtight/readFile') return null;
    const text = files.get((params as { uri: string }).uri);
    return text === undefined ? null : { text };
  }

  tell(method: string, params: unknown): void {
    this.#worker.send({ method, params });
  }

  ask<T>(method: string, params: unknown): Promise<T> {
    const id = ++this.#ids;
    return new Promise((resolve, fail) => {
      this.#waiting.set(id, { done: (result) => resolve(result as T), fail });
      this.#worker.send({ id, method, params });
    });
  }
}

/** What a worker of a browser has, and nothing else: no `process`, no `require`, no `Buffer`. */
function bareWorker(code: string): Worker {
  let listener: (message: Message) => void = () => {};
  const realm: Record<string, unknown> = {
    postMessage: (data: Message) => listener(structuredClone(data)),
    addEventListener: () => {},
    ...{ TextEncoder, TextDecoder, URL, btoa, crypto, performance, queueMicrotask, Uint8Array, MessageChannel },
    ...{ setTimeout, clearTimeout, setInterval, clearInterval },
    console: { log: () => {}, info: () => {}, warn: () => {}, error: () => {} },
  };
  realm.self = realm;
  createContext(realm);
  runInContext(code, realm);
  return {
    send: (data) => setImmediate(() => (realm.onmessage as (event: unknown) => void)({ data: structuredClone(data) })),
    hear: (one) => {
      listener = one;
    },
    end: async () => {},
  };
}

/** A worker of Chromium. */
async function chromiumWorker(code: string): Promise<Worker> {
  const browser = await startBrowser();
  const page = await browser.newPage();
  // Web Crypto is there on a page of this machine, and not on one without an address.
  await page.route('http://localhost/**', (route) =>
    route.request().url().endsWith('.js')
      ? route.fulfill({ contentType: 'text/javascript', body: code })
      : route.fulfill({ contentType: 'text/html', body: '<!doctype html><title>worker</title>' }),
  );
  await page.goto('http://localhost/');
  let listener: (message: Message) => void = () => {};
  await page.exposeFunction('heard', (message: Message) => listener(message));
  await page.evaluate(`{
    globalThis.server = new Worker('/server-worker.js');
    server.onmessage = ({ data }) => heard(data);
    server.onerror = ({ message }) => heard({ method: 'error', params: message });
  }`);
  return {
    send: (message) => void page.evaluate(`server.postMessage(${JSON.stringify(message)})`),
    hear: (one) => {
      listener = one;
    },
    end: () => browser.close(),
  };
}

let code = '';

describe('the bundle for browsers', () => {
  it('has nothing of Node in it, and nothing beside it', async () => {
    const { outputFiles, metafile } = await build({
      ...browserWorker,
      absWorkingDir: root,
      sourcemap: false,
      write: false,
    });
    code = outputFiles![0]!.text;
    const imports = [
      ...Object.values(metafile!.inputs).flatMap((input) => input.imports.map(({ path }) => path)),
      ...Object.values(metafile!.outputs).flatMap((output) => output.imports.map(({ path }) => path)),
    ];
    expect(imports.length).toBeGreaterThan(500);
    expect(imports.filter((path) => path.startsWith('node:') || isBuiltin(path))).toEqual([]);
    expect(Object.values(metafile!.outputs).flatMap((output) => output.imports)).toEqual([]);
  });

  it('is what npm run build writes', () => {
    expect(existsSync(`${root}/out/server-worker.js`)).toBe(true);
  });
});

describe.each([
  ['a bare realm', async () => bareWorker(code), false],
  ['Chromium', () => chromiumWorker(code), noBrowser !== null],
] as const)('the server in %s', (_, start, isSkipped) => {
  if (isSkipped) return it.skip('runs', () => {});
  let worker: Worker;
  let editor: Editor;
  const text = files.get(uri)!;
  const flawed = text.replace('torque plug to plug-fit', 'torque plug to plug-fot');
  const at = (words: string) => {
    const lines = flawed.slice(0, flawed.indexOf(words) + words.length).split('\n');
    return { line: lines.length - 1, character: lines.at(-1)!.length };
  };

  beforeAll(async () => {
    worker = await start();
    editor = new Editor(worker);
    const workspaceFolders = [{ uri: folder, name: 'shop' }];
    const capabilities = { textDocument: { completion: { completionItem: { snippetSupport: true } } } };
    await editor.ask('initialize', { processId: null, rootUri: null, workspaceFolders, capabilities });
    editor.tell('initialized', {});
    await vi.waitUntil(() => editor.checks > 0, { timeout: 20_000 });
    editor.tell('textDocument/didOpen', { textDocument: { uri, languageId: 'rebuild', version: 1, text: flawed } });
    await vi.waitUntil(() => (editor.diagnostics.get(uri)?.length ?? 0) > 0, { timeout: 20_000 });
  });
  afterAll(() => worker?.end());

  it('reads the files of the client, and checks them', () => {
    expect(editor.diagnostics.get(uri)!.map(({ code: rule }) => rule)).toContain('unknown-name');
    const others = [...editor.diagnostics].filter(([of]) => of !== uri).flatMap(([, list]) => list);
    expect(others.filter(({ severity }) => severity === 1)).toEqual([]);
    expect(editor.diagnostics.get(hidden)).toBeUndefined();
  });

  it('says what a name is, and what may be written', async () => {
    const hover = await editor.ask<Hover>('textDocument/hover', { textDocument: { uri }, position: at('slacken plu') });
    expect(hover.contents).toMatchObject({ value: expect.stringContaining('part plug') });
    const position = at('torque plug to ');
    const items = await editor.ask<CompletionItem[]>('textDocument/completion', { textDocument: { uri }, position });
    expect(items.map(({ label }) => label)).toContain('plug-fit');
  });

  it('shows the sheet with its fonts and its hash, and the specifications', async () => {
    const sheet = await editor.ask<SheetResult>('handtight/sheet', { uri });
    expect(sheet).toMatchObject({ kind: 'sheet', errors: expect.any(Number) });
    const { html } = sheet as Extract<SheetResult, { kind: 'sheet' }>;
    expect(html).toMatch(/@font-face[^}]*data:font\/ttf;base64,/u);
    expect(html).toMatch(/sheet\?[^"]*hash=[0-9a-f]{12}/u);
    expect(html).toContain('data-source-line');
    expect(await editor.ask<SpecsResult>('handtight/specs', { uri })).toMatchObject({ kind: 'specs' });
  });

  it('refuses parameters of the wrong form with words, and goes on', async () => {
    await expect(editor.ask('handtight/sheet', { uri: 7 })).rejects.toThrow(/expected string, received number/u);
  });

  it('prints a page where there is no typesetter: whole in itself, and only with the mark of a draft where there are errors', async () => {
    const refused = await editor.ask<PrintResult>('handtight/print', { uri, folder });
    expect(refused).toMatchObject({ kind: 'errors', errors: expect.any(Number) });
    const printed = await editor.ask<PrintResult>('handtight/print', { uri, folder, draft: true });
    expect(printed).toMatchObject({ kind: 'page', name: expect.stringMatching(/-draft$/u) });
    const { html } = printed as Extract<PrintResult, { kind: 'page' }>;
    expect(html).toMatch(/Content-Security-Policy[^>]*default-src/u);
    expect(html).toMatch(/@font-face[^}]*data:font\/ttf;base64,/u);
  });
});
