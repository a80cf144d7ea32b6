/** What only keys and mouse can show: driven in the page of the workbench, as somebody at the keyboard. */
import * as assert from 'node:assert/strict';
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { command, openFile, untilKept } from './browser.ts';
import { beginTests } from './keys/begin.ts';
import { commandTests } from './keys/commands.ts';
import { contrastTests } from './keys/contrast.ts';
import { type Bench, begin, type KeyboardTest, saved, type } from './keys/hands.ts';
import { reloadTests } from './keys/reload.ts';
import { serverTests } from './keys/server.ts';
import { settingTests } from './keys/settings.ts';
import { tourTests } from './keys/tour.ts';
import { viewTests } from './keys/views.ts';
import { wordTests } from './keys/words.ts';

/** Files that are typed into: they must be there before the editor opens, or it does not find them. */
const emptyFiles = ['typed.rebuild', 'tab.rebuild', 'family.rebuild'];

const keyboardTests: readonly KeyboardTest[] = [
  {
    name: 'a procedure typed by keys is what was typed: Enter ends the line, whatever the list offers',
    async run(page, workspace) {
      const procedure = readFileSync(join(workspace, 'procedure.rebuild'), 'utf8').trimEnd();
      const whole = procedure
        .replace('rebuild-holder-17', 'typed-holder-17')
        // Enough of it: each key takes its time.
        .replace(/ {2}stage (?:receive|build)[\s\S]*?\n {2}\}\n\n/gu, '')
        // Its brace at the margin would be indented.
        .replace(/at bench-two\n +(.*)\n\{/u, 'at bench-two $1 {');
      await begin(page, 'typed.rebuild');
      await type(page, whole);
      assert.equal(await saved(page, workspace, 'typed.rebuild'), whole);
    },
  },
  {
    name: 'Tab takes what the list offers',
    async run(page, workspace) {
      await begin(page, 'tab.rebuild');
      await page.keyboard.type('procedure tab "Tab" for hold');
      await page.locator('.suggest-widget.visible .monaco-list-row.focused').waitFor();
      await page.keyboard.press('Tab');
      assert.equal(await saved(page, workspace, 'tab.rebuild'), 'procedure tab "Tab" for holder-17');
    },
  },
  {
    name: 'from the sheet beside the text the keys lead on: shortcuts, and Tab out of it',
    async run(page) {
      await openFile(page, 'procedure.rebuild');
      await command(page, 'Handtight: Open Sheet to the Side');
      const pane = page.frameLocator('iframe.webview.ready').frameLocator('iframe#active-frame');
      const sheet = pane.frameLocator('iframe#sheet').locator('body');
      await sheet.locator('[data-source-line]').first().waitFor();
      await sheet.click({ position: { x: 200, y: 200 } });
      await page.keyboard.press('F1');
      await page.locator('.quick-input-widget').waitFor();
      await page.keyboard.press('Escape');
      await sheet.click({ position: { x: 200, y: 200 } });
      const isInPane = () => page.evaluate<boolean>("document.activeElement?.classList.contains('webview') === true");
      assert.ok(await isInPane());
      for (let key = 0; key < 5 && (await isInPane()); key++) await page.keyboard.press('Shift+Tab');
      assert.ok(!(await isInPane()), 'Shift+Tab comes out');
      await sheet.click({ position: { x: 200, y: 200 } });
      await page.keyboard.press('Control+1');
      await page.locator('.monaco-editor.focused').waitFor();
      // A family or a shop has no sheet: the last one stays, and says whose it is.
      await openFile(page, 'shop.rebuild');
      await pane.locator('#whose').filter({ hasText: 'Rebuild and set' }).waitFor();
      await sheet.locator('[data-source-line]').first().waitFor();
    },
  },
  {
    name: 'a click in the sheet shows the step in the text, Enter goes there, and Ctrl+F finds',
    async run(page) {
      await openFile(page, 'procedure.rebuild');
      await command(page, 'Handtight: Open Sheet to the Side');
      const pane = page.frameLocator('iframe.webview.ready').frameLocator('iframe#active-frame');
      const sheet = pane.frameLocator('iframe#sheet').locator('body');
      const step = sheet
        .locator('[data-source-line]')
        .filter({ hasText: /Torque/u })
        .last();
      await step.click();
      const source = await step.getAttribute('data-source-line');
      await sheet.locator(`[data-source-line="${source}"][aria-current="step"]`).waitFor();
      await page.keyboard.press('Control+f');
      await pane.locator('#sought').fill('no such words');
      await pane.locator('#found').filter({ hasText: 'No match' }).waitFor();
      await pane.locator('#sought').fill('torque');
      await pane.locator('#found').waitFor({ state: 'hidden' });
      await page.keyboard.press('Escape');
      await page.keyboard.press('Enter');
      await page.locator('.monaco-editor.focused').waitFor();
      await page
        .locator('.part.statusbar')
        .filter({ hasText: `Ln ${Number(source) + 1}, Col ` })
        .waitFor();
      await pane.locator('#form').selectOption('instruction');
      await sheet.locator('table.pages.instruction').waitFor();
      await pane.locator('#form').selectOption('card');
      await sheet.locator('table.pages.card').waitFor();
    },
  },
  {
    name: 'the state follows the cursor, and a line of it leads to the step',
    async run(page) {
      await page.keyboard.press('Control+1');
      await openFile(page, 'procedure.rebuild');
      await command(page, 'Handtight: Show the State at the Cursor');
      const view = page.locator('.part.sidebar');
      await page.keyboard.press('Control+1');
      await page.keyboard.press('Control+F');
      await page.keyboard.type('run-down nut');
      await page.keyboard.press('Escape');
      await view.locator('.monaco-list-row').filter({ hasText: 'now hand-tight' }).first().click();
      await page.locator('.monaco-editor.focused, .monaco-list.element-focused').first().waitFor();
    },
  },
  {
    name: 'a family is drawn while it is written, and its drawing is there after a reload',
    async run(page, workspace) {
      await page.keyboard.press('Control+1');
      await begin(page, 'family.rebuild');
      await command(page, 'Handtight: Open Drawing to the Side');
      await page.keyboard.press('Control+1');
      await type(page, 'family relief "Relief valve" {\npart body "Body"\npart ball "Ball" in body');
      const drawn = () =>
        page
          .frameLocator('iframe.webview.ready')
          .frameLocator('iframe#active-frame')
          .frameLocator('iframe#sheet')
          .locator('svg');
      await drawn().filter({ hasText: 'Ball' }).waitFor();
      await saved(page, workspace, 'family.rebuild');
      await untilKept(page, 'handtight.drawing', 'family.rebuild');
      await page.reload();
      await page.waitForSelector('.monaco-workbench .part.statusbar');
      await drawn().filter({ hasText: 'Ball' }).waitFor({ timeout: 60_000 });
    },
  },
];

