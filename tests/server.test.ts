/** The language server as an editor meets it: a process of its own, spoken to over its standard streams. */
import { type ChildProcess, spawn, spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { afterAll, afterEach, beforeAll, expect, test } from 'vitest';
import {
  CancellationTokenSource,
  type CodeAction,
  type CompletionItem,
  createProtocolConnection,
  type DocumentSymbol,
  type Hover,
  type InitializeResult,
  type Location,
  type Diagnostic as LspDiagnostic,
  type ProtocolConnection,
  type PublishDiagnosticsParams,
  StreamMessageReader,
  StreamMessageWriter,
} from 'vscode-languageserver-protocol/node';
import { TextDocument } from 'vscode-languageserver-textdocument';
import type { PrintResult, SheetResult, SpecsResult } from '../server/lsp/requests.ts';
import { procedureText, shopText } from './holder.ts';

const root = fileURLToPath(new URL('..', import.meta.url));

/** Each session starts a process from source: what one has compiled, the others read. */
const compiled = mkdtempSync(join(tmpdir(), 'handtight-compiled-'));
const start = [join(root, 'server/lsp/main.ts'), '--stdio'];
const env = { ...process.env, NODE_COMPILE_CACHE: compiled };
// It writes what it has compiled when it ends by itself, as with nothing to read.
beforeAll(() => void spawnSync(process.execPath, start, { input: '', env }));
afterAll(() => rmSync(compiled, { recursive: true, force: true }));

/** One server with a folder of its own, and what it has pushed so far. */
class Session {
  readonly folder = mkdtempSync(join(tmpdir(), 'handtight-server-'));
  readonly process: ChildProcess;
  readonly connection: ProtocolConnection;
  readonly pushed = new Map<string, LspDiagnostic[]>();
  readonly exited: Promise<number | null>;
  checks = 0;
  #documents = new Map<string, TextDocument>();

  constructor() {
    this.process = spawn(process.execPath, start, { stdio: ['pipe', 'pipe', 'inherit'], env });
    this.exited = new Promise((resolve) => this.process.once('exit', (code) => resolve(code)));
    this.connection = createProtocolConnection(
      new StreamMessageReader(this.process.stdout!),
      new StreamMessageWriter(this.process.stdin!),
    );
    this.connection.onNotification(
      'textDocument/publishDiagnostics',
      ({ uri, diagnostics }: PublishDiagnosticsParams) => {
        this.pushed.set(uri, diagnostics);
      },
    );
    this.connection.onNotification('handtight/checked', () => {
      this.checks++;
    });
    this.connection.listen();
  }

  uri(name: string): string {
    return pathToFileURL(join(this.folder, name)).href;
  }

  write(name: string, content: string | Uint8Array): void {
    writeFileSync(join(this.folder, name), content);
  }

  async begin(folders: readonly string[] = ['']): Promise<InitializeResult> {
    mkdirSync(join(this.folder, 'pages/language'), { recursive: true });
    this.write('pages/language/unknown-name.md', '# unknown-name\n');
    const result = await this.connection.sendRequest<InitializeResult>('initialize', {
      processId: process.pid,
      rootUri: null,
      workspaceFolders: folders.map((name) => ({
        uri: pathToFileURL(join(this.folder, name)).href,
        name: `test ${name}`,
      })),
      capabilities: { workspace: { workspaceEdit: { documentChanges: true } } },
      initializationOptions: { rulePages: this.uri('pages'), explainCommand: 'handtight.explain' },
    });
    await this.connection.sendNotification('initialized', {});
    await this.checked(0);
    return result;
  }

  /** Waits for a check that ended after the count. */
  async checked(after: number): Promise<void> {
    await expect.poll(() => this.checks, { timeout: 60_000, interval: 10 }).toBeGreaterThan(after);
  }

  async open(name: string, text: string): Promise<TextDocument> {
    const { checks } = this;
    const document = TextDocument.create(this.uri(name), 'rebuild', 1, text);
    this.#documents.set(name, document);
    await this.connection.sendNotification('textDocument/didOpen', {
      textDocument: { uri: document.uri, languageId: 'rebuild', version: 1, text },
    });
    await this.checked(checks);
    return document;
  }

  /** Puts a text in the place of another, as typed, and waits for the check. */
  async type(name: string, old: string, text: string): Promise<TextDocument> {
    const { checks } = this;
    const document = await this.edit(name, old, text);
    await this.checked(checks);
    return document;
  }

  /** The same, and does not wait. */
  async edit(name: string, old: string, text: string): Promise<TextDocument> {
    const document = this.#documents.get(name)!;
    const offset = document.getText().indexOf(old);
    expect(offset, `"${old}" stands in the document`).toBeGreaterThanOrEqual(0);
    const change = {
      range: { start: document.positionAt(offset), end: document.positionAt(offset + old.length) },
      text,
    };
    const version = document.version + 1;
    TextDocument.update(document, [change], version);
    await this.connection.sendNotification('textDocument/didChange', {
      textDocument: { uri: document.uri, version },
      contentChanges: [change],
    });
    return document;
  }

  async changedOnDisk(name: string, type: 1 | 2 | 3): Promise<void> {
    const { checks } = this;
    await this.connection.sendNotification('workspace/didChangeWatchedFiles', {
      changes: [{ uri: this.uri(name), type }],
    });
    await this.checked(checks);
  }

  rules(name: string): unknown[] {
    return (this.pushed.get(this.uri(name)) ?? []).map(({ code }) => code);
  }

  async ask<T>(method: string, document: TextDocument, text: string, more: object = {}): Promise<T> {
    const offset = document.getText().indexOf(text);
    expect(offset, `"${text}" is in the document`).toBeGreaterThanOrEqual(0);
    const position = document.positionAt(offset + text.length);
    return this.connection.sendRequest<T>(method, { textDocument: { uri: document.uri }, position, ...more });
  }

  end(): void {
    this.connection.dispose();
    this.process.kill('SIGKILL');
    rmSync(this.folder, { recursive: true, force: true });
  }
}

let session: Session;

async function begun(
  files: Readonly<Record<string, string | Uint8Array>> = {
    'shop.rebuild': shopText,
    'procedure.rebuild': procedureText,
  },
): Promise<Session> {
  session = new Session();
  for (const [name, content] of Object.entries(files)) session.write(name, content);
  await session.begin();
  return session;
}

afterEach(() => session.end());

test('says what it can do', async () => {
  session = new Session();
  const { capabilities } = await session.begin();
  expect(capabilities).toMatchObject({
    completionProvider: {},
    hoverProvider: true,
    definitionProvider: true,
    codeActionProvider: {},
  });
});

test('tells of a mistake as it is typed, with the page of its rule, and takes it back', async () => {
  const session = await begun();
  await session.open('procedure.rebuild', procedureText);
  await session.type('procedure.rebuild', 'remove cap, nut, nozzle', 'remove cap, nut, nozzel');
  const found = session.pushed.get(session.uri('procedure.rebuild'))!.find(({ code }) => code === 'unknown-name')!;
  expect(found).toMatchObject({ severity: 1, source: 'handtight', range: { start: { line: 10 } } });
  expect(found.codeDescription?.href).toBe(session.uri('pages/language/unknown-name.md'));
  await session.type('procedure.rebuild', 'nozzel', 'nozzle');
  expect(session.rules('procedure.rebuild')).not.toContain('unknown-name');
});

test('what is found elsewhere appears at once, and what is at the word being typed after a pause', async () => {
  const session = await begun();
  await session.open('procedure.rebuild', procedureText);
  const atWord = () => session.rules('procedure.rebuild').includes('unknown-name');
  const { checks } = session;
  await session.edit('procedure.rebuild', 'remove cap, nut, nozzle', 'remove cap, nut, nozz');
  await expect.poll(() => session.pushed.get(session.uri('procedure.rebuild'))?.length ?? 0).toBeGreaterThan(0);
  expect(atWord()).toBe(false);
  await session.checked(checks);
  expect(atWord()).toBe(true);
});

test('a request that is canceled before its turn is refused as such', async () => {
  const session = await begun();
  const document = await session.open('procedure.rebuild', procedureText);
  const textDocument = { uri: document.uri };
  const source = new CancellationTokenSource();
  const answers = [1, 2, 3].map(() =>
    session.connection
      .sendRequest('textDocument/documentSymbol', { textDocument }, source.token)
      .then(() => 'answered')
      .catch(({ code }: { code: number }) => code),
  );
  source.cancel();
  expect(await Promise.all(answers)).toContain(-32800);
  expect(await session.ask('textDocument/hover', document, 'slacken nu')).not.toBeNull();
});

test('a change of one file shows in another that is closed', async () => {
  const session = await begun();
  await session.open('shop.rebuild', shopText);
  await session.type('shop.rebuild', 'part cap "Shipping cap" on nut', 'part cover "Shipping cap" on nut');
  expect(session.rules('procedure.rebuild')).toContain('unknown-name');
});

test('lists what a file declares', async () => {
  const session = await begun();
  const symbols = await session.connection.sendRequest<DocumentSymbol[]>('textDocument/documentSymbol', {
    textDocument: { uri: session.uri('procedure.rebuild') },
  });
  expect(symbols.map(({ name, detail }) => [name, detail])).toEqual([['rebuild', 'Rebuild and set']]);
  expect(symbols[0]!.children!.map(({ name }) => name)).toEqual(['opening', 'nut-fit', 'A-250', 'teardown', 'again']);
});

test('offers what may be written: all of it on request, names alone while typing', async () => {
  const session = await begun();
  const document = await session.open('procedure.rebuild', procedureText);
  const complete = async (half: string, context: object) => {
    await session.edit('procedure.rebuild', '    slacken nut\n', `    slacken nut\n    ${half}\n`);
    const line = `    slacken nut\n    ${half}`;
    const items = await session.ask<CompletionItem[]>('textDocument/completion', document, line, { context });
    await session.edit('procedure.rebuild', `${line}\n`, '    slacken nut\n');
    return items;
  };
  const typed = { triggerKind: 2, triggerCharacter: ' ' };
  expect(await complete('rinse nut in ', { triggerKind: 1 })).toEqual([
    {
      label: 'cal-oil',
      kind: 12,
      detail: 'Calibration fluid',
      labelDetails: { description: 'Calibration fluid' },
      sortText: '10cal-oil',
      data: { uri: document.uri, label: 'cal-oil', kind: 'name', names: 'fluid', about: 'shop bench' },
    },
  ]);
  expect(await complete('slacken nut ', typed)).toEqual([]);
  expect((await complete('slacken ', typed)).map(({ label }) => label)).toContain('nut');
});

test('offers fixes with edits of the open document, and all safe ones on a request by kind', async () => {
  const session = await begun();
  await session.open('procedure.rebuild', procedureText);
  const document = await session.type('procedure.rebuild', 'remove cap, nut, nozzle', 'remove cap, nut, nozzel');
  const ask = (context: object) =>
    session.connection.sendRequest<CodeAction[]>('textDocument/codeAction', {
      textDocument: { uri: document.uri },
      range: { start: { line: 10, character: 0 }, end: { line: 11, character: 0 } },
      context: { diagnostics: [], ...context },
    });
  const quick = await ask({});
  const fix = quick.find(({ isPreferred }) => isPreferred)!;
  expect(fix).toMatchObject({ kind: 'quickfix', diagnostics: [{ code: 'unknown-name' }] });
  expect(fix.edit!.documentChanges).toMatchObject([{ textDocument: { uri: document.uri, version: document.version } }]);
  expect(applied(document, fix)).toContain('remove cap, nut, nozzle\n');
  expect(quick.find(({ title }) => title === 'Explain unknown-name')!.command).toMatchObject({
    command: 'handtight.explain',
    arguments: ['unknown-name'],
  });
  expect(quick.filter(({ kind }) => kind?.startsWith('source'))).toEqual([]);
  const [all] = await ask({ only: ['source.fixAll'] });
  expect(all).toMatchObject({ title: 'Apply all safe fixes', kind: 'source.fixAll.handtight' });
  expect(applied(document, all!)).toBe(procedureText);
});

test('a name leads to its declaration and says what it is', async () => {
  const session = await begun();
  const document = await session.open('procedure.rebuild', procedureText);
  const locations = await session.ask<Location[]>('textDocument/definition', document, 'slacken nu');
  expect(locations).toEqual([
    {
      uri: session.uri('shop.rebuild'),
      range: { start: { line: 10, character: 7 }, end: { line: 10, character: 10 } },
    },
  ]);
  const hover = await session.ask<Hover>('textDocument/hover', document, 'slacken nu');
  expect(hover.contents).toMatchObject({
    value: expect.stringContaining('part nut "Nozzle nut" on body holds nozzle'),
  });
  expect(await session.ask('textDocument/hover', document, 'revis')).toBeNull();
});

test('the list of problems says what is wrong and what to do, and the hover why', async () => {
  const session = await begun();
  await session.open('procedure.rebuild', procedureText);
  const document = await session.type('procedure.rebuild', '    clamp body in "holding fixture"\n', '');
  const problem = session.pushed.get(document.uri)!.find(({ code }) => code === 'not-clamped')!;
  expect(problem.message).toMatch(
    /^Step \d+\.\d+: Nothing holds the unit while the nozzle nut is broken loose\. Clamp it first/u,
  );
  const hover = await session.connection.sendRequest<Hover>('textDocument/hover', {
    textDocument: { uri: document.uri },
    position: problem.range.start,
  });
  expect(hover.contents).toMatchObject({ value: expect.stringContaining('**not-clamped**: it turns in the hand') });
});

test('shows the sheet, and prints it as a draft only while there are errors', async () => {
  const session = await begun();
  const uri = session.uri('procedure.rebuild');
  const sheet = await session.connection.sendRequest<SheetResult>('handtight/sheet', {
    uri,
    position: { line: 9, character: 0 },
  });
  expect(sheet).toMatchObject({ kind: 'sheet', title: 'Rebuild and set', lines: { first: 0 } });
  expect(sheet.kind === 'sheet' && sheet.html).toContain('data-source-line="9"');
  expect(await session.connection.sendRequest('handtight/sheet', { uri: session.uri('shop.rebuild') })).toMatchObject({
    kind: 'none',
  });

  const folder = session.uri('traveler');
  const refused = await session.connection.sendRequest<PrintResult>('handtight/print', { uri, folder });
  expect(refused).toMatchObject({ kind: 'errors', title: 'Rebuild and set' });
  const printed = await session.connection.sendRequest<PrintResult>('handtight/print', { uri, folder, draft: true });
  expect(printed).toMatchObject({ kind: 'printed', file: session.uri('traveler/rebuild-revision-A-draft.pdf') });
});

test('finds what a sheet was printed from by the code on it, and says when the text has changed since', async () => {
  const session = await begun();
  const document = await session.open('procedure.rebuild', procedureText);
  const uri = session.uri('procedure.rebuild');
  const sheet = await session.connection.sendRequest<SheetResult>('handtight/sheet', { uri });
  const [, code] = /href="vscode:\/\/handtight\.handtight\/sheet\?([^"]+)"/u.exec(
    sheet.kind === 'sheet' ? sheet.html : '',
  )!;
  const said = Object.fromEntries(new URLSearchParams(code!.replaceAll('&amp;', '&')));
  const question = { procedure: said.procedure!, job: said.job!, hash: said.hash! };
  const ask = (more = {}) => session.connection.sendRequest('handtight/printLink', { ...question, ...more });
  expect(await ask()).toMatchObject({ kind: 'found', uri, position: { line: 0 }, same: true });
  expect(await ask({ hash: '000000000000' })).toMatchObject({ kind: 'found', same: false });
  expect(await ask({ hash: '' })).toMatchObject({ kind: 'found', same: false });
  expect(await ask({ procedure: 'other' })).toMatchObject({ kind: 'none', reason: expect.stringContaining('other') });

  const retype = (text: string, version: number) =>
    session.connection.sendNotification('textDocument/didChange', {
      textDocument: { uri, version: document.version + version },
      contentChanges: [{ text }],
    });
  await retype(`// A remark prints nowhere.\r\n${procedureText.replaceAll('\n', '\r\n')}`, 1);
  expect(await ask()).toMatchObject({ kind: 'found', position: { line: 1 }, same: true });
  await retype(procedureText.replace('relieve', 'relieve note "Slowly"'), 2);
  expect(await ask()).toMatchObject({ kind: 'found', same: false });
});

