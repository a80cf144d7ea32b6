import { existsSync, readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { Workspace } from '../../../language/db/workspace.ts';
import type { Sheet } from '../../../language/documents/model.ts';
import { buildSheet } from '../../../language/documents/traveler/index.ts';
import { pdfOf } from '../../../server/host/print/pdf.ts';
import { libraryFiles, root } from '../../library.ts';
import type { Bench } from '../bench.ts';
import { processorTime, sideBySide } from '../measure/side-by-side.ts';
import { spreadOf } from '../measure/spread.ts';
import { chromiumToPdf } from '../programs/chromium.ts';
import { node, ourCommand } from '../programs/command.ts';

const jobName = '2207';
const jobFile = 'job-2207.rebuild';

const card: Bench = {
  title:
    'a card to PDF, cold beside Chromium printing the same HTML (CHROMIUM names it), and warm; the memory of many cards',
  inProcess: true,
  async *run(setting) {
    const { folders, checkouts, quick } = setting;
    const checkout = checkouts[0]!;
    const to = folders.empty();
    // Each print of the command has a cache folder of its own: nothing is known of the run before.
    const printTo = (format: string) =>
      ourCommand(setting, checkout, join(root, 'procedures'), folders.empty(), ...printArguments(format, to));
    await printTo('html');
    const html = join(to, readdirSync(to).find((name) => name.endsWith('.html'))!);

    const workspace = new Workspace();
    const files = libraryFiles();
    /** The job as it is printed, with a reading at its first unit. */
    const sheetWith = (reading: number): Sheet => {
      const { jobs, procedures } = workspace.check(
        files.map((file) =>
          file.uri.endsWith(jobFile)
            ? { ...file, text: file.text.replace(/opening 214 bar/u, `opening ${reading} bar`) }
            : file,
        ),
      );
      const job = jobs.find(({ name }) => name === jobName)!;
      const { procedure } = procedures.find((one) => one.procedure.name === job.procedure.name)!;
      return buildSheet(procedure, {
        job,
        number: null,
        paper: 'a4',
        draft: false,
        diagnostics: [],
        hash: String(reading).repeat(20),
      });
    };
    const sheet = join(to, 'sheet.json');
    writeFileSync(sheet, JSON.stringify(sheetWith(214)));
    const program = join(root, 'tests/bench/programs/sheet-to-pdf.ts');

    const browser = process.env.CHROMIUM ?? '/usr/bin/chromium';
    const row = { kind: 'comparison', unit: 'ms' } as const;
    if (!existsSync(browser))
      yield { kind: 'skipped', work: 'a card against Chromium', why: `${browser} is not there` };
    else {
      const chromium = { name: 'Chromium', measure: () => chromiumToPdf(browser, html, folders.empty()) };
      const ours = (name: string, run: () => ReturnType<typeof node>) => ({
        name,
        measure: async () => (await run()).wall,
      });
      const rounds = { most: quick ? 3 : 7, seconds: 90, warm: 1 };
      yield {
        ...row,
        work: 'a card from text to PDF, cold',
        measured: await sideBySide([ours('Handtight', () => printTo('pdf')), chromium], rounds),
        limits: [{ of: 'median', times: 0.2, than: 'Chromium' }],
      };
      yield {
        ...row,
        work: 'a card that is made already, to PDF, cold',
        measured: await sideBySide(
          [ours('Handtight', () => node([program, sheet, join(to, 'sheet.pdf')], to)), chromium],
          rounds,
        ),
        limits: [{ of: 'median', times: 0.2, than: 'Chromium' }],
      };
    }

    // In one process; processor time of all its threads, as the typesetter uses several.
    const [first, ...next] = Array.from({ length: quick ? 8 : 20 }, (_, at) => printed(() => sheetWith(200 + at)));
    const spreads = (of: 'made' | 'typeset') => spreadOf(next.map((one) => one[of]));
    yield {
      ...row,
      work: 'a card after one reading was changed, from text to PDF: processor time',
      measured: [
        { name: 'Handtight', spread: spreadOf(next.map(({ made, typeset }) => made + typeset)) },
        { name: 'check and sheet', spread: spreads('made') },
        { name: 'PDF', spread: spreads('typeset') },
        { name: 'the first, to PDF', spread: spreadOf([first!.typeset]) },
      ],
      limits: [{ of: 'median', most: 40 }],
    };

    const points: { size: number; value: number }[] = [];
    for (let count = 1; count <= (quick ? 100 : 500); count++) {
      pdfOf([sheetWith(100 + count)]);
      await new Promise(setImmediate);
      if (count % (quick ? 20 : 100) === 0) points.push({ size: count, value: process.memoryUsage().rss / 1e6 });
    }
    yield { kind: 'growth', unit: 'MB', work: 'memory of printing, each card another', of: 'cards', points, most: 0.1 };
  },
};
export default card;

function printArguments(format: string, to: string): string[] {
  return ['print', jobName, '--format', format, '--to', to];
}

/** Processor time, apart for the sheet and for setting it. */
function printed(make: () => Sheet): { readonly made: number; readonly typeset: number } {
  let sheet: Sheet | null = null;
  const made = processorTime(() => {
    sheet = make();
  });
  return { made, typeset: processorTime(() => pdfOf([sheet!])) };
}
