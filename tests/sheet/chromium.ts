/** The HTML sheet as a browser prints it, where the machine has one. */
import { existsSync } from 'node:fs';
import type { Browser, Page } from 'playwright-core';
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
  return inBrowser(renderHtml(sheet, { fonts: htmlFonts() }), printedPage);
}

export function printedPage(page: Page): Promise<Uint8Array> {
  return page.pdf({ preferCSSPageSize: true, printBackground: true, tagged: true });
}

/** Opens a page, hands it to `use`, and closes it again. */
export async function inBrowser<T>(html: string, use: (page: Page) => Promise<T>): Promise<T> {
  browser ??= startBrowser();
  const page = await (await browser).newPage();
  try {
    await page.setContent(html);
    await page.evaluate('document.fonts.ready');
    return await use(page);
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
