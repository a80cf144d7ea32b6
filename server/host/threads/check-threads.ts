/** Works a large workspace out on all cores. What a thread finds is taken over like what an earlier run has kept. */
import { existsSync } from 'node:fs';
import { availableParallelism } from 'node:os';
import { fileURLToPath } from 'node:url';
import { Worker } from 'node:worker_threads';
import { Pack } from '../../../language/db/pack.ts';
import type { SourceFile, Workspace } from '../../../language/db/workspace.ts';
import { digest } from '../cache/digest.ts';
import type { CheckThreads } from '../host.ts';
import { packVersion, type ThreadData, type ThreadTask } from './thread-messages.ts';

/** A thread with less text to read costs more than it gains: it has to load and warm up the program. */
const leastText = 1_500_000;
/** Each holds all texts. */
const mostThreads = 8;

export interface ThreadOptions {
  /** Threads that work, with the one that asks for them. */
  readonly threads?: number;
  readonly leastText?: number;
  /** The program of a thread. */
  readonly program?: string | null;
}

/**
 * Works out what is found in the files of a workspace, as far as it is not known. Never rejects: what a thread that ends
 * before its time leaves undone is worked out by whoever needs it.
 * @param add takes over what the threads have found, so that it is in the store of the workspace
 */
export async function workOutInThreads(
  workspace: Workspace,
  files: readonly SourceFile[],
  add: (pack: Pack) => void,
  { threads = availableParallelism(), leastText: least = leastText, program = threadProgram() }: ThreadOptions = {},
): Promise<void> {
  if (program === null || threads < 2) return;
  workspace.take(files);
  const lengths = new Map(files.map(({ uri, text }) => [uri, text.length]));
  const missing = workspace.missing();
  const length = missing.reduce((sum, uri) => sum + lengths.get(uri)!, 0);
  const parts = Math.min(threads, mostThreads, Math.floor(length / least));
  if (parts < 2) return;
  const team = new Team(program, files, parts - 1);
  try {
    const [own, ...others] = divided(missing, lengths, parts);
    const packs = team.workOut(others);
    workspace.workOut(own!);
    for (const pack of await packs) add(pack);
  } finally {
    team.end();
  }
}

/**
 * Starts threads that work on some files while this one does other things; null where there is one core, or they are too few.
 * @param files all of the workspace
 * @param add takes over what they find
 */
export function startThreads(
  files: readonly SourceFile[],
  uris: readonly string[],
  add: (pack: Pack) => void,
  { threads = availableParallelism(), leastText: least = leastText, program = threadProgram() }: ThreadOptions = {},
): CheckThreads | null {
  const lengths = new Map(files.map(({ uri, text }) => [uri, text.length]));
  const length = uris.reduce((sum, uri) => sum + (lengths.get(uri) ?? 0), 0);
  if (program === null || threads < 2 || length < least) return null;
  const size = Math.min(threads, mostThreads, Math.ceil(length / least));
  const team = new Team(program, files, size);
  return {
    async workOut(wanted) {
      const known = wanted.filter((uri) => lengths.has(uri));
      for (const pack of await team.workOut(divided(known, lengths, size))) add(pack);
    },
    end: () => team.end(),
  };
}

/** Next to this program, or beside its source; null: it is not there. */
function threadProgram(): string | null {
  const own = fileURLToPath(import.meta.url);
  const path = fileURLToPath(new URL(own.endsWith('.ts') ? 'check-thread.ts' : 'check-thread.mjs', import.meta.url));
  return existsSync(path) ? path : null;
}

class Team {
  private readonly members: readonly Member[];

  constructor(program: string, files: readonly SourceFile[], size: number) {
    const data: ThreadData = { files: files.map(({ uri, text }) => [uri, text]) };
    this.members = Array.from({ length: size }, () => new Member(program, data));
  }

  /** What each of the threads has found that has not ended before. */
  async workOut(shares: readonly (readonly string[])[]): Promise<Pack[]> {
    const texts = await Promise.all(this.members.map((member, index) => member.answer(shares[index] ?? [])));
    return texts.flatMap((text) => (text === null ? [] : (Pack.of(text, packVersion, digest) ?? [])));
  }

  end() {
    for (const member of this.members) member.end();
  }
}

/** A thread that may end at any time. */
class Member {
  private readonly worker: Worker;
  private hasEnded = false;
  private resolve: (text: string | null) => void = () => {};

  constructor(program: string, data: ThreadData) {
    this.worker = new Worker(program, { workerData: data, stdout: true, stderr: true });
    const ended = () => {
      this.hasEnded = true;
      this.resolve(null);
    };
    this.worker.on('message', (text) => this.resolve(typeof text === 'string' ? text : null));
    this.worker.on('messageerror', ended);
    this.worker.on('error', ended);
    this.worker.on('exit', ended);
  }

  /** Null where it has ended. */
  answer(task: ThreadTask): Promise<string | null> {
    return new Promise((resolve) => {
      this.resolve = resolve;
      if (this.hasEnded) resolve(null);
      else this.worker.postMessage(task);
    });
  }

  end() {
    void this.worker.terminate();
  }
}

/** Shares of about as much text, each of neighbors: they read the same families and sequences. */
function divided(uris: readonly string[], lengths: ReadonlyMap<string, number>, count: number): string[][] {
  const total = uris.reduce((sum, uri) => sum + lengths.get(uri)!, 0);
  const shares = Array.from({ length: count }, (): string[] => []);
  let before = 0;
  for (const uri of uris) {
    shares[Math.min(count - 1, Math.floor((before / total) * count))]!.push(uri);
    before += lengths.get(uri)!;
  }
  return shares;
}
