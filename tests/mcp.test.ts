/** The server for assistants, asked by the protocol's own client: in this process, and once as a process of its own. */
import { cpSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Client } from '@modelcontextprotocol/sdk/client/index.js';
import { StdioClientTransport } from '@modelcontextprotocol/sdk/client/stdio.js';
import { InMemoryTransport } from '@modelcontextprotocol/sdk/inMemory.js';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { formatted } from '../language/ide/format/format.ts';
import type { CheckReport } from '../server/cli/check-schema.ts';
import { buildServer } from '../server/mcp/serve.ts';
import { closedJob, writeClosedJobs } from './bench/workload/closed-jobs.ts';
import { root } from './library.ts';

const folder = mkdtempSync(join(tmpdir(), 'handtight-mcp-'));
const library = join(folder, 'library');
const empty = join(folder, 'empty');
const first = readFileSync(join(root, 'procedures/first/first.rebuild'), 'utf8');
const clients: Client[] = [];

beforeAll(() => {
  cpSync(join(root, 'procedures'), library, { recursive: true });
  mkdirSync(empty);
});
afterAll(async () => {
  await Promise.all(clients.map((client) => client.close()));
  rmSync(folder, { recursive: true, force: true });
});

async function connected(path: string): Promise<Client> {
  const client = new Client({ name: 'test', version: '1' });
  const [near, far] = InMemoryTransport.createLinkedPair();
  await Promise.all([buildServer(path).connect(far), client.connect(near)]);
  clients.push(client);
  return client;
}

async function call(client: Client, name: string, args: Record<string, unknown> = {}) {
  const result = await client.callTool({ name, arguments: args });
  const [{ text }] = result.content as [{ text: string }];
  return { text, isError: result.isError === true, data: result.structuredContent };
}

const listed = (path: string): string[] => (readdirSync(path, { recursive: true }) as string[]).sort();

