/** The HTML sheet on a phone, a tablet and a screen. */
import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { afterAll, describe, expect, it } from 'vitest';
import { checkFiles } from '../../language/db/workspace.ts';
import type { Sheet } from '../../language/documents/model.ts';
import { renderHtml } from '../../language/documents/renderers/html.ts';
import { buildSheet } from '../../language/documents/traveler/index.ts';
import { htmlFonts } from '../../server/host/print/fonts.ts';
import { pdfOf } from '../../server/host/print/pdf.ts';
import { corpusFiles } from '../corpus/files.ts';
import { closeBrowser, inBrowser, noBrowser, printedPage } from './chromium.ts';
import { withPdf } from './pdf.ts';
import { libraryPrints, printOf } from './prints.ts';

afterAll(closeBrowser);

const widths = [360, 420, 768, 1024];
const faultsOnScreen = readFileSync(new URL('screen-faults.js', import.meta.url), 'utf8');
const library = libraryPrints('a4');
const job = library.find(({ options }) => options.job?.name === '2207')!;
const corpus = checkFiles(corpusFiles());
const ofCorpus = (name: string) => {
  const { procedure } = corpus.procedures.find((one) => one.procedure.source.file === `${name}.rebuild`)!;
  return printOf(corpus, procedure).sheet;
};
const sheets: readonly (readonly [string, Sheet])[] = [
  ['a set of injectors', job.sheet],
  ['the same in Spanish', buildSheet(job.procedure, { ...job.options, language: 'es' })],
  ['the same in German', buildSheet(job.procedure, { ...job.options, language: 'de' })],
  ['a pump with a table of points', ofCorpus('pump-phased-and-calibrated-by-a-table')],
  ['a turbocharger', ofCorpus('turbocharger-balanced-at-two-planes')],
];
const open = <T>(sheet: Sheet, use: (page: Page) => Promise<T>) =>
  inBrowser(renderHtml(sheet, { fonts: htmlFonts() }), use);
const pagesOf = async (page: Page) => withPdf(await printedPage(page), async ({ numPages }) => numPages);

describe.skipIf(noBrowser !== null)('on a screen', () => {
  it.each(sheets)('can be read and tapped at every width: %s', async (_, sheet) => {
    await open(sheet, async (page) => {
      for (const width of widths) {
        await page.setViewportSize({ width, height: 800 });
        const faults = await page.evaluate<string[]>(faultsOnScreen);
        expect([...new Set(faults)].slice(0, 8), `${width} wide`).toEqual([]);
      }
      expect(await pagesOf(page)).toBeLessThanOrEqual(pdfOf([sheet]).pages);
    });
  });

  it('folds stages by keyboard, and prints them open', async () => {
    await open(job.sheet, async (page) => {
      const pages = await pagesOf(page);
      const folds = page.locator('details');
      const count = await folds.count();
      expect(count).toBeGreaterThan(5);
      for (let at = 0; at < count; at++) {
        const fold = folds.nth(at);
        const steps = fold.locator('.step').first();
        await fold.locator('summary').focus();
        await page.keyboard.press('Enter');
        expect(await steps.isVisible()).toBe(false);
        if (at > 0) continue;
        await page.keyboard.press('Space');
        expect(await steps.isVisible()).toBe(true);
        await page.keyboard.press('Enter');
      }
      expect(await page.locator('details[open]').count()).toBe(0);
      expect(await pagesOf(page)).toBe(pages);
    });
  });
});
