/** The built command with what earlier runs have kept, and without: it writes the same bytes. */
import { spawn } from 'node:child_process';
import { existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { edited, start } from './fixtures/workspace-edits.ts';
import { Random } from './fuzz/random.ts';
import { libraryFiles, root } from './library.ts';

const program = join(root, 'out/handtight.mjs');
const temporary = mkdtempSync(join(tmpdir(), 'handtight-same-'));

beforeAll(() => {
  if (!existsSync(program)) throw new Error('The command is not built: run npm run build.');
});
afterAll(() => rmSync(temporary, { recursive: true, force: true }));

interface Run {
  readonly code: number | null;
  readonly out: string;
  readonly error: string;
}

/** Runs the built command in a folder. @param cache folder, or `off` */
function run(folder: string, cache: string, ...args: string[]): Promise<Run> {
  const env = { ...process.env, HANDTIGHT_CACHE: cache };
  const child = spawn(process.execPath, [program, ...args], { cwd: folder, env });
  const [out, error]: [string[], string[]] = [[], []];
  child.stdout.setEncoding('utf8').on('data', (text) => out.push(text));
  child.stderr.setEncoding('utf8').on('data', (text) => error.push(text));
  return new Promise((resolve) =>
    child.on('close', (code) => resolve({ code, out: out.join(''), error: error.join('') })),
  );
}

function folderOf(name: string, files: readonly { readonly uri: string; readonly text: string }[]): string {
  const folder = join(temporary, name);
  for (const { uri, text } of files) {
    mkdirSync(dirname(join(folder, uri)), { recursive: true });
    writeFileSync(join(folder, uri), text);
  }
  return folder;
}

const formats = ['text', 'json', 'sarif'] as const;

/** What all forms of the report say. */
async function reports(folder: string, cache: string): Promise<Run[]> {
  const all: Run[] = [];
  for (const format of formats) all.push(await run(folder, cache, 'check', '--format', format));
  return all;
}

describe('a check with a cache', () => {
  const random = new Random(11);
  const randomFiles = start.map(({ uri, text }) => ({ uri, text: edited(random, edited(random, text)) }));

  it.each([
    ['the library', libraryFiles(true)],
    ['a small workspace', start],
    ['one with random slips', randomFiles],
  ])('writes what one without writes: %s', async (name, files) => {
    const folder = folderOf(name, files);
    const cache = join(temporary, `${name} cache`);
    const plain = await reports(folder, 'off');
    expect(plain[0]!.out).not.toBe('');
    expect(await reports(folder, cache)).toEqual(plain);
    expect(readdirSync(cache).length).toBeGreaterThan(0);
    expect(await reports(folder, cache)).toEqual(plain);
    // After an edit, with what was kept before it.
    writeFileSync(join(folder, files[0]!.uri), edited(random, files[0]!.text));
    expect(await run(folder, cache, 'check')).toEqual(await run(folder, 'off', 'check'));
    expect(await run(folder, cache, 'check', '--no-cache')).toEqual(await run(folder, 'off', 'check'));
    expect(existsSync(join(folder, '.cache'))).toBe(false);
  });

  it('leaves nothing in the cache folder that is half written, with several at once', async () => {
    const folder = folderOf('at once', start);
    const cache = join(temporary, 'cache of several');
    const plain = await run(folder, 'off', 'check');
    for (let round = 0; round < 2; round++)
      for (const one of await Promise.all([1, 2, 3].map(() => run(folder, cache, 'check')))) expect(one).toEqual(plain);
    expect(readdirSync(cache).filter((name) => name.endsWith('.part'))).toEqual([]);
    for (const name of readdirSync(cache)) {
      const path = join(cache, name);
      const bytes = readFileSync(path);
      writeFileSync(path, bytes.subarray(0, random.below(bytes.length)));
    }
    expect(await run(folder, cache, 'check')).toEqual(plain);
  });

  it('does without where the cache folder cannot be there', async () => {
    const folder = folderOf('no cache', start);
    const blocked = join(temporary, 'blocked');
    writeFileSync(blocked, '');
    expect(await run(folder, join(blocked, 'cache'), 'check')).toEqual(await run(folder, 'off', 'check'));
  });
});

describe('a question about one job among many', () => {
  const job = (number: number) => ({
    uri: `jobs/${number}.rebuild`,
    text: start
      .find(({ uri }) => uri === 'jobs.rebuild')!
      .text.replace(/job [12] /gu, (head) => `job ${head[4]}${number} `),
  });
  const jobs = Array.from({ length: 60 }, (_, index) => job(100 + index));

  it('has the same answer with the index of its files, and after one of them changed', async () => {
    const files = [...start, ...jobs];
    const folder = folderOf('jobs', files);
    const cache = join(temporary, 'cache of jobs');
    const ask = async (number: string) => {
      const answers = await Promise.all(['off', cache].map((where) => run(folder, where, 'shim', number)));
      expect(answers[1]).toEqual(answers[0]);
      return answers[0]!;
    };
    // What was written a moment ago may be written again: it is read each time.
    await new Promise((resolve) => setTimeout(resolve, 2_100));
    expect((await ask('1130')).code).toBe(0);
    expect(readdirSync(cache).filter((name) => name.endsWith('jobs'))).toHaveLength(1);
    expect((await ask('1131')).code).toBe(0);
    writeFileSync(join(folder, 'jobs/130.rebuild'), job(999).text);
    expect((await ask('1130')).code).toBe(2);
    expect((await ask('1999')).code).toBe(0);
    rmSync(join(folder, 'jobs/131.rebuild'));
    expect((await ask('1131')).code).toBe(2);
  });
});
