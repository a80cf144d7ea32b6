/**
 * Speed, as ratios of things measured side by side in one run: figures of one machine mean nothing on another.
 * `npm run bench`; CHROMIUM names the browser to measure against.
 */
import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { analyzeFlow } from '../language/analysis/flow-analysis.ts';
import { resolve } from '../language/db/resolve.ts';
import { Workspace } from '../language/db/workspace.ts';
import { buildSheet } from '../language/documents/traveler/index.ts';
import { parse } from '../language/syntax/parse.ts';
import { pdfOf } from '../server/host/print/pdf.ts';
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
analyzeFlow(tenThousand);
const short = middle(5, () => analyzeFlow(thousand));
const long = middle(5, () => analyzeFlow(tenThousand));
say('replay of 10,000 steps over 1,000 steps (linear: up to 10)', long / short, `${ms(long)} over ${ms(short)}`);

const cold = middle(3, () => void new Workspace().check(files));
const checker = new Workspace();
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

/** What a workspace of some procedures takes, in a process of its own. BEFORE is a worktree of another state of the source. */
type Timings = Readonly<Record<'first' | 'nothing' | 'keystroke' | 'newLine' | 'newName' | 'memory', number>>;
const workspaceOf = (count: number, source = root) =>
  JSON.parse(
    spawnSync(process.execPath, ['--expose-gc', 'tests/bench-workspace.ts', String(count), source], {
      cwd: root,
      encoding: 'utf8',
    }).stdout,
  ) as Timings;
const before = process.env.BEFORE;
const lone = workspaceOf(1);
for (const count of [100, 1000]) {
  const many = workspaceOf(count);
  const other = before === undefined ? null : workspaceOf(count, before);
  for (const what of ['first', 'nothing', 'keystroke', 'newLine', 'newName'] as const)
    say(
      `${count} procedures over one: ${what}`,
      many[what] / lone[what],
      `${ms(many[what])} over ${ms(lone[what])}${other === null ? '' : `; before ${ms(other[what])}, ${(other[what] / many[what]).toFixed(1)} times as much`}`,
    );
  say(`${count} procedures over one: memory`, many.memory / lone.memory, `${(many.memory / 1e6).toFixed(0)} MB`);
}

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
  // The same span: a sheet that is made already, to a file, each in a process of its own.
  const { jobs, procedures } = new Workspace().check(files);
  const job = jobs.find(({ name }) => name === '2207')!;
  const { procedure } = procedures.find((one) => one.procedure.name === job.procedure.name)!;
  const options = { job, number: null, paper: 'a4', draft: false, diagnostics: [], hash: '' } as const;
  const sheet = buildSheet(procedure, options);
  writeFileSync(join(to, 'sheet.json'), JSON.stringify(sheet));
  const alone = middle(
    3,
    () =>
      void spawnSync(process.execPath, ['tests/bench-pdf.ts', join(to, 'sheet.json'), join(to, 'alone.pdf')], {
        cwd: root,
      }),
  );
  say(
    'sheet to PDF, cold, over Chromium printing the same sheet (aim 0.25)',
    alone / printed,
    `${ms(alone)} over ${ms(printed)}`,
  );
  const first = middle(1, () => void pdfOf([sheet]));
  const again = middle(9, () => void pdfOf([buildSheet(procedure, { ...options, hash: String(edits++) })]));
  say('the next sheet of the same process over the first', again / first, `${ms(again)} over ${ms(first)}`);
  const rss = () => process.memoryUsage().rss;
  const printSome = async (count: number) => {
    for (let index = 0; index < count; index++) {
      pdfOf([buildSheet(procedure, { ...options, hash: `${edits++}` })]);
      await new Promise(setImmediate);
    }
    return rss();
  };
  const ten = await printSome(10);
  const sixty = await printSome(50);
  say(
    'memory after 60 sheets over after 10',
    sixty / ten,
    `${(sixty / 1e6).toFixed(0)} MB over ${(ten / 1e6).toFixed(0)} MB`,
  );
  rmSync(to, { recursive: true, force: true });
}
