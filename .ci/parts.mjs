/**
 * Runs the parts of `.ci/run` side by side, as many as the machine has cores, and prints the output of each whole when it
 * ends. Plain JavaScript without packages: it runs in any Node from 20, before anything is installed.
 */
import { spawn } from 'node:child_process';
import { existsSync, readFileSync, rmSync } from 'node:fs';
import { availableParallelism } from 'node:os';

const report = 'out/tests.json';

/** Chromium shows the editor; poppler reads the printed sheets back; the rest builds the editor's native parts. */
const machine = `
  export DEBIAN_FRONTEND=noninteractive
  command -v apt-get >/dev/null && [ "$(id -u)" = 0 ] || { echo "No apt, or not root: what is installed is used."; exit 0; }
  apt-get update -qq &&
  apt-get install -y -qq --no-install-recommends chromium poppler-utils \\
    libkrb5-dev libx11-dev libxkbfile-dev libsecret-1-dev pkg-config g++ make python3 >/dev/null`;

/**
 * Each with what must have passed before it, and the cores that it keeps busy (else one). The order is that in which they
 * start, so what takes longest is at the top of what can run together. DEVELOPERS.md says how the campaigns were sized.
 */
const parts = [
  { name: 'machine', run: machine, after: [] },
  { name: 'packages', run: 'npm ci', after: [] },
  { name: 'lint', run: 'npm run lint', after: ['packages'] },
  { name: 'types', run: 'npm run types', after: ['packages'] },
  {
    name: 'tests',
    run: `npm test -- --reporter=default --reporter=json --outputFile.json=${report}`,
    after: ['machine', 'packages'],
    cores: 2,
  },
  { name: 'mutate', run: 'npm run mutate', after: ['packages'] },
  { name: 'bounds', run: 'npm run bench -- bounds', after: ['packages'] },
  { name: 'editor host', run: 'npm run test:workbench -- --install', after: ['machine', 'packages'] },
  { name: 'web', run: 'npm run test:web', after: ['editor host'] },
  { name: 'tasks', run: 'npm run test:workbench -- --trusted', after: ['editor host'] },
  { name: 'packed', run: 'npm run test:packed', after: ['editor host'] },
  { name: 'oracle', run: 'npm run oracle -- 4000 1 --quick', after: ['packages'] },
  { name: 'fuzz', run: 'npm run fuzz -- --cases=600 1', after: ['packages'] },
  { name: 'sheets', run: 'npm run sheets -- 60 1', after: ['packages'] },
  { name: 'legal', run: 'npm run legal -- 12 1', after: ['packages'] },
  { name: 'demo', run: 'npm run demo', after: ['packages'] },
  // Keys are typed at the pace of a hand: nothing else runs beside it.
  { name: 'editor', run: 'npm run test:workbench', after: ['editor host'], cores: 2 },
];

const cores = Math.max(2, availableParallelism());
const begun = Date.now();
/** How each part ended. */
const ended = new Map();
const running = new Set();

/** Starts what can start, in order: nothing overtakes a part that only waits for cores. */
function startNext() {
  let free = cores - [...running].reduce((sum, { cores = 1 }) => sum + cores, 0);
  for (const part of parts) {
    if (running.has(part) || ended.has(part.name)) continue;
    const results = part.after.map((name) => ended.get(name));
    if (results.some((result) => result !== undefined && result !== 'passed')) {
      ended.set(part.name, 'not run');
      return startNext();
    }
    if (!results.every((result) => result === 'passed')) continue;
    free -= part.cores ?? 1;
    if (free < 0) break;
    start(part);
  }
  if (running.size === 0) finish();
}

function start(part) {
  running.add(part);
  const since = Date.now();
  console.log(`${part.name} …`);
  const output = [];
  const child = spawn('bash', ['-c', part.run], { stdio: ['ignore', 'pipe', 'pipe'] });
  for (const stream of [child.stdout, child.stderr]) stream.on('data', (chunk) => output.push(chunk));
  child.on('close', (code) => {
    running.delete(part);
    ended.set(part.name, code === 0 ? 'passed' : 'failed');
    console.log(
      `\n──── ${part.name}: ${ended.get(part.name)} in ${seconds(since)} s ────\n${Buffer.concat(output).toString().trimEnd()}\n`,
    );
    startNext();
  });
}

function seconds(since) {
  return Math.round((Date.now() - since) / 1000);
}

/** The last line has the counts of the tests, and what failed. */
function finish() {
  const bad = parts.flatMap(({ name }) => (ended.get(name) === 'passed' ? [] : [`${name} ${ended.get(name)}`]));
  const { numPassedTests, numFailedTests, numPendingTests } = existsSync(report)
    ? JSON.parse(readFileSync(report, 'utf8'))
    : { numPassedTests: 0, numFailedTests: 0, numPendingTests: 0 };
  console.log(`${parts.length} parts in ${seconds(begun)} s`);
  console.log([`${numPassedTests} passed, ${numFailedTests} failed, ${numPendingTests} skipped`, ...bad].join('; '));
  process.exitCode = bad.length > 0 ? 1 : 0;
}

rmSync(report, { force: true });
startNext();
