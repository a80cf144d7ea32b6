/** The HTML sheet as a browser prints it, where the machine has one. */
import { existsSync } from 'node:fs';
import type { Browser } from 'playwright-core';
import type { Sheet } from '../../language/documents/model.ts';
import { renderHtml } from '../../language/documents/renderers/html.ts';
import { htmlFonts } from '../../server/host/print/fonts.ts';
import { startBrowser } from '../workbench/browser.ts';

const path = process.env.CHROMIUM ?? '/usr/bin/chromium';

/** Why the HTML is not printed here; null: it is. */
export const noBrowser = existsSync(path) ? null : `${path} is not there; CHROMIUM names another`;
if (noBrowser !== null) console.warn(`The HTML sheet is not printed: ${noBrowser}.`);

let browser: Promise<Browser> | null = null;

/** The sheet's HTML as PDF, printed as a person would from the browser's menu. */
export async function printedByBrowser(sheet: Sheet): Promise<Uint8Array> {
  browser ??= startBrowser();
  const page = await (await browser).newPage();
  try {
    await page.setContent(renderHtml(sheet, { fonts: htmlFonts() }));
    await page.evaluate('document.fonts.ready');
    return await page.pdf({ preferCSSPageSize: true, printBackground: true, tagged: true });
  } finally {
    await page.close();
  }
}

/** Ends the browser, if one was started. */
export async function closeBrowser(): Promise<void> {
  const started = browser;
  browser = null;
  await (await started)?.close();
}