test('gives a sheet the same hash as the command does', async () => {
  const session = await begun();
  await session.open('procedure.rebuild', procedureText);
  const sheet = await session.connection.sendRequest<SheetResult>('handtight/sheet', {
    uri: session.uri('procedure.rebuild'),
  });
  writeFileSync(join(session.folder, 'procedure.rebuild'), `\uFEFF${procedureText.replaceAll('\n', '\r\n')}`);
  const command = [join(root, 'server/cli/main.ts'), 'print', 'rebuild', '--draft', '--format', 'html', '--to', 'new'];
  expect(spawnSync(process.execPath, command, { cwd: session.folder, encoding: 'utf8' })).toMatchObject({ status: 0 });
  const printed = readFileSync(join(session.folder, 'new/rebuild-revision-A-draft.html'), 'utf8');
  const hashOf = (html: string) => /sheet\?[^"]*hash=(\w+)/u.exec(html)?.[1];
  expect(hashOf(printed)).toMatch(/^[0-9a-f]{12}$/u);
  expect(sheet.kind === 'sheet' && hashOf(sheet.html)).toBe(hashOf(printed));
});

test('shows the specifications, as they are typed', async () => {
  const session = await begun();
  await session.open('procedure.rebuild', procedureText);
  const ask = () =>
    session.connection.sendRequest<SpecsResult>('handtight/specs', {
      uri: session.uri('procedure.rebuild'),
      position: { line: 9, character: 0 },
    });
  const specs = await ask();
  // Nothing torques the nut, and nothing uses the specs yet.
  expect(specs).toMatchObject({ kind: 'specs', title: 'Rebuild and set', lines: { first: 0 }, missing: 1 });
  expect(specs.kind === 'specs' && specs.html.includes('no step torques it')).toBe(true);
  await session.type(
    'procedure.rebuild',
    '    unclamp body\n',
    '    torque nut to nut-fit with TW-80\n    unclamp body\n',
  );
  const typed = await ask();
  expect(typed).toMatchObject({ kind: 'specs', missing: 0 });
  // The page has its fonts in it: they would fill the report of a failure.
  const body = typed.kind === 'specs' ? typed.html.slice(typed.html.indexOf('<body>')) : '';
  expect(body).toMatch(/data-source-line="4"[^>]*><b>60\u00a0N·m<\/b>/u);
  expect(await session.connection.sendRequest('handtight/specs', { uri: session.uri('shop.rebuild') })).toMatchObject({
    kind: 'none',
  });
  await expect(session.connection.sendRequest('handtight/specs', { uri: 7 })).rejects.toThrow(/uri/);
});

test('a question of the wrong form is refused and the server lives on', async () => {
  const session = await begun();
  await expect(session.connection.sendRequest('handtight/sheet', { uri: 7 })).rejects.toThrow(/uri/);
  await expect(
    session.connection.sendRequest('handtight/print', {
      uri: session.uri('procedure.rebuild'),
      folder: 'file:///x',
      paper: 'a0',
    }),
  ).rejects.toThrow();
  expect(await session.connection.sendRequest('handtight/sheet', { uri: 'untitled:Untitled-1' })).toMatchObject({
    kind: 'none',
  });
});

test('a file deleted while open is served until it is closed, and then gone', async () => {
  const session = await begun();
  const document = await session.open('procedure.rebuild', procedureText);
  rmSync(join(session.folder, 'procedure.rebuild'));
  await session.changedOnDisk('procedure.rebuild', 3);
  await session.type('procedure.rebuild', 'remove cap, nut, nozzle', 'remove cap, nut, nozzel');
  expect(session.rules('procedure.rebuild')).toContain('unknown-name');
  const { checks } = session;
  await session.connection.sendNotification('textDocument/didClose', { textDocument: { uri: document.uri } });
  await session.checked(checks);
  expect(session.rules('procedure.rebuild')).toEqual([]);
});

test('a copy from elsewhere is checked for itself, and changes nothing in the workspace', async () => {
  const session = await begun();
  await session.open('procedure.rebuild', procedureText);
  const before = session.pushed.get(session.uri('procedure.rebuild'));
  const elsewhere = mkdtempSync(join(tmpdir(), 'handtight-elsewhere-'));
  const copy = pathToFileURL(join(elsewhere, 'procedure.rebuild')).href;
  const { checks } = session;
  const text = procedureText
    .replace('spec nut-fit torque 60', 'spec nut-fit torque 55')
    .replace('nut, nozzle', 'nut, nozzel');
  await session.connection.sendNotification('textDocument/didOpen', {
    textDocument: { uri: copy, languageId: 'rebuild', version: 1, text },
  });
  await session.checked(checks);
  expect(session.pushed.get(session.uri('procedure.rebuild'))).toEqual(before);
  const codes = session.pushed.get(copy)!.map(({ code }) => code);
  // It sees the family of the workspace, and has its own mistake.
  expect(codes).not.toContain('duplicate-name');
  expect(codes.filter((code) => code === 'unknown-name')).toHaveLength(1);
  const definition = await session.connection.sendRequest<Location[]>('textDocument/definition', {
    textDocument: { uri: copy },
    position: { line: 0, character: procedureText.indexOf('holder at') + 1 },
  });
  expect(definition.map(({ uri }) => uri)).toEqual([session.uri('shop.rebuild')]);
  const { checks: then } = session;
  await session.connection.sendNotification('textDocument/didClose', { textDocument: { uri: copy } });
  await session.checked(then);
  expect(session.pushed.get(copy)).toEqual([]);
  rmSync(elsewhere, { recursive: true, force: true });
});

test('each folder of the workspace is a world of its own, names and settings', async () => {
  const flawed = procedureText.replace('nut, nozzle', 'nut, nozzel');
  session = new Session();
  for (const folder of ['one', 'two']) {
    mkdirSync(join(session.folder, folder));
    session.write(`${folder}/shop.rebuild`, shopText);
    session.write(`${folder}/procedure.rebuild`, folder === 'two' ? flawed : procedureText);
  }
  session.write('two/handtight.json', '{ "severities": { "not-marked": "off" } }');
  await session.begin(['one', 'two']);
  expect(session.rules('one/procedure.rebuild')).not.toContain('duplicate-name');
  expect(session.rules('one/procedure.rebuild')).not.toContain('unknown-name');
  expect(session.rules('two/procedure.rebuild')).toContain('unknown-name');
  expect(session.rules('one/procedure.rebuild')).toContain('not-marked');
  expect(session.rules('two/procedure.rebuild')).not.toContain('not-marked');
});

test('binary, UTF-16 and empty files are reported, and nothing else of the folder is lost', async () => {
  const session = await begun({
    'binary.rebuild': new Uint8Array([0, 1, 2, 3, 0, 255, 254]),
    'empty.rebuild': '',
    'wide.rebuild': new Uint8Array([0xff, 0xfe, ...Buffer.from(shopText, 'utf16le')]),
    'shop.rebuild': shopText,
    'procedure.rebuild': procedureText.replace('remove cap, nut, nozzle', 'remove cap, nut, nozzel'),
  });
  expect(session.rules('binary.rebuild')).toHaveLength(1);
  expect(session.pushed.get(session.uri('wide.rebuild'))).toMatchObject([
    { message: expect.stringContaining('UTF-16') },
  ]);
  expect(session.rules('empty.rebuild')).toEqual([]);
  expect(session.rules('procedure.rebuild')).toContain('unknown-name');
});

test('one entry that cannot be read costs itself, and links are followed as on the command line', async () => {
  session = new Session();
  session.write('shop.rebuild', shopText);
  mkdirSync(join(session.folder, 'out'));
  session.write('out/old.rebuild', procedureText);
  mkdirSync(join(session.folder, 'deep'));
  session.write('deep/p.rebuild', procedureText.replace('remove cap, nut, nozzle', 'remove cap, nut, nozzel'));
  symlinkSync('gone.rebuild', join(session.folder, 'lost.rebuild'));
  symlinkSync('..', join(session.folder, 'deep/up'));
  symlinkSync('deep', join(session.folder, 'again'));
  spawnSync('mkfifo', [join(session.folder, 'pipe.rebuild')]);
  await session.begin();
  expect(session.pushed.get(session.uri('lost.rebuild'))).toMatchObject([
    { code: 'unreadable-file', severity: 1, message: expect.stringContaining('link to gone.rebuild') },
  ]);
  expect(session.rules('pipe.rebuild')).toEqual(['unreadable-file']);
  expect(session.rules('deep/p.rebuild')).toContain('unknown-name');
  // Found once: no name is declared twice.
  expect([...session.pushed.values()].flat().filter(({ code }) => code === 'duplicate-name')).toEqual([]);
  // What the walk passes over is not read when it changes either.
  await session.changedOnDisk('out/old.rebuild', 2);
  expect([...session.pushed.values()].flat().filter(({ code }) => code === 'duplicate-name')).toEqual([]);
});

test('only the settings at the top are in force; broken ones hold the sheets back', async () => {
  session = new Session();
  session.write('shop.rebuild', shopText);
  session.write(
    'procedure.rebuild',
    `${procedureText}\nsequence spare {\n  receive allow no-sign-off because "x"\n}\n`,
  );
  session.write('handtight.json', '{ "severities": { "allow-without-effect": "error" } }');
  mkdirSync(join(session.folder, 'sub'));
  session.write('sub/handtight.json', '{ "severities": { "allow-without-effect": "off" } }');
  await session.begin();
  const idle = () =>
    session.pushed.get(session.uri('procedure.rebuild'))?.find(({ code }) => code === 'allow-without-effect')?.severity;
  expect(idle()).toBe(1);
  expect(session.pushed.get(session.uri('sub/handtight.json'))).toMatchObject([
    { code: 'settings-not-read', severity: 2, message: expect.stringContaining('only the one at the top') },
  ]);
  session.write('handtight.json', '{ "severities": ');
  await session.changedOnDisk('handtight.json', 2);
  expect(session.rules('handtight.json')).toEqual(['settings-unreadable']);
  expect(idle()).toBe(2);
  const question = { uri: session.uri('procedure.rebuild'), folder: session.uri('traveler') };
  expect(await session.connection.sendRequest<PrintResult>('handtight/print', question)).toMatchObject({
    kind: 'errors',
  });
  rmSync(join(session.folder, 'handtight.json'));
  await session.changedOnDisk('handtight.json', 3);
  expect(session.rules('handtight.json')).toEqual([]);
  expect(session.pushed.get(session.uri('sub/handtight.json'))).toMatchObject([{ code: 'settings-not-read' }]);
});

test('what the settings leave out is not read, and is a file from elsewhere where it is opened', async () => {
  session = new Session();
  session.write('shop.rebuild', shopText);
  session.write('procedure.rebuild', procedureText);
  mkdirSync(join(session.folder, 'archive'));
  session.write('archive/old.rebuild', procedureText);
  session.write('handtight.json', '{ "exclude": ["archive/"] }');
  await session.begin();
  const twice = () => [...session.pushed.values()].flat().filter(({ code }) => code === 'duplicate-name').length;
  expect(twice()).toBe(0);
  await session.changedOnDisk('archive/old.rebuild', 2);
  expect(twice()).toBe(0);
  // It sees the others' names, as one from elsewhere does, and they do not see its own.
  await session.open('archive/old.rebuild', procedureText);
  expect(twice()).toBe(0);
  expect(session.rules('archive/old.rebuild')).toContain('not-marked');
  // What is saved in the settings counts at once.
  session.write('handtight.json', '{}');
  await session.changedOnDisk('handtight.json', 2);
  expect(session.rules('procedure.rebuild')).toContain('duplicate-name');
  session.write('handtight.json', '{ "exclude": ["archive/"] }');
  await session.changedOnDisk('handtight.json', 2);
  expect(session.rules('procedure.rebuild')).not.toContain('duplicate-name');
});

test('a file of 10 MB does not hold the others up', async () => {
  const session = await begun();
  const line = '    remove nut, nozzle // and so on, and so on, and so on\n';
  await session.open(
    'long.rebuild',
    `procedure long "Long" for holder at bench {\n  stage s at strip {\n${line.repeat(180_000)}  }\n}\n`,
  );
  expect(session.rules('long.rebuild').length).toBeGreaterThan(0);
  expect(session.rules('long.rebuild').length).toBeLessThanOrEqual(500);
  await session.open('procedure.rebuild', procedureText);
  await session.type('procedure.rebuild', 'remove cap, nut, nozzle', 'remove cap, nut, nozzel');
  expect(session.rules('procedure.rebuild')).toContain('unknown-name');
});

test('CRLF and tabs: the same findings at the same places', async () => {
  const flawed = procedureText.replace('remove cap, nut, nozzle', 'remove cap, nut, nozzel');
  const session = await begun({ 'shop.rebuild': shopText, 'procedure.rebuild': flawed });
  const plain = session.pushed.get(session.uri('procedure.rebuild'));
  const { checks } = session;
  session.write('shop.rebuild', shopText.replaceAll('\n', '\r\n'));
  session.write('procedure.rebuild', flawed.replaceAll('\n', '\r\n'));
  await session.connection.sendNotification('workspace/didChangeWatchedFiles', {
    changes: [
      { uri: session.uri('shop.rebuild'), type: 2 },
      { uri: session.uri('procedure.rebuild'), type: 2 },
    ],
  });
  await session.checked(checks);
  expect(session.pushed.get(session.uri('procedure.rebuild'))).toEqual(plain);
  await session.open('procedure.rebuild', flawed.replaceAll('  ', '\t'));
  expect(session.rules('procedure.rebuild')).toEqual(plain!.map(({ code }) => code));
});

test('shuts down on request', async () => {
  const session = await begun();
  await session.connection.sendRequest('shutdown');
  await session.connection.sendNotification('exit');
  expect(await session.exited).toBe(0);
});

function applied(document: TextDocument, action: CodeAction): string {
  const [change] = action.edit!.documentChanges!;
  if (change === undefined || !('edits' in change)) throw new Error('an edit of a text was expected');
  return TextDocument.applyEdits(
    document,
    change.edits.filter((edit) => 'newText' in edit),
  );
}
