/**
 * The built command in folders that grow: `check` from nothing, with the cache, and after one edit with it; `certificate`, `shim` and
 * `print` of one job among many. Processor time, time and memory of the whole process, and how each grows. `npm run bench`;
 * arguments: counts of procedures (up to 1000 without them), and of jobs behind a `--`.
 */
import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { libraryFiles, root } from './library.ts';

const program = join(root, 'out/handtight.mjs');
const given = process.argv.slice(2);
const at = given.includes('--') ? given.indexOf('--') : given.length;
const numbers = (words: readonly string[], otherwise: readonly number[]) =>
  words.length === 0 ? otherwise : words.map(Number);
const procedureCounts = numbers(given.slice(0, at), [1, 10, 100, 1000]);
const jobCounts = numbers(given.slice(at + 1), [1, 100, 10_000]);

const library = libraryFiles();
const textOf = (end: string) => library.find(({ uri }) => uri.endsWith(end))!.text;
const procedure = textOf('one-spring/procedure.rebuild');
const around = ['procedures/shop.rebuild', 'one-spring/family.rebuild', 'shared/sequences.rebuild'].map(textOf);
const job = library.find(({ text }) => /^job 2207\b/mu.test(text))!.text;
const to = mkdtempSync(join(tmpdir(), 'handtight-bench-'));

/** Says at its end what it took: loaded before the program. */
const meter = join(to, 'meter.mjs');
writeFileSync(
  meter,
  `import { writeFileSync } from 'node:fs';
process.on('exit', () => {
  const { userCPUTime, systemCPUTime, maxRSS } = process.resourceUsage();
  writeFileSync(process.env.METER, JSON.stringify({ cpu: (userCPUTime + systemCPUTime) / 1000, memory: maxRSS / 1024 }));
});`,
);

interface Used {
  /** ms */
  readonly cpu: number;
  readonly wall: number;
  /** Most that it held, MB. */
  readonly memory: number;
}

function run(folder: string, cache: string, ...args: string[]): Used {
  const file = join(to, 'used.json');
  const begin = performance.now();
  const { status, stderr } = spawnSync(process.execPath, ['--import', pathToFileURL(meter).href, program, ...args], {
    cwd: folder,
    env: { ...process.env, HANDTIGHT_CACHE: cache, METER: file },
    encoding: 'utf8',
    maxBuffer: 1e9,
  });
  const wall = performance.now() - begin;
  if (status !== 0 && status !== 1) throw new Error(`handtight ${args.join(' ')}: ${stderr}`);
  return { ...(JSON.parse(readFileSync(file, 'utf8')) as Omit<Used, 'wall'>), wall };
}

/** The one of three that took the least processor time: what else runs on the machine only adds. */
function best(work: () => Used): Used {
  return [work(), work(), work()].sort((a, b) => a.cpu - b.cpu)[0]!;
}

function folderOf(name: string, texts: readonly string[]): string {
  const folder = join(to, name);
  mkdirSync(folder, { recursive: true });
  for (const [index, text] of [...around, ...texts].entries()) writeFileSync(join(folder, `${index}.rebuild`), text);
  return folder;
}

/** How it grows: 1 is in proportion to the count, 0 not at all. */
function exponent(counts: readonly number[], times: readonly number[]): string {
  if (counts.length < 2) return '';
  const [a, b] = [counts.length - 2, counts.length - 1];
  return (Math.log(times[b]! / times[a]!) / Math.log(counts[b]! / counts[a]!)).toFixed(2);
}

function report(what: string, counts: readonly number[], all: readonly Used[]) {
  for (const [index, { cpu, wall, memory }] of all.entries())
    console.log(
      `${`${what}, ${counts[index]}`.padEnd(44)} processor ${cpu.toFixed(0).padStart(7)} ms   whole ${wall.toFixed(0).padStart(7)} ms   memory ${memory.toFixed(0).padStart(5)} MB   over the first ${(cpu / all[0]!.cpu).toFixed(2)}`,
    );
  const times = all.map(({ cpu }) => cpu);
  if (counts.length > 1) console.log(`${what}: grows with exponent ${exponent(counts, times)} at the end`);
}

try {
  const cold: Used[] = [];
  const kept: Used[] = [];
  const edited: Used[] = [];
  for (const count of procedureCounts) {
    const texts = Array.from({ length: count }, (_, index) =>
      procedure.replaceAll('rebuild-one-spring', `rebuild-${index}`),
    );
    const folder = folderOf(`procedures-${count}`, texts);
    const cache = join(to, `cache-${count}`);
    cold.push(run(folder, cache, 'check'));
    kept.push(best(() => run(folder, cache, 'check')));
    let edits = 0;
    edited.push(
      best(() => {
        writeFileSync(
          join(folder, '3.rebuild'),
          texts[0]!.replace('Slow strokes', `Slow strokes${'x'.repeat(++edits)}`),
        );
        return run(folder, cache, 'check');
      }),
    );
  }
  report('check from nothing', procedureCounts, cold);
  report('check with the cache', procedureCounts, kept);
  report('check after an edit, with the cache', procedureCounts, edited);

  const jobFolders = jobCounts.map((count) =>
    folderOf(`jobs-${count}`, [
      procedure,
      ...Array.from({ length: count }, (_, index) => job.replace(/^job 2207\b/mu, `job ${10_000 + index}`)),
    ]),
  );
  for (const args of [
    ['certificate', '10000', '--draft', '--format', 'html', '--to', to],
    ['shim', '10000'],
    ['print', '10000', '--draft', '--format', 'html', '--to', to],
  ]) {
    const cache = join(to, 'cache of jobs');
    const first = jobFolders.map((folder) => run(folder, join(to, 'no cache', 'yet', args[0]!), ...args));
    report(`${args[0]} of a job, the first time`, jobCounts, first);
    report(
      `${args[0]} of a job, again`,
      jobCounts,
      jobFolders.map((folder) => best(() => run(folder, cache, ...args))),
    );
  }
} finally {
  rmSync(to, { recursive: true, force: true });
}
