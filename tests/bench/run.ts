/**
 * `npm run bench -- [NAME…] [--quick | --brief] [--profile] [--before FOLDER] [--json FILE] [--markdown]`: measures speed and memory side by
 * side with peers, which the first run installs. DEVELOPERS.md says how to read it.
 */
import { mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { availableParallelism, cpus } from 'node:os';
import { join, resolve } from 'node:path';
import { parseArgs } from 'node:util';
import { root } from '../library.ts';
import type { Bench, Failure, Result, Setting } from './bench.ts';
import { profiled, profileInWords, sharesOf } from './measure/profile.ts';
import { markdownOf, resultInWords, withTable } from './measure/report.ts';
import { verdictOf } from './measure/verdict.ts';
import { installPeers } from './peers/install.ts';
import { killServers } from './programs/started.ts';
import { Folders } from './workload/folders.ts';

const { values: options, positionals } = parseArgs({
  allowPositionals: true,
  options: {
    quick: { type: 'boolean', default: false },
    brief: { type: 'boolean', default: false },
    profile: { type: 'boolean', default: false },
    before: { type: 'string' },
    json: { type: 'string' },
    markdown: { type: 'boolean', default: false },
    list: { type: 'boolean', default: false },
  },
});

const folder = join(root, 'tests/bench/benches');
const benches = new Map<string, Bench>();
for (const file of readdirSync(folder).sort())
  benches.set(file.replace(/\.ts$/u, ''), ((await import(join(folder, file))) as { default: Bench }).default);

const named = positionals.filter((name) => name !== 'all');
const unknown = named.filter((name) => !benches.has(name));
if (options.list || unknown.length > 0) {
  if (unknown.length > 0) console.log(`There is no bench ${unknown.join(', ')}. There are:`);
  for (const [name, { title }] of benches) console.log(`${name.padEnd(12)} ${title}`);
  process.exit(unknown.length > 0 ? 2 : 0);
}

const peers = installPeers();
if ('why' in peers) console.log(`Nothing is measured against peers. ${peers.why}\n`);
const profiles = options.profile ? join(root, 'out/profiles') : null;
if (profiles !== null) {
  rmSync(profiles, { recursive: true, force: true });
  mkdirSync(profiles, { recursive: true });
}
const folders = new Folders();
const before = options.before === undefined ? [] : [{ name: 'before', root: resolve(options.before) }];
const setting: Setting = {
  quick: options.quick,
  brief: options.brief || options.quick,
  checkouts: [{ name: 'Handtight', root }, ...before],
  peers: 'why' in peers ? null : peers,
  folders,
  profiles,
};

const machine = `${cpus()[0]?.model ?? 'unknown'}, ${availableParallelism()} cores, Node ${process.version}`;
console.log(machine);
/** Those that the targets are measured by. */
const hasTargets = new Set(['edit', 'among-many', 'check', 'one-job', 'start', 'growth', 'rounds', 'card']);
const chosen = [...benches].filter(([name, { onlyNamed }]) =>
  named.length > 0 ? named.includes(name) : options.brief ? hasTargets.has(name) : onlyNamed === undefined,
);
const results: Result[] = [];
const work = async () => {
  for (const [name, bench] of chosen) {
    const begin = performance.now();
    console.log(`\n── ${name}: ${bench.title}`);
    try {
      for await (const result of bench.run(setting)) report(result);
      console.log(`  (${name} took ${Math.round((performance.now() - begin) / 1000)} s)`);
    } catch (error) {
      report({ kind: 'failure', work: `the rest of ${name}`, why: (error as Error).message } satisfies Failure);
    } finally {
      killServers();
    }
  }
};
function report(result: Result) {
  results.push(result);
  console.log(resultInWords(result));
}

try {
  await (profiles !== null && chosen.some(([, { inProcess }]) => inProcess) ? profiled(profiles, work) : work());
} finally {
  folders.remove();
}

const count = (verdict: string) => results.filter((one) => verdictOf(one) === verdict).length;
console.log(
  `\n${count('met')} targets met, ${count('missed')} missed, ${count('not measured')} not measured, of ${results.length} results`,
);
if (profiles !== null) console.log(`\n${profileInWords(sharesOf(profiles))}\n\nThe profiles are in ${profiles}.`);
if (options.json !== undefined) {
  const verdicts = results.map((result) => ({ ...result, verdict: verdictOf(result) }));
  writeFileSync(
    options.json,
    `${JSON.stringify({ machine, quick: options.quick, brief: options.brief, results: verdicts }, null, 2)}\n`,
  );
}
if (options.markdown) {
  const page = join(root, 'DEVELOPERS.md');
  writeFileSync(page, withTable(readFileSync(page, 'utf8'), `\n${machine}.\n\n${markdownOf(results)}\n`));
}
// What may be missed is a target; a bound may not, nor may a measurement fail.
const isBound = positionals.includes('bounds') && results.some((one) => verdictOf(one) === 'missed');
if (isBound || results.some(({ kind }) => kind === 'failure')) process.exitCode = 1;
