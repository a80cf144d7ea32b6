/**
 * Commands that write are killed at any moment, for real. Afterwards each file is the old one or the new one, and the same
 * command, given again, ends what was begun.
 */
import { type ChildProcess, spawn, spawnSync } from 'node:child_process';
import { once } from 'node:events';
import { cpSync, existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, utimesSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { basename, join } from 'node:path';
import { numbersFrom } from '../legal/walk.ts';
import { root } from '../library.ts';

const program = join(root, 'out', 'handtight.mjs');
const mapping = {
  job: 'job',
  serial: 'serial',
  results: [{ test: { is: 'back-leak' }, value: 'leak', unit: { is: 's' }, tool: { is: 'PG-400' } }],
};

/** What is killed: its command, and what must be right after it was given once more. */
interface Work {
  readonly name: string;
  readonly args: readonly string[];
  /** A file that it changes; it is never half. */
  readonly file: string;
}

const works: readonly Work[] = [
  { name: 'close', args: ['close', '2198', '--today', '2026-10-20'], file: 'records/2198-1.record.json' },
  {
    name: 'close again',
    args: ['close', '2198', '--today', '2026-10-21', '--reissue', 'misread'],
    file: 'records/2198-2.record.json',
  },
  { name: 'import', args: ['import', 'bench.csv', '--mapping', 'map.json', '--write'], file: 'jobs/job-2207.rebuild' },
  { name: 'learn', args: ['learn', '--page', 'learn.html'], file: 'learn.html' },
];

/** A workspace with its issued revision, and beside it what each command makes of it. */
class Ground {
  readonly folder = mkdtempSync(join(tmpdir(), 'handtight-kills-'));
  /** What the file of each work is before, and after it has ended. Null: it is not there. */
  readonly wanted = new Map<string, readonly [before: string | null, after: string | null]>();

  constructor() {
    for (const part of ['shop.rebuild', 'one-spring', 'shared', 'jobs'])
      cpSync(join(root, 'procedures', part), join(this.folder, 'start', part), { recursive: true });
    const start = join(this.folder, 'start');
    writeFileSync(join(start, 'bench.csv'), 'job,serial,leak\n2207,0413,9\n2207,0414,11\n');
    writeFileSync(join(start, 'map.json'), JSON.stringify(mapping));
    this.run(start, ['issue', 'rebuild-one-spring', '--today', '2026-10-06']);
    for (const work of works) {
      const before = textOf(join(start, work.file));
      const at = join(this.folder, work.name);
      cpSync(start, at, { recursive: true });
      this.run(at, work.args);
      this.wanted.set(work.name, [before, textOf(join(at, work.file))]);
      // The others begin with a closed job.
      if (work.name === 'close') cpSync(join(at, 'records'), join(start, 'records'), { recursive: true });
    }
  }

  environment(at: string) {
    return { ...process.env, HANDTIGHT_CACHE: join(at, '.cache'), LANG: 'C' };
  }

  run(at: string, args: readonly string[]) {
    return spawnSync(process.execPath, [program, ...args], { cwd: at, env: this.environment(at), encoding: 'utf8' });
  }

  begin(at: string, args: readonly string[]): ChildProcess {
    return spawn(process.execPath, [program, ...args], { cwd: at, env: this.environment(at), stdio: 'ignore' });
  }

  end() {
    rmSync(this.folder, { recursive: true, force: true });
  }
}

function textOf(path: string): string | null {
  return existsSync(path) ? readFileSync(path, 'utf8') : null;
}

export interface Killed {
  readonly kills: number;
  /** Those that came before the work had ended. */
  readonly inTime: number;
  /** How many had left the new file. */
  readonly done: number;
  /** What was wrong afterwards. */
  readonly wrong: readonly string[];
}

/** Kills each of the commands in turn, so many times in all. */
export async function kill(count: number, seed = 1): Promise<Killed> {
  const ground = new Ground();
  const random = numbersFrom(seed);
  const wrong: string[] = [];
  let inTime = 0;
  let done = 0;
  /** How long each took without a kill, ms: the moment is anywhere in it. */
  const spans = new Map<string, number>();
  try {
    for (let index = 0; index < count; index++) {
      const work = works[index % works.length]!;
      const at = join(ground.folder, 'now');
      rmSync(at, { recursive: true, force: true });
      cpSync(join(ground.folder, 'start'), at, { recursive: true });
      if (work.name === 'close') rmSync(join(at, 'records'), { recursive: true, force: true });
      const began = performance.now();
      const child = ground.begin(at, work.args);
      const ended = once(child, 'exit');
      const span = spans.get(work.name);
      if (span === undefined) {
        await ended;
        spans.set(work.name, performance.now() - began);
        continue;
      }
      // Most of its time is spent before the first file is written: half of the kills come in the last fifth.
      const share = random() < 0.5 ? random() : 0.8 + 0.25 * random();
      await new Promise((resolve) => setTimeout(resolve, span * share));
      child.kill('SIGKILL');
      const [, signal] = (await ended) as [number | null, string | null];
      if (signal === 'SIGKILL') inTime++;
      const found = whatIsWrong(ground, work, at);
      if (found.isDone) done++;
      for (const one of found.wrong) wrong.push(`${work.name}, kill ${index}: ${one}`);
    }
    return { kills: count, inTime, done, wrong };
  } finally {
    ground.end();
  }
}

/** What writing has begun and not ended, and did not take away. */
function leftIn(at: string): string[] {
  return ['.', 'jobs', 'records'].flatMap((folder) =>
    existsSync(join(at, folder))
      ? readdirSync(join(at, folder))
          .filter((name) => name.endsWith('.part'))
          .map((name) => join(folder, name))
      : [],
  );
}

function whatIsWrong(ground: Ground, { name, args, file }: Work, at: string) {
  const wrong: string[] = [];
  const [before, after] = ground.wanted.get(name)!;
  const text = textOf(join(at, file));
  const isDone = text === after;
  if (!isDone && text !== before) wrong.push(`${file} is half`);
  for (const one of leftIn(at)) {
    if (!basename(one).startsWith('.')) wrong.push(`${one} was left and would be taken for what it is not`);
    // The next command that writes there removes what is too old to be another one's work.
    utimesSync(join(at, one), 0, 0);
  }
  const again = ground.run(at, args);
  // What was closed by the killed command is closed, and says so.
  const isClosed = name.startsWith('close') && again.status === 1 && /is closed/u.test(again.stderr);
  if (again.status !== 0 && !isClosed) wrong.push(`again: ${again.status} ${again.stderr}`);
  if (!isClosed) for (const one of leftIn(at)) wrong.push(`${one} is still there after it was given again`);
  const verified = ground.run(at, ['verify']);
  if (verified.status !== 0) wrong.push(`verify: ${verified.stdout}${verified.stderr}`);
  const asked = ground.run(at, ['history', '1107']);
  if (asked.status !== 0) wrong.push(`history: ${asked.stderr}`);
  if (name !== 'close again' && textOf(join(at, file)) !== after)
    wrong.push(`${file} is another after it was given again`);
  return { isDone, wrong };
}
