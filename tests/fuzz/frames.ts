import { PassThrough } from 'node:stream';
import { createConnection, type Message, StreamMessageReader, StreamMessageWriter } from 'vscode-languageserver/node';
import { serve } from '../../server/lsp/node-server.ts';
import { start } from '../../server/lsp/start.ts';
import type { FuzzCase } from './case.ts';
import { Random } from './random.ts';

/** `right`: nothing is wrong with it, so that it must not fail. */
type Sent = {
  readonly right?: boolean;
  readonly id?: number | string | null;
  readonly method?: string;
  readonly params?: unknown;
};

const odd = (random: Random): unknown =>
  random.pick<unknown>([
    null,
    undefined,
    -1,
    1e9,
    1.5,
    '',
    'x',
    [],
    {},
    true,
    { uri: 1 },
    { uri: 'file:///%' },
    { line: -1, character: -1 },
  ]);

/** A request of an editor, right or with something wrong in it. */
function asked(random: Random, uris: readonly string[]): Sent {
  const uri = random.chance(0.85)
    ? random.pick(uris)
    : random.pick(['file:///nowhere.rebuild', 'untitled:x', '%', '', 'http://[']);
  const position = {
    line: random.below(random.chance(0.9) ? 200 : 1e9),
    character: random.below(random.chance(0.9) ? 80 : 1e9),
  };
  const range = { start: position, end: { line: position.line + random.below(3), character: random.below(90) } };
  const document = { textDocument: { uri } };
  const method = random.pick([
    'textDocument/completion',
    'textDocument/hover',
    'textDocument/definition',
    'textDocument/codeAction',
    'textDocument/documentSymbol',
    'textDocument/inlayHint',
    'handtight/sheet',
    'handtight/specs',
    'handtight/drawing',
    'handtight/state',
    'handtight/printLink',
    'textDocument/rename',
    'nobody/knows',
  ]);
  const right = {
    ...document,
    uri,
    position,
    range,
    context: { diagnostics: [], ...(random.chance(0.3) ? { only: ['source.fixAll'] } : {}) },
  };
  if (random.chance(0.8)) return { method, params: right, right: true };
  const key = random.pick(Object.keys(right));
  return { method, params: random.chance(0.3) ? odd(random) : { ...right, [key]: odd(random) } };
}

/**
 * A session of the language server over a pair of streams: opens the texts of a case, edits them, asks right and wrong
 * questions, closes. Every request is answered, with a result or an error; no check throws; after all of it the server answers.
 */
export async function talk({ versions }: FuzzCase, fail: (at: string, what: string) => void): Promise<void> {
  const first = versions[0]!;
  const random = new Random(versions.flat().reduce((sum, { text }) => sum + text.length, 7));
  const [toServer, toClient] = [new PassThrough(), new PassThrough()];
  start(
    (options) => createConnection(new StreamMessageReader(toServer), new StreamMessageWriter(toClient), options),
    async () => serve,
  );
  const reader = new StreamMessageReader(toClient);
  const writer = new StreamMessageWriter(toServer);
  const waiting = new Map<unknown, { sent: Sent; done: () => void }>();
  reader.listen((message: Message) => {
    const { id, method, params, error } = message as {
      id?: unknown;
      method?: string;
      params?: { message?: string };
      error?: { code: number; message: string };
    };
    if (method === 'window/logMessage' && /failed/u.test(params?.message ?? ''))
      fail(`log ${place(params!.message!)}`, params!.message!.slice(0, 300));
    else if (method !== undefined && id !== undefined)
      void writer.write({ jsonrpc: '2.0', id, result: null } as Message);
    else if (id !== undefined && waiting.has(id)) {
      const { sent, done } = waiting.get(id)!;
      if (sent.right === true && error?.code === -32603)
        fail(`${sent.method} ${place(error.message)}`, error.message.slice(0, 300));
      waiting.delete(id);
      done();
    }
  });
  let ids = 0;
  const answers: Promise<void>[] = [];
  const send = (sent: Sent) => writer.write({ jsonrpc: '2.0', ...sent } as unknown as Message);
  const ask = async (sent: Sent) => {
    const id = ++ids;
    answers.push(new Promise((done) => waiting.set(id, { sent, done })));
    const { method, params } = sent;
    await send({ id, params, ...(method === undefined ? {} : { method }) });
    return id;
  };
  const uris = first.map(({ uri }) => `file:///shop/${uri}`);
  await ask({ method: 'initialize', params: { processId: null, rootUri: null, capabilities: {} } });
  await send({ method: 'initialized', params: {} });
  for (const [index, { text }] of first.entries())
    await send({
      method: 'textDocument/didOpen',
      params: { textDocument: { uri: uris[index], languageId: 'rebuild', version: 1, text } },
    });
  for (const files of versions) {
    for (const [index, { text }] of files.entries())
      await send({
        method: 'textDocument/didChange',
        params: { textDocument: { uri: uris[index], version: 2 }, contentChanges: [{ text }] },
      });
    for (let count = 0; count < 6; count++) {
      const id = await ask(asked(random, uris));
      if (random.chance(0.1)) await send({ method: '$/cancelRequest', params: { id } });
    }
  }
  // An edit beyond the end, of a document that is closed, and a frame that is no JSON.
  const end = { line: 1e6, character: 0 };
  await send({
    method: 'textDocument/didChange',
    params: { textDocument: { uri: uris[0], version: 3 }, contentChanges: [{ range: { start: end, end }, text: 'x' }] },
  });
  await send({ method: 'textDocument/didClose', params: { textDocument: { uri: uris[0] } } });
  await ask(asked(random, uris));
  await ask({ method: 'textDocument/documentSymbol', params: { textDocument: { uri: uris.at(-1) } } });
  await Promise.all(answers);
  await ask({ method: 'shutdown' });
  await Promise.all(answers);
  // Not disposed: a check that is still waited for would find the connection gone, as no process that ends does.
  reader.dispose();
}

/** Where our own source threw, by a stack that a message carries. */
function place(message: string): string {
  return message.match(/(?:language|server)\/[\w./-]+\.ts/u)?.[0] ?? message.replace(/\d+/gu, '0').slice(0, 80);
}
