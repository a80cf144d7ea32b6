/**
 * A session of the language server in this process, over a pair of streams, in a folder of its own: random edits of open
 * files, files that are opened, closed, renamed and changed on the disk, requests in flight and canceled. What it has
 * published is compared with a check from nothing.
 */
import { mkdtempSync, readdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { PassThrough } from 'node:stream';
import { pathToFileURL } from 'node:url';
import { createConnection, type Message, StreamMessageReader, StreamMessageWriter } from 'vscode-languageserver/node';
import { TextDocument } from 'vscode-languageserver-textdocument';
import { checkFiles } from '../../language/db/workspace.ts';
import { rulePage } from '../../language/ide/problem.ts';
import { diagnosticOf } from '../../server/lsp/diagnostics.ts';
import { serve } from '../../server/lsp/node-server.ts';
import { start } from '../../server/lsp/start.ts';
import { edited, start as startFiles } from '../fixtures/workspace-edits.ts';
import type { Random } from '../fuzz/random.ts';

const asked = ['hover', 'completion', 'definition', 'documentSymbol', 'codeAction', 'inlayHint'] as const;

/** What a client may be answered. */
const answeredWell = new Set([undefined, -32800]);

export class EditingSession {
  readonly folder = mkdtempSync(join(tmpdir(), 'handtight-session-'));
  readonly published = new Map<string, unknown>();
  /** Requests that were answered with another error than that they were canceled. */
  readonly refused: string[] = [];
  canceled = 0;
  private readonly random: Random;
  private readonly writer: StreamMessageWriter;
  private readonly open = new Map<string, TextDocument>();
  private readonly waiting = new Map<number, { readonly method: string; readonly done: () => void }>();
  private ids = 0;

  constructor(random: Random) {
    this.random = random;
    for (const { uri, text } of startFiles) writeFileSync(join(this.folder, uri), text);
    const [toServer, toClient] = [new PassThrough(), new PassThrough()];
    this.writer = new StreamMessageWriter(toServer);
    new StreamMessageReader(toClient).listen((message) => this.hear(message));
    start(
      (options) => createConnection(new StreamMessageReader(toServer), new StreamMessageWriter(toClient), options),
      async () => serve,
    );
  }

  async begin(): Promise<void> {
    const folder = pathToFileURL(this.folder).href;
    await this.ask('initialize', { processId: null, rootUri: folder, capabilities: {} });
    this.tell('initialized', {});
    for (const uri of this.files().slice(0, 3)) this.openFile(uri);
  }

  /** One thing that an editor does. */
  step(): void {
    const { random } = this;
    const names = this.files();
    const name = random.pick(names);
    const document = this.open.get(name);
    const choice = random.below(100);
    if (choice < 5) this.rename(name);
    else if (choice < 10) this.changeOnDisk(name);
    else if (document === undefined) this.openFile(name);
    else if (choice < 16) this.close(name);
    else this.edit(name, document);
    if (random.chance(0.4)) this.question(random.pick([...this.open.keys(), name]));
  }

  /** Findings of a check from nothing, as they are sent, by URI. */
  expected(): Map<string, unknown> {
    const files = this.files().map((name) => ({ uri: this.uri(name), text: this.text(name) }));
    const { diagnostics } = checkFiles(files);
    const expected = new Map<string, unknown[]>();
    for (const diagnostic of diagnostics) {
      const { file } = diagnostic.source;
      expected.set(file, [...(expected.get(file) ?? []), diagnosticOf(diagnostic, rulePageOf, (uri) => uri, {}, 'en')]);
    }
    return new Map([...expected].map(([uri, all]) => [uri, JSON.parse(JSON.stringify(all.slice(0, 500)))]));
  }

  async settled(): Promise<void> {
    await Promise.all([...this.waiting.keys()].map((id) => this.answerTo(id)));
    await this.ask('handtight/printLink', { procedure: 'nothing', job: '', hash: '' });
  }

  async end(): Promise<void> {
    await this.ask('shutdown', null);
    rmSync(this.folder, { recursive: true, force: true });
  }

  private files(): string[] {
    return [...new Set([...readdirSync(this.folder), ...this.open.keys()])].sort();
  }

  private uri(name: string): string {
    return pathToFileURL(join(this.folder, name)).href;
  }

  private text(name: string): string {
    return this.open.get(name)?.getText() ?? readFileSync(join(this.folder, name), 'utf8');
  }

  private openFile(name: string): void {
    const document = TextDocument.create(this.uri(name), 'rebuild', 1, this.text(name));
    this.open.set(name, document);
    const { uri, languageId, version } = document;
    this.tell('textDocument/didOpen', { textDocument: { uri, languageId, version, text: document.getText() } });
  }

  /** One edit, sent as the part of the text that is another. */
  private edit(name: string, document: TextDocument): void {
    const before = document.getText();
    const after = this.random.chance(0.1)
      ? (startFiles.find(({ uri }) => uri === name)?.text ?? before)
      : edited(this.random, before);
    let from = 0;
    while (from < before.length && before[from] === after[from]) from++;
    let same = 0;
    while (same < Math.min(before.length, after.length) - from && before.at(-1 - same) === after.at(-1 - same)) same++;
    const range = { start: document.positionAt(from), end: document.positionAt(before.length - same) };
    const change = { range, text: after.slice(from, after.length - same) };
    const version = document.version + 1;
    TextDocument.update(document, [change], version);
    this.tell('textDocument/didChange', { textDocument: { uri: document.uri, version }, contentChanges: [change] });
  }

  /** What is not saved is lost. */
  private close(name: string): void {
    const document = this.open.get(name)!;
    // A file that is open and gone from the disk stays open: its text is nowhere else.
    if (!readdirSync(this.folder).includes(name)) return;
    if (this.random.chance(0.5)) writeFileSync(join(this.folder, name), document.getText());
    this.open.delete(name);
    this.tell('textDocument/didClose', { textDocument: { uri: document.uri } });
  }

  private rename(name: string): void {
    if (this.open.has(name)) return;
    const other = `${this.random.pick(['a', 'k', 'z'])}-${name.replace(/^.-/u, '')}`;
    if (this.files().includes(other)) return;
    renameSync(join(this.folder, name), join(this.folder, other));
    const changes = [
      { uri: this.uri(name), type: 3 },
      { uri: this.uri(other), type: 1 },
    ];
    this.tell('workspace/didChangeWatchedFiles', { changes });
  }

  private changeOnDisk(name: string): void {
    if (!readdirSync(this.folder).includes(name)) return;
    writeFileSync(join(this.folder, name), edited(this.random, readFileSync(join(this.folder, name), 'utf8')));
    this.tell('workspace/didChangeWatchedFiles', { changes: [{ uri: this.uri(name), type: 2 }] });
  }

  private question(name: string): void {
    const { random } = this;
    const document = this.open.get(name);
    const position = document?.positionAt(random.below(document.getText().length + 1)) ?? { line: 3, character: 4 };
    const range = { start: position, end: position };
    const params = { textDocument: { uri: this.uri(name) }, position, range, context: { diagnostics: [] } };
    const id = this.send(`textDocument/${random.pick(asked)}`, params, () => {});
    if (random.chance(0.3)) this.tell('$/cancelRequest', { id });
  }

  private tell(method: string, params: unknown): void {
    void this.writer.write({ jsonrpc: '2.0', method, params } as Message);
  }

  private ask(method: string, params: unknown): Promise<void> {
    return new Promise((done) => this.send(method, params, done));
  }

  private answerTo(id: number): Promise<void> {
    const { method, done } = this.waiting.get(id)!;
    return new Promise((resolve) =>
      this.waiting.set(id, {
        method,
        done: () => {
          done();
          resolve();
        },
      }),
    );
  }

  private send(method: string, params: unknown, done: () => void): number {
    const id = ++this.ids;
    this.waiting.set(id, { method, done });
    void this.writer.write({ jsonrpc: '2.0', id, method, params } as Message);
    return id;
  }

  private hear(message: Message): void {
    const { id, method, params, error } = message as {
      readonly id?: number;
      readonly method?: string;
      readonly params?: { readonly uri: string; readonly diagnostics: readonly unknown[]; readonly message: string };
      readonly error?: { readonly code: number; readonly message: string };
    };
    if (method === 'textDocument/publishDiagnostics') {
      if (params!.diagnostics.length === 0) this.published.delete(params!.uri);
      else this.published.set(params!.uri, params!.diagnostics);
    } else if (method === 'window/logMessage') this.refused.push(params!.message);
    if (method !== undefined || id === undefined) return;
    if (error?.code === -32800) this.canceled++;
    else if (!answeredWell.has(error?.code)) this.refused.push(`${this.waiting.get(id)?.method}: ${error!.message}`);
    this.waiting.get(id)?.done();
    this.waiting.delete(id);
  }
}

const pages = pathToFileURL(join(import.meta.dirname, '../..', 'language/diagnostics/areas')).href;

function rulePageOf(rule: string): string | null {
  const page = rulePage(rule);
  return page === null ? null : `${pages}/${page}`;
}
