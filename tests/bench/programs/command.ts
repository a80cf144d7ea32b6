import { spawn } from 'node:child_process';
import { readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Checkout, Setting } from '../bench.ts';
import { environment } from './our-server.ts';

/** What a process has used, from its start to its end. */
export interface Used {
  /** ms. */
  readonly wall: number;
  /** Of all its threads, ms. */
  readonly processor: number;
  /** At its peak, MB. */
  readonly memory: number;
  readonly status: number | null;
}

const usage = fileURLToPath(new URL('usage-at-exit.cjs', import.meta.url));

/** Longest that a command may take, s. */
const patience = 1200;

/** Runs our command in a folder. */
export function ourCommand(
  { profiles }: Pick<Setting, 'profiles'>,
  { root }: Checkout,
  folder: string,
  cache: string,
  ...args: readonly string[]
): Promise<Used> {
  const profiling = profiles === null ? [] : ['--cpu-prof', `--cpu-prof-dir=${profiles}`];
  return node([...profiling, join(root, 'out/handtight.mjs'), ...args], folder, environment(cache));
}

/** Runs a program of Node in a folder. What it writes goes nowhere, and it may end with findings. */
export async function node(args: readonly string[], folder: string, env = process.env): Promise<Used> {
  const report = join(folder, `.usage-${process.hrtime.bigint()}`);
  const begin = performance.now();
  const child = spawn(process.execPath, ['--require', usage, ...args], {
    cwd: folder,
    env: { ...env, USAGE_REPORT: report },
    stdio: ['ignore', 'ignore', 'pipe'],
    timeout: patience * 1000,
  });
  let said = '';
  child.stderr.on('data', (chunk: Buffer) => {
    said += chunk;
  });
  const status = await new Promise<number | null>((resolve) => child.once('close', resolve));
  const wall = performance.now() - begin;
  const why = () => new Error(`${args.join(' ')} ended with ${status}: ${said.trim().split('\n').at(-1)}`);
  // A defect, a wrong argument, the end of time.
  if (status !== 0 && status !== 1) throw why();
  const { processor, memory } = JSON.parse(readFileSync(report, 'utf8')) as Pick<Used, 'processor' | 'memory'>;
  rmSync(report);
  return { wall, processor, memory, status };
}
