import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { checkFiles, type SourceFile, Workspace } from '../../../language/db/workspace.ts';
import { edited, start } from '../../../tests/fixtures/workspace-edits.ts';
import { Random } from '../../../tests/fuzz/random.ts';
import { libraryFiles, root } from '../../../tests/library.ts';
import { digest } from '../cache/digest.ts';
import { PackStore } from '../cache/pack-store.ts';
import { type ThreadOptions, workOutInThreads } from './check-threads.ts';

/** The program of a thread, which starts faster than its source. */
const built = join(root, 'out/check-thread.mjs');

/** Checks files by threads: what is found, and how much was left to this one. */
async function checked(files: readonly SourceFile[], options: ThreadOptions) {
  const store = new PackStore();
  const workspace = new Workspace({ digest, store });
  let packs = 0;
  await workOutInThreads(
    workspace,
    files,
    (pack) => {
      packs++;
      store.add(pack);
    },
    { leastText: 1, program: built, ...options },
  );
  workspace.database.log = [];
  const { diagnostics } = workspace.check(files);
  const analyzed = workspace.database.log.filter((line) => line.startsWith('outcome ')).length;
  return { diagnostics, packs, analyzed };
}

const failing = (text: string) => {
  const path = join(mkdtempSync(join(tmpdir(), 'handtight-thread-')), 'thread.mjs');
  writeFileSync(path, text);
  return path;
};

describe('a workspace that threads have worked out', () => {
  const files = libraryFiles(true);

  it.each([2, 3])('has the findings of one that was worked out in one go: %i threads', async (threads) => {
    const { diagnostics, packs, analyzed } = await checked(files, { threads });
    expect(diagnostics).toEqual(checkFiles(files).diagnostics);
    expect(packs).toBe(threads - 1);
    expect(analyzed).toBe(0);
  });

  it.each([1, 2])('has them for random files too, seed %i', async (seed) => {
    const random = new Random(seed);
    let now = [...start];
    for (let count = 0; count < 4; count++) {
      now = now.map(({ uri, text }) => ({ uri, text: edited(random, text) }));
      const { diagnostics } = await checked(now, { threads: 3 });
      expect(diagnostics).toEqual(checkFiles(now).diagnostics);
    }
  });

  it.each([
    ['ends at once', 'process.exit(1);'],
    ['throws', 'throw new Error("broken");'],
    [
      'throws when it is asked',
      'import { parentPort } from "node:worker_threads"; parentPort.on("message", () => { throw new Error("broken"); });',
    ],
    [
      'answers something else',
      'import { parentPort } from "node:worker_threads"; parentPort.on("message", () => parentPort.postMessage("nonsense"));',
    ],
    ['cannot be read', 'this is no program'],
  ])('has them where a thread %s', async (_, program) => {
    const { diagnostics, packs } = await checked(start, { threads: 2, program: failing(program) });
    expect(diagnostics).toEqual(checkFiles(start).diagnostics);
    expect(packs).toBe(0);
  });

  it('is left to this thread where it is small, or there is one core', async () => {
    expect((await checked(start, { threads: 1 })).packs).toBe(0);
    expect((await checked(start, { threads: 4, leastText: 100_000_000 })).packs).toBe(0);
    expect((await checked(start, { threads: 4, program: null })).packs).toBe(0);
  });

  it('can be worked out by the source of the program', async () => {
    const { diagnostics, analyzed } = await checked(start, {
      threads: 2,
      program: join(root, 'server/host/threads/check-thread.ts'),
    });
    expect(diagnostics).toEqual(checkFiles(start).diagnostics);
    expect(analyzed).toBe(0);
  });
});
