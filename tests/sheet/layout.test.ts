/**
 * Nothing leaves the page or its box, nothing is too small to be read, and each box has room for a hand; of the PDF, and
 * of the HTML as a browser prints it.
 */
import { afterAll, describe, expect, it } from 'vitest';
import type { Sheet } from '../../language/documents/model.ts';
import { buildSheet } from '../../language/documents/traveler/index.ts';
import { languages } from '../../language/i18n/index.ts';
import { pdfOf } from '../../server/host/print/pdf.ts';
import { closeBrowser, noBrowser, printedByBrowser } from './chromium.ts';
import { faultsOf, millimetre } from './layout.ts';
import { type Painted, paintedPages } from './paint.ts';
import { libraryPrints, papers } from './prints.ts';
import { promisedBoxes, smallnessOf, strandedHeads } from './sizes.ts';
import { noFont, planStresses, stressed, stresses } from './stress.ts';

afterAll(closeBrowser);

const library = papers.flatMap((paper) => libraryPrints(paper));
const jobNamed = (name: string) => library.findLast(({ options }) => options.job?.name === name)!;
/** Six units with every kind of box, on the smaller paper. */
const job = jobNamed('2207');
/** One unit that is read at places, with repairs to sign for and no first aid. */
const turbocharger = jobNamed('3101');
/** The worst for a browser: each takes it seconds. */
const forBrowser = ['words of 300 letters in every place', '12 units of 12 long numbers'];
/** Where fixed words are beside long ones, and in the narrowest columns. */
const forLanguages = ['words of 300 letters in every place', '12 units of 12 long numbers'];
/** A page that is wrong is so in many places. */
const first = (faults: readonly string[]) => faults.slice(0, 5);
const pdfPages = (sheet: Sheet) => paintedPages(pdfOf([sheet]).bytes);
let jobPrinted: Promise<Painted[]> | null = null;
/** The job's pages, printed once: each test that spoils them changes a copy. */
const jobPages = () => {
  jobPrinted ??= pdfPages(job.sheet);
  return jobPrinted;
};

describe('the PDF', () => {
  it.each(library)('stays in its boxes, and can be read: $name', async ({ sheet }) => {
    const pages = await pdfPages(sheet);
    expect(first(faultsOf(pages))).toEqual([]);
    expect(first(smallnessOf(sheet, pages))).toEqual([]);
    expect(strandedHeads(sheet, pages)).toEqual([]);
  });
  it.each([
    ...stresses.map((stress) => ({ ...stress, print: job, of: 'job 2207' })),
    ...[...stresses, ...planStresses].map((stress) => ({ ...stress, print: turbocharger, of: 'job 3101' })),
  ])('under stress: $of, $name', async ({ print, ...stress }) => {
    const { sheet } = stressed(print, stress);
    const pages = await pdfPages(sheet);
    expect(first(faultsOf(pages))).toEqual([]);
    // Letters that no font has are drawn as empty boxes, those from right to left in the order of the eye.
    if (stress.name !== noFont) expect(first(smallnessOf(sheet, pages))).toEqual([]);
  });
  // Their signal words, labels and heads are longer.
  it.each(languages.filter((language) => language !== 'en'))('with the fixed words of %s', async (language) => {
    const print = { ...job, options: { ...job.options, language } };
    for (const stress of [null, ...stresses.filter(({ name }) => forLanguages.includes(name))]) {
      const sheet = stress === null ? buildSheet(print.procedure, print.options) : stressed(print, stress).sheet;
      const pages = await pdfPages(sheet);
      expect(first(faultsOf(pages)), stress?.name).toEqual([]);
      expect(first(smallnessOf(sheet, pages)), stress?.name).toEqual([]);
    }
  });
});

describe.skipIf(noBrowser !== null)('the HTML, printed by a browser', () => {
  it.each(library.filter(({ options }) => options.job !== null))(
    'stays in its boxes, and can be read: $name',
    async ({ sheet }) => {
      const pages = await paintedPages(await printedByBrowser(sheet));
      expect(first(faultsOf(pages))).toEqual([]);
      expect(first(smallnessOf(sheet, pages))).toEqual([]);
      expect(pages.length).toBeLessThanOrEqual((await pdfPages(sheet)).length);
    },
  );
  // Letters that the sheet's fonts lack are not among them: a browser takes those from the machine.
  it.each([
    ...stresses
      .filter(({ name }) => forBrowser.includes(name))
      .flatMap((stress) => [job, turbocharger].map((print) => ({ ...stress, print, of: print.options.job!.name }))),
    ...planStresses.map((stress) => ({ ...stress, print: turbocharger, of: '3101' })),
  ])('under stress: job $of, $name', async ({ print, ...stress }) => {
    const pages = await paintedPages(await printedByBrowser(stressed(print, stress).sheet));
    expect(first(faultsOf(pages))).toEqual([]);
  });
});

