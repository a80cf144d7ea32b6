/** The language server over its standard streams, for tests of what an editor asks of it: it answers, and is awaited. */
import { type ChildProcess, spawn } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import {
  type ClientCapabilities,
  createProtocolConnection,
  type InitializeResult,
  type ProtocolConnection,
  type RegistrationParams,
  StreamMessageReader,
  StreamMessageWriter,
} from 'vscode-languageserver-protocol/node';
import { TextDocument } from 'vscode-languageserver-textdocument';

const main = fileURLToPath(new URL('../server/lsp/main.ts', import.meta.url));

export class EditorSession {
  readonly folder = mkdtempSync(join(tmpdir(), 'handtight-editor-'));
  readonly process: ChildProcess;
  readonly connection: ProtocolConnection;
  readonly documents = new Map<string, TextDocument>();
  /** The answer to the server's question for its settings. */
  settings: unknown = null;
  /** What the server has registered, for which languages. */
  readonly registered: { readonly method: string; readonly languages: (string | undefined)[] }[] = [];
  /** Methods that the server has called on its own account. */
  readonly called: string[] = [];
  initialized!: InitializeResult;

  private constructor() {
    this.process = spawn(process.execPath, [main, '--stdio'], { stdio: ['pipe', 'pipe', 'inherit'] });
    this.connection = createProtocolConnection(
      new StreamMessageReader(this.process.stdout!),
      new StreamMessageWriter(this.process.stdin!),
    );
    this.connection.onRequest('workspace/configuration', () => [this.settings]);
    for (const method of [
      'client/registerCapability',
      'workspace/inlayHint/refresh',
      'workspace/codeLens/refresh',
      'workspace/diagnostic/refresh',
      'workspace/semanticTokens/refresh',
    ])
      this.connection.onRequest(method, (params: Partial<RegistrationParams> | null) => {
        for (const { method: of, registerOptions } of params?.registrations ?? [])
          this.registered.push({
            method: of,
            languages: ((registerOptions?.documentSelector ?? []) as { language?: string }[]).map(
              ({ language }) => language,
            ),
          });
        this.called.push(method);
        return null;
      });
    this.connection.listen();
  }

  /** A server with a folder of these files; all are open. */
  static async begin(
    texts: Readonly<Record<string, string>>,
    capabilities: ClientCapabilities = {},
    settings: unknown = null,
    initializationOptions: object = {},
  ): Promise<EditorSession> {
    const session = new EditorSession();
    session.settings = settings;
    for (const [name, text] of Object.entries(texts)) writeFileSync(join(session.folder, name), text);
    const checked = new Promise<void>((resolve, reject) => {
      session.process.once('exit', (code) => reject(new Error(`the server ended with ${code}`)));
      session.connection.onNotification('handtight/checked', () => resolve());
    });
    session.initialized = await session.connection.sendRequest<InitializeResult>('initialize', {
      processId: process.pid,
      rootUri: null,
      initializationOptions,
      workspaceFolders: [{ uri: pathToFileURL(session.folder).href, name: 'test' }],
      capabilities: {
        ...capabilities,
        workspace: { ...(settings === null ? {} : { configuration: true }), ...capabilities.workspace },
      },
    });
    await session.connection.sendNotification('initialized', {});
    for (const [name, text] of Object.entries(texts)) {
      const document = TextDocument.create(session.uri(name), 'rebuild', 1, text);
      session.documents.set(name, document);
      await session.connection.sendNotification('textDocument/didOpen', {
        textDocument: { uri: document.uri, languageId: 'rebuild', version: 1, text },
      });
    }
    await checked;
    return session;
  }

  uri(name: string): string {
    return pathToFileURL(join(this.folder, name)).href;
  }

  /** Types a text in the place of another; the next request is about the new text. */
  async type(name: string, old: string, text: string): Promise<void> {
    const document = this.documents.get(name)!;
    const offset = document.getText().indexOf(old);
    const range = { start: document.positionAt(offset), end: document.positionAt(offset + old.length) };
    const version = document.version + 1;
    TextDocument.update(document, [{ range, text }], version);
    await this.connection.sendNotification('textDocument/didChange', {
      textDocument: { uri: document.uri, version },
      contentChanges: [{ range, text }],
    });
  }

  /** The place behind some words of a document. */
  behind(name: string, words: string) {
    const document = this.documents.get(name)!;
    const offset = document.getText().indexOf(words);
    if (offset < 0) throw new Error(`"${words}" is not in ${name}`);
    return { textDocument: { uri: document.uri }, position: document.positionAt(offset + words.length) };
  }

  /** Asks about the place behind some words; without words, about the document. */
  ask<T>(method: string, name: string, words: string | null = null, more: object = {}): Promise<T> {
    const place = words === null ? { textDocument: { uri: this.uri(name) } } : this.behind(name, words);
    return this.connection.sendRequest<T>(method, { ...place, ...more });
  }

  end(): void {
    this.connection.dispose();
    this.process.kill('SIGKILL');
    rmSync(this.folder, { recursive: true, force: true });
  }
}
