/**
 * Takes the pictures of the README: `node tests/workbench/pictures.ts`. The editor's come from the real workbench with
 * the one-spring procedure of the library, the sheets' from the demo jobs as printed (`sheet` takes these only).
 * They go to extension/pictures/ (or PICTURES), with the extension's icon drawn from its SVG. THEME names a color theme.
 */
import { execFileSync } from 'node:child_process';
import { cpSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { command, openFile, openWorkbench, startBrowser } from './browser.ts';
import { root, startHost, undisturbed } from './host.ts';

const folder = process.env.PICTURES ?? join(root, 'extension/pictures');

/** What the pictures of the editor are of, with the files that it needs. */
const file = 'procedure.rebuild';
const library = [
  'shop.rebuild',
  'shared/sequences.rebuild',
  'one-spring/family.rebuild',
  'one-spring/procedure.rebuild',
];
const source = readFileSync(join(root, 'procedures/one-spring', file), 'utf8');

/** Pages of the demo jobs that are shown, by what is on them. */
const pages = [
  { name: 'sheet-first', document: 'job-2207', words: 'Routing' },
  { name: 'sheet-unit', document: 'job-2207', words: 'Exploded view' },
  { name: 'sheet-prove', document: 'job-2207', words: 'Test opening pressure' },
  { name: 'sheet-log', document: 'job-2207', words: 'Log, stage 9' },
  { name: 'certificate', document: 'certificate-2198', words: 'Certificate of rebuild' },
];

/** A label of each kind. */
const labels = [
  { name: 'label-tag', job: '2207', words: ['--kind', 'tag', '--unit', '5'], document: 'label-tag-2207-unit-5' },
  { name: 'label-box', job: '2207', words: ['--kind', 'box'], document: 'label-box-2207' },
  {
    name: 'label-certificate',
    job: '2198',
    words: ['--kind', 'certificate', '--unit', '1'],
    document: 'label-certificate-2198-unit-1',
  },
];

/** Nothing in the window that is not about the work. */
const settings = {
  'workbench.colorTheme': process.env.THEME ?? 'Default Light Modern',
  ...undisturbed,
  'workbench.layoutControl.enabled': false,
  'workbench.activityBar.location': 'hidden',
  'window.commandCenter': false,
  'window.menuBarVisibility': 'hidden',
  'editor.minimap.enabled': false,
  'editor.fontSize': 14,
  'editor.cursorBlinking': 'solid',
  'editor.renderWhitespace': 'none',
  'breadcrumbs.enabled': false,
  'files.autoSave': 'off',
  'problems.defaultViewMode': 'tree',
};

async function main(): Promise<void> {
  sheetPictures();
  if (process.argv.includes('sheet')) return;
  const made = mkdtempSync(join(tmpdir(), 'handtight-pictures-'));
  const workspace = join(made, 'rebuilds');
  for (const name of library) cpSync(join(root, 'procedures', name), join(workspace, name));
  const host = await startHost(settings, ['--disable-workspace-trust']);
  const browser = await startBrowser();
  try {
    await drawIcon(browser);
    const page = await openWorkbench(browser, host, { workspace, extension: root }, 2);
    await openFile(page, file);
    await command(page, 'View: Close Primary Side Bar');
    await problemsPicture(page);
    await completionPicture(page);
    await hoverPicture(page);
    await previewPicture(page);
    await statePicture(page);
    await drawingPicture(page);
  } finally {
    await browser.close();
    await host.stop();
    rmSync(made, { recursive: true, force: true });
  }
}

/** The icon of the extension, 256 × 256: the marketplace takes no SVG. */
async function drawIcon(browser: Browser): Promise<void> {
  const page = await browser.newPage({ viewport: { width: 256, height: 256 } });
  const svg = readFileSync(join(root, 'extension/icons/extension.svg'), 'utf8');
  await page.setContent(`<body style="margin:0;background:transparent">${svg}</body>`);
  await page.screenshot({ path: join(root, 'extension/icons/extension.png'), omitBackground: true });
  await page.close();
}

/** Puts the cursor after a text of the picture's file, at its first place after another text. */
async function goTo(page: Page, text: string, behind = ''): Promise<void> {
  const at = source.indexOf(text, source.indexOf(behind)) + text.length;
  const before = source.slice(0, at).split('\n');
  await page.locator('.monaco-editor').first().click();
  await page.keyboard.press('Control+G');
  await page.locator('.quick-input-widget input').fill(`:${before.length}:${before.at(-1)!.length + 1}`);
  await page.keyboard.press('Enter');
  await page.locator('.quick-input-widget').waitFor({ state: 'hidden' });
}

/** Pages of the travelers and the certificate, as the commands print them. Poppler makes pictures of them. */
function sheetPictures(): void {
  const to = mkdtempSync(join(tmpdir(), 'handtight-sheet-'));
  const handtight = (...words: string[]) =>
    execFileSync(process.execPath, ['out/handtight.mjs', ...words, '--workspace', 'procedures', '--to', to], {
      cwd: root,
      stdio: 'inherit',
    });
  try {
    handtight('print', '2207');
    handtight('certificate', '2198');
    for (const { name, document, words } of pages) {
      const file = join(to, `${document}.pdf`);
      const texts = execFileSync('pdftotext', ['-layout', file, '-'], { encoding: 'utf8' }).split('\f');
      const at = texts.findIndex((text) => text.replace(/\s+/gu, ' ').includes(words));
      if (at < 0) throw new Error(`No page of ${document} says “${words}”.`);
      const which = ['-f', String(at + 1), '-l', String(at + 1), '-singlefile', '-r', '100', '-gray', '-png'];
      execFileSync('pdftoppm', [...which, file, join(folder, name)]);
    }
    for (const { name, job, words, document } of labels) {
      handtight('label', job, ...words);
      const how = ['-singlefile', '-r', '120', '-gray', '-png'];
      execFileSync('pdftoppm', [...how, join(to, `${document}.pdf`), join(folder, name)]);
    }
  } finally {
    rmSync(to, { recursive: true, force: true });
  }
}

/** A pressure that is not let down, a joint left hand-tight, a spec misspelled, a bore left open at the wheel. */
async function problemsPicture(page: Page): Promise<void> {
  // From the end to the beginning: lines above stay where they are in the source.
  await goTo(page, 'relieve', 'stage prove');
  await deleteLine(page);
  await goTo(page, 'torque nut to nut-fit', 'stage build');
  await deleteLine(page);
  await goTo(page, 'within spring-length', 'stage inspect');
  await page.keyboard.press('Backspace');
  await page.keyboard.press('Escape');
  await goTo(page, 'cap bore', 'stage teardown');
  await deleteLine(page);
  await goTo(page, 'test back-leak', 'stage prove');
  await command(page, 'Problems: Focus on Problems View');
  await page.locator('.markers-panel .monaco-list-row').nth(2).waitFor();
  await page.waitForTimeout(800);
  await page.screenshot({ path: join(folder, 'problems.png') });
  await command(page, 'View: Hide Panel');
  await revert(page);
}

async function completionPicture(page: Page): Promise<void> {
  await goTo(page, 'fit shim, spring, seat', 'stage build');
  await page.keyboard.press('Enter');
  await page.keyboard.type('fit ');
  await page.locator('.suggest-widget.visible .monaco-list-row').first().waitFor();
  await page.waitForTimeout(500);
  await page.screenshot({ path: join(folder, 'completion.png') });
  await page.keyboard.press('Escape');
  await revert(page);
}

async function previewPicture(page: Page): Promise<void> {
  await goTo(page, 'test opening', 'stage prove');
  await page.keyboard.press('Home');
  await command(page, 'Handtight: Open Sheet to the Side');
  await page.locator('iframe.webview.ready').waitFor();
  await page.waitForTimeout(2500);
  await page.screenshot({ path: join(folder, 'preview.png') });
}

/** The unit after a step, in the view of the side bar. */
async function statePicture(page: Page): Promise<void> {
  await command(page, 'View: Close All Editors');
  await openFile(page, file);
  await goTo(page, 'run-down nut', 'stage build');
  await command(page, 'Handtight: Show the State at the Cursor');
  await page.waitForTimeout(1500);
  await page.screenshot({ path: join(folder, 'state.png') });
  await command(page, 'View: Close Primary Side Bar');
}

/** A family that is being written, and its drawing beside it. */
async function drawingPicture(page: Page): Promise<void> {
  await openFile(page, 'family.rebuild');
  await command(page, 'Handtight: Open Drawing to the Side');
  await page.locator('iframe.webview.ready').waitFor();
  await page.waitForTimeout(2500);
  await page.screenshot({ path: join(folder, 'drawing.png') });
}

/** The family taken apart, where its name is at the head of the procedure. */
async function hoverPicture(page: Page): Promise<void> {
  await goTo(page, ' for one', 'procedure rebuild-one-spring');
  await command(page, 'Show or Focus Hover');
  await page.locator('.monaco-hover img').first().waitFor();
  await page.waitForTimeout(800);
  await page.screenshot({ path: join(folder, 'hover.png') });
  await page.keyboard.press('Escape');
}

async function deleteLine(page: Page): Promise<void> {
  await page.keyboard.press('Control+Shift+K');
}

async function revert(page: Page): Promise<void> {
  await page.locator('.monaco-editor').first().click();
  await command(page, 'File: Revert File');
  await page.waitForTimeout(300);
}

await main();
