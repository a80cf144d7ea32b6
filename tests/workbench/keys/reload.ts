/** The window is loaded again in the middle of a word. */
import * as assert from 'node:assert/strict';
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { command, openFile, seekCommand } from '../browser.ts';
import { closeAll, goBehind, type KeyboardTest, viewIn } from './hands.ts';

/** The longest that a window takes to be there again, ms. */
const starting = 60_000;

export const reloadTests: readonly KeyboardTest[] = [
  {
    name: 'a reload in the middle of a word keeps the word and the sheet, and blames nothing else',
    async run(page, workspace) {
      await closeAll(page);
      const source = readFileSync(join(workspace, 'clean.rebuild'), 'utf8');
      await openFile(page, 'clean.rebuild');
      await command(page, 'Handtight: Open Sheet to the Side');
      const sheet = () => viewIn(page).body.locator('[data-source-line]').first();
      await sheet().waitFor();
      await page.keyboard.press('Control+1');
      await goBehind(page, '    fit washer', source);
      await page.keyboard.press('Enter');
      await page.keyboard.type('slack');
      // A browser keeps what is not saved a second behind the keys; the desktop when it closes.
      await page.waitForTimeout(2500);
      await seekCommand(page, 'Developer: Reload Window');
      await page.waitForTimeout(300);
      const loaded = page.waitForEvent('load');
      await page.keyboard.press('Enter');
      await loaded;
      await page.waitForSelector('.monaco-workbench .part.statusbar');
      const word = page.locator('.view-line', { hasText: /^\s*slack$/u }).first();
      await word.waitFor({ timeout: starting });
      // As long as the files are read: what is wrong is the half word, and nothing else ever.
      const marked = new Set<number>();
      const look = async () => marked.add(await page.locator('.squiggly-error').count());
      const end = Date.now() + starting;
      while (!(await sheet().isVisible()) && Date.now() < end) await look();
      await page.locator('.squiggly-error').first().waitFor({ timeout: starting });
      await look();
      assert.deepEqual(
        [...marked].filter((count) => count > 1),
        [],
      );
      // It goes on where it was: the cursor is in the word.
      await word.click();
      await page.keyboard.press('End');
      await page.keyboard.type('en plug');
      await page.keyboard.press('Escape');
      await page.keyboard.press('Control+Shift+K');
      await page.locator('.squiggly-error').first().waitFor({ state: 'detached' });
      await closeAll(page);
      // A browser saves by itself.
      writeFileSync(join(workspace, 'clean.rebuild'), source);
    },
  },
];