const allTests: readonly KeyboardTest[] = [
  ...keyboardTests,
  ...viewTests,
  ...contrastTests,
  ...wordTests,
  ...tourTests,
  ...reloadTests,
  ...beginTests,
  ...commandTests,
  ...settingTests,
  ...serverTests,
];

/** Not passing yet on every machine: they are run by name only (ONLY), until each waits for what it looks at. */
const unsteady =
  /^(?:without a mouse: Open Sheet|each button of the tour|a reload in the middle|every command brings|the paper that is set)/u;

/** The longest that one look may wait, ms. */
const timeLimit = 30_000;

/** Runs them in one page; how many passed and failed. */
export async function runKeyboardTests(bench: Bench, workspace: string): Promise<{ passed: number; failed: number }> {
  for (const name of emptyFiles) writeFileSync(join(workspace, name), '');
  const page = await bench.open(workspace);
  page.setDefaultTimeout(timeLimit);
  const count = { passed: 0, failed: 0 };
  for (const test of allTests) {
    const isWanted = process.env.ONLY ? new RegExp(process.env.ONLY, 'u').test(test.name) : !unsteady.test(test.name);
    if (!isWanted) continue;
    const begun = Date.now();
    try {
      await test.run(page, workspace, bench);
      count.passed++;
      console.log(`ok   ${test.name} (${Date.now() - begun} ms)`);
    } catch (error) {
      count.failed++;
      console.error(`FAIL ${test.name}\n${error instanceof Error ? error.stack : String(error)}`);
      if (process.env.PICTURE) await page.screenshot({ path: process.env.PICTURE });
    }
  }
  return count;
}
