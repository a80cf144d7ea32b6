/** Works a large workspace out on all cores. What a thread finds is taken over like what an earlier run has kept. */
import { existsSync } from 'node:fs';
import { availableParallelism } from 'node:os';
import { fileURLToPath } from 'node:url';
import { Worker } from 'node:worker_threads';
import { Pack } from '../../../language/db/pack.ts';
import type { Part, SourceFile, Workspace } from '../../../language/db/workspace.ts';
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
  const count = (uris: readonly string[]) =>
    Math.min(threads, mostThreads, Math.floor(uris.reduce((sum, uri) => sum + lengths.get(uri)!, 0) / least));
  let team: Team | null = null;
  try {
    for (const part of ['parsed', 'checked'] as const) {
      const missing = workspace.missing(part);
      const parts = count(missing);
      if (parts < 2) continue;
      team ??= new Team(program, { files: files.map(({ uri, text }) => [uri, text]) }, parts - 1);
      const [own, ...others] = divided(missing, lengths, team.size + 1);
      const packs = team.workOut(part, others);
      workspace.workOut(part, own!);
      for (const text of await packs) {
        const pack = Pack.of(text, packVersion, digest);
        if (pack !== null) add(pack);
      }
    }
  } finally {
    team?.end();
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
  const team = new Team(program, { files: files.map(({ uri, text }) => [uri, text]) }, size);
  return {
    async workOut(part, wanted) {
      const known = wanted.filter((uri) => lengths.has(uri));
      for (const text of await team.workOut(part, divided(known, lengths, size))) {
        const pack = Pack.of(text, packVersion, digest);
        if (pack !== null) add(pack);
      }
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
  private found: readonly (string | null)[] = [];

  constructor(program: string, data: ThreadData, size: number) {
    this.members = Array.from({ length: size }, () => new Member(program, data));
  }

  get size(): number {
    return this.members.length;
  }

  /** What each of the threads has found that has not ended before. */
  async workOut(part: Part, shares: readonly (readonly string[])[]): Promise<string[]> {
    const before = this.found;
    this.found = await Promise.all(
      this.members.map((member, index) =>
        member.answer({
          part,
          uris: shares[index] ?? [],
          packs: before.flatMap((text, of) => (text === null || of === index ? [] : [text])),
        }),
      ),
    );
    return this.found.flatMap((text) => text ?? []);
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
