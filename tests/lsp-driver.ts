/**
 * A language server in a process of its own, spoken to over its standard streams, with as little between as can be: for
 * measurements, where a client's own queue would be measured as well, and for servers of any language.
 */
import { type ChildProcessByStdio, spawn } from 'node:child_process';
import { readFileSync } from 'node:fs';
import type { Readable, Writable } from 'node:stream';

/** Findings of one file as they were published. */
export interface Published {
  readonly uri: string;
  readonly version?: number;
  readonly diagnostics: readonly {
    readonly message: string;
    readonly code?: unknown;
    readonly range: { readonly start: { readonly line: number; readonly character: number } };
  }[];
  /** When it came in, in `performance.now()`. */
  readonly at: number;
}

/** What a request was refused with. */
class RequestError extends Error {
  readonly code: number;

  constructor(code: number, message: string) {
    super(message);
    this.code = code;
  }
}

interface Message {
  readonly id?: number | string;
  readonly method?: string;
  readonly params?: unknown;
  readonly result?: unknown;
  readonly error?: { readonly code: number; readonly message: string };
}

interface Pending {
  readonly resolve: (result: unknown) => void;
  readonly reject: (error: Error) => void;
}

export interface DriverOptions {
  readonly cwd?: string;
  readonly env?: NodeJS.ProcessEnv;
  /** Answers a request of the server, such as `workspace/configuration`; without one, null. */
  readonly answer?: (method: string, params: unknown) => unknown;
}

export class LspDriver {
  readonly process: ChildProcessByStdio<Writable, Readable, null>;
  /** What was published last, by URI. */
  readonly published = new Map<string, Published>();
  /** Ends with the exit code. */
  readonly exited: Promise<number | null>;
  private readonly answer: (method: string, params: unknown) => unknown;
  private readonly pending = new Map<number, Pending>();
  private readonly waiting = new Set<{ accepts: (message: Message) => boolean; resolve: (params: unknown) => void }>();
  private lastId = 0;
  private chunks: Buffer[] = [];
  private length = 0;
  /** Bytes to wait for before there is anything to read. */
  private wanted = 0;

  constructor(command: string, args: readonly string[], { cwd, env, answer }: DriverOptions = {}) {
    this.answer = answer ?? (() => null);
    this.process = spawn(command, args, { cwd, env: env ?? process.env, stdio: ['pipe', 'pipe', 'inherit'] });
    this.exited = new Promise((resolve) => this.process.once('exit', resolve));
    void this.exited.then((code) => {
      for (const { reject } of this.pending.values()) reject(new Error(`The server ended with ${code}.`));
    });
    this.process.stdout.on('data', (chunk: Buffer) => this.take(chunk));
  }

  /** Sends a request; `id` is what to cancel it by. */
  request<T>(method: string, params: unknown): Promise<T> & { readonly id: number } {
    const id = ++this.lastId;
    const answer = new Promise<T>((resolve, reject) => {
      this.pending.set(id, { resolve: resolve as (result: unknown) => void, reject });
    });
    this.send({ id, method, params });
    return Object.assign(answer, { id });
  }

  notify(method: string, params: unknown): void {
    this.send({ method, params });
  }

  cancel(id: number): void {
    this.notify('$/cancelRequest', { id });
  }

  /** `initialize` and `initialized`, with a folder. */
  async initialize(folder: string | null, capabilities: object = {}): Promise<unknown> {
    const result = await this.request('initialize', {
      processId: process.pid,
      rootUri: folder,
      workspaceFolders: folder === null ? null : [{ uri: folder, name: 'folder' }],
      capabilities,
    });
    this.notify('initialized', {});
    return result;
  }

  open(uri: string, languageId: string, text: string, version = 1): void {
    this.notify('textDocument/didOpen', { textDocument: { uri, languageId, version, text } });
  }

  change(uri: string, version: number, ...contentChanges: readonly object[]): void {
    this.notify('textDocument/didChange', { textDocument: { uri, version }, contentChanges });
  }

  close(uri: string): void {
    this.notify('textDocument/didClose', { textDocument: { uri } });
  }

  /** The next notification of a method that is accepted; ask for it before what causes it is sent. */
  next<T>(method: string, accepts: (params: T) => boolean = () => true): Promise<T> {
    return new Promise((resolve) => {
      this.waiting.add({
        accepts: (message) => message.method === method && accepts(message.params as T),
        resolve: resolve as (params: unknown) => void,
      });
    });
  }

  /** The next findings of a file that are accepted, by default the next of any. */
  async findings(uri: string, accepts: (published: Published) => boolean = () => true): Promise<Published> {
    await this.next<Published>('textDocument/publishDiagnostics', (one) => one.uri === uri && accepts(one));
    return this.published.get(uri)!;
  }

  /** Memory of the process in bytes, now or at its peak; 0 where there is no /proc. */
  memory(what: 'VmRSS' | 'VmHWM' = 'VmRSS'): number {
    try {
      const status = readFileSync(`/proc/${this.process.pid}/status`, 'utf8');
      return Number(new RegExp(`${what}:\\s+(\\d+)`, 'u').exec(status)?.[1] ?? 0) * 1024;
    } catch {
      return 0;
    }
  }

  /** Processor time that the process has used so far, all its threads, ms; 0 where there is no /proc. */
  processorTime(): number {
    try {
      const stat = readFileSync(`/proc/${this.process.pid}/stat`, 'utf8');
      const fields = stat.slice(stat.lastIndexOf(')') + 2).split(' ');
      // In ticks of a hundredth of a second, by the system's user interface.
      return (Number(fields[11]) + Number(fields[12])) * 10;
    } catch {
      return 0;
    }
  }

  /** `shutdown` and `exit`, as an editor ends it. */
  async stop(): Promise<void> {
    await this.request('shutdown', null);
    this.notify('exit', null);
    await this.exited;
  }

  private send(message: Message): void {
    const body = Buffer.from(JSON.stringify({ jsonrpc: '2.0', ...message }));
    this.process.stdin.write(Buffer.concat([Buffer.from(`Content-Length: ${body.length}\r\n\r\n`), body]));
  }

  private take(chunk: Buffer): void {
    this.chunks.push(chunk);
    this.length += chunk.length;
    if (this.length < this.wanted) return;
    let buffer = Buffer.concat(this.chunks);
    for (;;) {
      const head = buffer.indexOf('\r\n\r\n');
      const length = Number(/Content-Length: (\d+)/iu.exec(buffer.toString('latin1', 0, Math.max(head, 0)))?.[1]);
      this.wanted = head < 0 ? 0 : head + 4 + length;
      if (head < 0 || buffer.length < this.wanted) break;
      const body = buffer.toString('utf8', head + 4, this.wanted);
      buffer = buffer.subarray(this.wanted);
      this.receive(JSON.parse(body) as Message);
    }
    this.chunks = [buffer];
    this.length = buffer.length;
  }

  private receive(message: Message): void {
    const { id, method, params, result, error } = message;
    if (method === undefined) {
      const request = this.pending.get(id as number);
      this.pending.delete(id as number);
      if (error === undefined) request?.resolve(result);
      else request?.reject(new RequestError(error.code, error.message));
      return;
    }
    if (id !== undefined) {
      this.send({ id, result: this.answer(method, params) ?? null });
      return;
    }
    if (method === 'textDocument/publishDiagnostics') {
      const one = params as Omit<Published, 'at'>;
      this.published.set(one.uri, { ...one, at: performance.now() });
    }
    for (const one of this.waiting)
      if (one.accepts(message)) {
        this.waiting.delete(one);
        one.resolve(params);
      }
  }
}
