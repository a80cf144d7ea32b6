/** What only keys and mouse can show: driven in the page of the workbench, as somebody at the keyboard. */
import * as assert from 'node:assert/strict';
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { command, openFile } from './browser.ts';

export interface KeyboardTest {
  readonly name: string;
  run(page: Page, workspace: string): Promise<void>;
}

/** Files that are typed into: they must be there before the editor opens, or it does not find them. */
const emptyFiles = ['typed.rebuild', 'tab.rebuild', 'family.rebuild'];

/** An empty file, open in the editor. */
async function begin(page: Page, name: string): Promise<void> {
  await openFile(page, name);
  await page.locator('.monaco-editor .view-lines').first().click();
  await page.locator('.monaco-editor.focused').waitFor();
}

/** The pause before Enter, ms: long enough for the list of suggestions to be there. */
const pause = 250;

/**
 * Types lines as an author does: the editor indents by itself, and has closed the brace already, so that a line that
 * closes a block is gone down to.
 */
async function type(page: Page, text: string): Promise<void> {
  for (const [index, line] of text.split('\n').entries()) {
    const keys = line.trimStart();
    if (keys === '}') {
      // An open list would take the arrow.
      await page.keyboard.press('Escape');
      await page.keyboard.press('ArrowDown');
      await page.keyboard.press('End');
      continue;
    }
    if (index > 0) await page.keyboard.press('Enter');
    await page.keyboard.type(keys);
    await page.waitForTimeout(pause);
  }
}

/** What the file holds after it was saved. */
async function saved(page: Page, workspace: string, name: string): Promise<string> {
  await page.keyboard.press('Escape');
  await page.keyboard.press('Control+S');
  await page.locator(`.tab.active:not(.dirty)[data-resource-name="${name}"]`).waitFor();
  return readFileSync(join(workspace, name), 'utf8');
}

export const keyboardTests: readonly KeyboardTest[] = [
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
      await page.reload();
      await page.waitForSelector('.monaco-workbench .part.statusbar');
      await drawn().filter({ hasText: 'Ball' }).waitFor({ timeout: 60_000 });
    },
  },
];

/** Runs them in one page; how many passed and failed. */
export async function runKeyboardTests(
  open: () => Promise<Page>,
  workspace: string,
): Promise<{ passed: number; failed: number }> {
  for (const name of emptyFiles) writeFileSync(join(workspace, name), '');
  const page = await open();
  const count = { passed: 0, failed: 0 };
  for (const test of keyboardTests) {
    if (process.env.ONLY && !new RegExp(process.env.ONLY, 'u').test(test.name)) continue;
    const begun = Date.now();
    try {
      await test.run(page, workspace);
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
