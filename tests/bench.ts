/**
 * Speed, as ratios of things measured side by side in one run: figures of one machine mean nothing on another.
 * `npm run bench`; CHROMIUM names the browser to measure against.
 */
import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Checker } from '../language/check.ts';
import { parse } from '../language/grammar/parse.ts';
import { replay } from '../language/replay/replay.ts';
import { resolve } from '../language/resolve/resolve.ts';
import { libraryFiles, root } from './library.ts';

const files = libraryFiles();

/** Milliseconds of the middle one of some runs. */
function middle(runs: number, work: () => void): number {
  const times = Array.from({ length: runs }, () => {
    const start = performance.now();
    work();
    return performance.now() - start;
  });
  return times.sort((a, b) => a - b)[Math.floor(runs / 2)]!;
}

/** The library's longest procedure with steps put in that change nothing. */
function longProcedure(steps: number) {
  const { uri, text } = files.find((file) => file.uri.includes('one-spring/procedure'))!;
  const more = text.replace(/(\n\s*stage \S+ .*\{\n)/u, `$1${'    measure shim with MIC-1\n'.repeat(steps)}`);
  const trees = files.map((file) => ({ uri: file.uri, ast: parse(file.uri === uri ? more : file.text).ast }));
  return resolve(trees).procedures.find((procedure) => procedure.source.file === uri)!;
}

const say = (words: string, ratio: number, detail: string) =>
  console.log(`${words.padEnd(64)} ${ratio.toFixed(2).padStart(8)}   (${detail})`);
const ms = (value: number) => `${value.toFixed(1)} ms`;

const thousand = longProcedure(1000);
const tenThousand = longProcedure(10_000);
replay(tenThousand);
const short = middle(5, () => replay(thousand));
const long = middle(5, () => replay(tenThousand));
say('replay of 10,000 steps over 1,000 steps (linear: up to 10)', long / short, `${ms(long)} over ${ms(short)}`);

const cold = middle(3, () => void new Checker().check(files));
const checker = new Checker();
checker.check(files);
let edits = 0;
const typed = middle(
  9,
  () =>
    void checker.check(
      files.map((file, index) => (index === 0 ? { ...file, text: `${file.text}\n// ${edits++}` } : file)),
    ),
);
say(
  'check after a keystroke over a check of the whole library',
  typed / cold,
  `${ms(typed)} over ${ms(cold)}, ${files.length} files`,
);

const browser = process.env.CHROMIUM ?? '/usr/bin/chromium';
const program = join(root, 'out/handtight.mjs');
if (!existsSync(browser) || !existsSync(program)) {
  console.log(
    `PDF against a browser: not measured (${existsSync(program) ? `${browser} is not there` : 'npm run build first'}).`,
  );
} else {
  const to = mkdtempSync(join(tmpdir(), 'handtight-bench-'));
  const print = (format: string) =>
    spawnSync(
      process.execPath,
      [program, 'print', '2207', '--workspace', 'procedures', '--format', format, '--to', to],
      { cwd: root },
    );
  print('html');
  const html = join(to, readdirSync(to)[0]!);
  const typeset = middle(3, () => void print('pdf'));
  const flags = [
    '--headless',
    '--no-sandbox',
    '--disable-gpu',
    '--disable-quic',
    '--no-first-run',
    '--disable-background-networking',
    '--disable-component-update',
    '--disable-sync',
  ];
  const printed = middle(
    3,
    () =>
      void spawnSync(browser, [
        ...flags,
        `--user-data-dir=${join(to, 'profile')}`,
        `--print-to-pdf=${join(to, 'browser.pdf')}`,
        `file://${html}`,
      ]),
  );
  say(
    'check and print of the demo job, cold, over Chromium printing the same sheet',
    typeset / printed,
    `${ms(typeset)} over ${ms(printed)}`,
  );
  rmSync(to, { recursive: true, force: true });
}
