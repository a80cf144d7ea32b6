import { spawnSync } from 'node:child_process';
import { join } from 'node:path';

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

/** Prints a page to PDF with a profile of its own; ms. */
export function chromiumToPdf(browser: string, html: string, folder: string): number {
  const begin = performance.now();
  const profile = `--user-data-dir=${join(folder, 'profile')}`;
  const { status, stderr } = spawnSync(
    browser,
    [...flags, profile, `--print-to-pdf=${join(folder, 'browser.pdf')}`, `file://${html}`],
    { encoding: 'utf8', timeout: 120_000 },
  );
  if (status !== 0) throw new Error(`Chromium ended with ${status}: ${stderr.trim().split('\n').at(-1)}`);
  return performance.now() - begin;
}