describe('a page that is wrong', () => {
  const drawn = ({ runs }: Painted) => runs.some(({ figure }) => figure !== null);
  const clean = (change: (page: Painted) => Painted, drawings: boolean) => async () => {
    const pages = await jobPages();
    const spoilt = pages.find((page) => page.runs.length > 40 && drawn(page) === drawings)!;
    return pages.map((page) => (page === spoilt ? change(page) : page));
  };

  it('has ink beyond its margin', async () => {
    const pages = await clean(
      (page) => ({
        ...page,
        runs: page.runs.map((run, at) => (at === 30 ? { ...run, right: page.width - 5 } : run)),
      }),
      false,
    )();
    expect(faultsOf(pages).join()).toContain("page's margin");
  });
  it('has text on text', async () => {
    const pages = await clean(
      (page) => ({
        ...page,
        runs: page.runs.flatMap((run, at) => (at === 30 ? [run, { ...run, left: run.left + 2 }] : [run])),
      }),
      false,
    )();
    expect(faultsOf(pages).join()).toContain('overlap');
  });
  it('has words drawn up to the ones before them by more than a pair of letters is', async () => {
    const follows = (by: number, down: number) =>
      clean((page) => {
        const run = { ...page.runs[30]!, size: 10, text: 'actuator' };
        const next = {
          ...run,
          text: ', 1',
          left: run.right - by,
          right: run.right + 20,
          baseline: run.baseline + down,
        };
        return { ...page, lines: [], fields: [], runs: [run, next] };
      }, false)();
    const faults = async (by: number, down: number) => faultsOf(await follows(by, down)).join();
    expect(await faults(0.7, 0)).toBe('');
    expect(await faults(1.2, 0)).toContain('overlap');
    expect(await faults(0.7, 2)).toContain('overlap');
  });
  it('has text that runs out of its cell', async () => {
    const pages = await clean((page) => {
      const wall = page.lines.find(({ left, right }) => right - left < 1)!;
      const run = {
        ...page.runs[0]!,
        text: 'too long',
        left: wall.left - 40,
        right: wall.left + 20,
        baseline: wall.top + 15,
        size: 9,
      };
      return { ...page, runs: [...page.runs, run] };
    }, false)();
    expect(faultsOf(pages).join()).toMatch(/line at .* goes through “too long”/u);
  });
  it('has a drawing that lies on a word, or leaves the page, or is small', async () => {
    const moved = (by: { readonly x?: number; readonly y?: number }) =>
      clean(
        (page) => ({
          ...page,
          fields: page.fields.map((field) =>
            field.figure === null
              ? field
              : { ...field, bottom: field.bottom + (by.y ?? 0), right: field.right + (by.x ?? 0) },
          ),
        }),
        true,
      )();
    expect(faultsOf(await moved({})).join()).toBe('');
    expect(faultsOf(await moved({ y: 800 })).join()).toContain('a figure at');
    expect(faultsOf(await moved({ x: 200 })).join()).toContain("is outside the page's margin");
    const covered = await clean((page) => {
      const { top, bottom } = page.fields.findLast(({ figure }) => figure !== null)!;
      const baseline = (top + bottom) / 2;
      return {
        ...page,
        runs: page.runs.map((run) => (run.figure === null && !run.artifact ? { ...run, baseline } : run)),
      };
    }, true)();
    expect(faultsOf(covered).join()).toMatch(/a figure at [^“]* is on “/u);
    const small = await clean(
      (page) => ({ ...page, runs: page.runs.map((run) => (run.figure === null ? run : { ...run, size: 9 })) }),
      true,
    )();
    expect(smallnessOf(job.sheet, small).join()).toContain('has 9.0 pt in a drawing');
  });
  it('has a value that is not bold, small text, a hairline, a color, and a low box', async () => {
    const pages = await jobPages();
    const value = job.sheet.blocks.flatMap((block) => (block.kind === 'step' ? block.limits : []))[0]!.value;
    const spoiled = (change: (page: Painted) => Partial<Painted>) =>
      smallnessOf(
        job.sheet,
        pages.map((page) => ({ ...page, ...change(page) })),
      ).join('\n');
    const runs = (change: (run: Painted['runs'][number]) => object) => (page: Painted) => ({
      runs: page.runs.map((run) => ({ ...run, ...change(run) })),
    });
    expect(spoiled(() => ({}))).toBe('');
    expect(spoiled(runs(() => ({ bold: false })))).toContain(`the value “${value}” is too small, or not bold`);
    expect(spoiled(runs(({ size }) => (size === 15 ? { size: 14 } : {})))).toContain('is too small, or not bold');
    expect(spoiled(runs(({ size }) => (size === 10.5 ? { size: 9 } : {})))).toContain('the sentence');
    expect(spoiled(runs(({ size }) => (size <= 9 ? { size: 7.5 } : {})))).toContain('has 7.5 pt');
    expect(spoiled(({ lines }) => ({ lines: lines.map((line) => ({ ...line, width: 0.3 })) }))).toContain(
      'a line of 0.30 pt',
    );
    expect(spoiled(() => ({ colours: new Set(['#0000ff']) }))).toContain('the color #0000ff');
    // The lowest line of a row of boxes, two millimeters higher.
    const low = spoiled(({ lines }) => ({
      lines: lines.map((line) =>
        line.right - line.left > 100
          ? { ...line, top: line.top - (line.top % 4) * millimetre, bottom: line.bottom - (line.top % 4) * millimetre }
          : line,
      ),
    }));
    expect(low).toMatch(new RegExp(`of ${promisedBoxes(job.sheet).boxes} to be written in`, 'u'));
  });
});