describe('handtight mcp', () => {
  it('lists its tools, all but the format read-only, and says what a draft is held to', async () => {
    const client = await connected(library);
    const { tools } = await client.listTools();
    expect(tools.map(({ name }) => name)).toEqual([
      'check',
      'explain',
      'language',
      'replay',
      'calculate',
      'shims',
      'history',
      'format',
    ]);
    const writing = tools.filter(({ annotations }) => annotations?.readOnlyHint !== true);
    expect(writing.map(({ name }) => name)).toEqual(['format']);
    expect(client.getInstructions()).toContain('let the lead fill it in');
  });

  it('checks a text that is not saved, among the files of the folder, and writes nothing', async () => {
    const client = await connected(empty);
    const before = listed(folder);
    expect(await call(client, 'check', { text: first })).toMatchObject({
      text: '1 file checked, 0 errors, 0 warnings.',
      data: { files: [expect.stringMatching(/draft\.rebuild$/u)], errors: 0, warnings: 0, findings: [] },
    });
    const forgotten = await call(client, 'check', { text: first.replace(/\n\s+torque [^\n]*/u, '') });
    const { findings } = forgotten.data as CheckReport;
    expect(findings.map(({ rule }) => rule)).toContain('left-hand-tight');
    expect(forgotten.text).toMatch(/draft\.rebuild:\d+:\d+ error left-hand-tight: /u);
    expect(listed(folder)).toEqual(before);
  });

  it('takes the text of a file in the place of what is saved, and forgets it after the call', async () => {
    const client = await connected(library);
    const file = 'one-spring/procedure.rebuild';
    const saved = readFileSync(join(library, file), 'utf8');
    const broken = await call(client, 'check', { file, text: saved.replace(/torque \w+/u, 'torqe nut') });
    expect((broken.data as CheckReport).errors).toBeGreaterThan(0);
    expect(await call(client, 'check', { file, text: saved })).toMatchObject({ data: { errors: 0 } });
  });

  it.each([
    ['../outside.rebuild', 'is not in the folder of this server'],
    ['/tmp/elsewhere.rebuild', 'is not in the folder of this server'],
    ['notes.txt', 'is not a .rebuild file'],
  ])('refuses %s', async (file, why) => {
    const answer = await call(await connected(library), 'check', { file, text: first });
    expect(answer.isError).toBe(true);
    expect(answer.text).toContain(why);
  });

  it('explains a rule, and names the nearest for one that it does not know', async () => {
    const client = await connected(empty);
    expect((await call(client, 'explain', { rule: 'left-hand-tight' })).text).toBe(
      readFileSync(join(root, 'language/diagnostics/areas/order/left-hand-tight.md'), 'utf8'),
    );
    expect(await call(client, 'explain', { rule: 'left-hand-tigt' })).toMatchObject({
      isError: true,
      text: expect.stringContaining('Did you mean left-hand-tight?'),
    });
    expect((await call(client, 'explain')).text.split('\n').length).toBeGreaterThan(100);
  });

  it('gives the reference by chapter', async () => {
    const client = await connected(empty);
    expect((await call(client, 'language', { topic: 'verbs' })).text).toMatch(/^### Verbs\n/u);
    expect(await call(client, 'language', { topic: 'verb' })).toMatchObject({
      isError: true,
      text: 'No chapter is called verb. Did you mean Verbs?',
    });
    expect((await call(client, 'language')).text).toContain('### family');
  });

  it('replays a procedure, and one step of it with the whole state', async () => {
    const client = await connected(library);
    const name = /^procedure (\S+)/mu.exec(readFileSync(join(library, 'one-spring/procedure.rebuild'), 'utf8'))![1]!;
    const all = await call(client, 'replay', { procedure: name });
    expect(all.text).toMatch(/^\d+\.\d+ torque .+\n {2}.+ → .*torqued/mu);
    const [, number] = /^(\d+\.\d+) torque /mu.exec(all.text)!;
    const one = await call(client, 'replay', { procedure: name, step: number });
    expect(one.text.match(/^\d+\.\d+ \w/gmu)!.every((head) => head.startsWith(number!))).toBe(true);
    expect(one.text.split('\n').length).toBeGreaterThan(20);
  });

  it('calculates with the working, and says what is missing', async () => {
    const client = await connected(empty);
    const list = (await call(client, 'calculate')).text;
    const [, name] = /^(\S+): /u.exec(list)!;
    expect((await call(client, 'calculate', { calculation: name })).isError).toBe(false);
    expect(await call(client, 'calculate', { calculation: name, figures: ['nonsense=1 bar'] })).toMatchObject({
      isError: true,
    });
  });

  it('advises on a job, and finds what was done to a unit', async () => {
    const client = await connected(library);
    expect((await call(client, 'shims', { job: '2198' })).text).toContain('unit 1');
    const text = readFileSync(join(library, 'jobs/job-2198.rebuild'), 'utf8');
    const [, serial] = /serial "?([\w-]+)/u.exec(text)!;
    const history = await call(client, 'history', { serial });
    expect(history.text).toMatch(/^Job 2198, received /u);
    expect(history.text).toMatch(/ (in|out) \d/u);
    expect(await call(client, 'history', { serial: 'nobody' })).toMatchObject({ isError: true });
    // Of a closed job its record answers, whatever became of its text.
    writeClosedJobs(join(library, 'records'), 5001, 5001);
    const [unit] = closedJob(5001, 1).answers.units;
    const closed = await call(client, 'history', { serial: unit!.serial });
    expect(closed.text).toContain('job 5001');
    expect(closed.text).toMatch(/as left opening \d+ bar, pass/u);
  });

  it('lays a text out, and writes a file only on request', async () => {
    const client = await connected(library);
    const path = join(library, 'first/first.rebuild');
    const laid = formatted(first);
    const crooked = laid.replace('  stage build', '      stage   build');
    const given = await call(client, 'format', { file: 'first/first.rebuild', text: crooked });
    expect(given.data).toMatchObject({ changed: true, written: false, text: laid });
    expect(readFileSync(path, 'utf8')).toBe(first);
    writeFileSync(path, crooked);
    expect((await call(client, 'format', { file: 'first/first.rebuild' })).data).toMatchObject({ written: false });
    expect(readFileSync(path, 'utf8')).toBe(crooked);
    const saved = await call(client, 'format', { file: 'first/first.rebuild', write: true });
    expect(saved.data).toMatchObject({ changed: true, written: true });
    expect(readFileSync(path, 'utf8')).toBe(laid);
    const refused = (args: Record<string, unknown>) => call(client, 'format', args);
    expect(await refused({ text: first.replace('clamp body', 'clamp ?') })).toMatchObject({
      isError: true,
      text: expect.stringMatching(/^Not laid out: line \d+ cannot be read\. /u),
    });
    expect(await refused({ text: first, write: true })).toMatchObject({ isError: true });
    expect(await refused({ file: '../other.rebuild', write: true })).toMatchObject({ isError: true });
    expect(await refused({ file: 'missing.rebuild' })).toMatchObject({ isError: true });
  });

  it('serves as a process, and ends with its input', async () => {
    const client = new Client({ name: 'test', version: '1' });
    const transport = new StdioClientTransport({
      command: process.execPath,
      args: [join(root, 'out/handtight.mjs'), 'mcp', '--workspace', library],
      stderr: 'pipe',
    });
    await client.connect(transport);
    expect(await call(client, 'check')).toMatchObject({ data: { errors: expect.any(Number) } });
    await client.close();
    expect(transport.pid).toBeNull();
  });
});
