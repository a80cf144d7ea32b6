import { existsSync, readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { Workspace } from '../../../language/db/workspace.ts';
import { buildSheet } from '../../../language/documents/traveler/index.ts';
import { pdfOf } from '../../../server/host/print/pdf.ts';
import { libraryFiles, root } from '../../library.ts';
import type { Bench } from '../bench.ts';
import { sideBySide } from '../measure/side-by-side.ts';
import { spreadOf } from '../measure/spread.ts';
import { chromiumToPdf } from '../programs/chromium.ts';
import { node, ourCommand } from '../programs/command.ts';

const jobName = '2207';

const print: Bench = {
  title: 'a sheet to PDF against Chromium printing the same HTML (CHROMIUM names it), and the memory of many sheets',
  inProcess: true,
  async *run(setting) {
    const { folders, checkouts, quick } = setting;
    const checkout = checkouts[0]!;
    const to = folders.empty();
    const cache = folders.empty();
    const printTo = (format: string) =>
      ourCommand(setting, checkout, join(root, 'procedures'), cache, 'print', jobName, '--format', format, '--to', to);
    await printTo('html');
    const html = join(to, readdirSync(to).find((name) => name.endsWith('.html'))!);

    const { jobs, procedures } = new Workspace().check(libraryFiles());
    const job = jobs.find(({ name }) => name === jobName)!;
    const { procedure } = procedures.find((one) => one.procedure.name === job.procedure.name)!;
    const sheetOf = (hash: string) =>
      buildSheet(procedure, { job, number: null, paper: 'a4', draft: false, diagnostics: [], hash });
    const sheet = join(to, 'sheet.json');
    writeFileSync(sheet, JSON.stringify(sheetOf('')));
    const program = join(root, 'tests/bench/programs/sheet-to-pdf.ts');

    const browser = process.env.CHROMIUM ?? '/usr/bin/chromium';
    const row = { kind: 'comparison', unit: 'ms' } as const;
    if (!existsSync(browser)) yield { kind: 'skipped', work: 'PDF against Chromium', why: `${browser} is not there` };
    else {
      const chromium = { name: 'Chromium', measure: () => chromiumToPdf(browser, html, folders.empty()) };
      const ours = (name: string, run: () => ReturnType<typeof node>) => ({
        name,
        measure: async () => (await run()).wall,
      });
      const rounds = { most: quick ? 3 : 7, seconds: 90, warm: 1 };
      yield {
        ...row,
        work: 'check and print of the demo job to PDF',
        measured: await sideBySide([ours('Handtight', () => printTo('pdf')), chromium], rounds),
        limits: [],
      };
      yield {
        ...row,
        work: 'a sheet that is made already, to PDF',
        measured: await sideBySide(
          [ours('Handtight', () => node([program, sheet, join(to, 'sheet.pdf')], to)), chromium],
          rounds,
        ),
        limits: [{ of: 'median', times: 0.25, than: 'Chromium' }],
      };
    }

    const points: { size: number; value: number }[] = [];
    const times: number[] = [];
    for (let count = 1; count <= (quick ? 30 : 60); count++) {
      const begin = performance.now();
      pdfOf([sheetOf(String(count))]);
      times.push(performance.now() - begin);
      await new Promise(setImmediate);
      if (count % 10 === 0) points.push({ size: count, value: process.memoryUsage().rss / 1e6 });
    }
    const [first, ...next] = times;
    yield {
      ...row,
      work: 'the next sheet of a process',
      measured: [
        { name: 'Handtight', spread: spreadOf(next) },
        { name: 'the first', spread: spreadOf([first!]) },
      ],
      limits: [],
    };
    yield { kind: 'growth', unit: 'MB', work: 'memory of printing', of: 'sheets', points, most: 0.15 };
  },
};
export default print;
