/** Each view without a mouse: there and back, found in, to the text, and out of it again. */
import * as assert from 'node:assert/strict';
import type { Page } from 'playwright-core';
import { command, openFile } from '../browser.ts';
import { closeAll, type KeyboardTest, viewIn } from './hands.ts';

/** The views beside the text, each with what is on its page and leads to the text. */
const views = [
  { title: 'Handtight: Open Sheet to the Side', seek: 'prime', leads: true },
  { title: 'Handtight: Open Specifications to the Side', seek: 'plug', leads: true },
  { title: 'Handtight: Open Drawing to the Side', seek: 'plug', leads: false },
] as const;

/** Whether the view has the keys. */
const hasKeys = (page: Page) =>
  page.evaluate<boolean>("document.activeElement?.classList.contains('webview') === true");

const inText = (page: Page) => page.locator('.monaco-editor.focused').waitFor();

export const viewTests: readonly KeyboardTest[] = views.map(
  ({ title, seek, leads }): KeyboardTest => ({
    name: `without a mouse: ${title.replace('Handtight: ', '')}, find in it, to the text and back, and out of it`,
    async run(page) {
      await closeAll(page);
      await openFile(page, 'clean.rebuild');
      await command(page, title);
      const { frame, body } = viewIn(page);
      await body.getByText(seek).first().waitFor();
      await inText(page);

      // There: the page takes the keys, and they move it.
      await page.keyboard.press('Control+2');
      await frame.locator('#view:focus').waitFor();
      const top = () => body.evaluate((node) => node.ownerDocument.scrollingElement?.scrollTop);
      await page.keyboard.press('End');
      await page.keyboard.press('Home');
      assert.equal(await top(), 0);

      await page.keyboard.press('Control+F');
      await frame.locator('#sought:focus').waitFor();
      await page.keyboard.type(seek);
      await page.keyboard.press('Enter');
      assert.equal(await frame.locator('#found').textContent(), '');
      await page.keyboard.press('Escape');
      await frame.locator('#view:focus').waitFor();

      // What was found leads to its line, and back.
      if (leads) {
        await page.keyboard.press('Enter');
        await inText(page);
        const at = page.locator('.view-line', { hasText: seek });
        await at.first().waitFor();
        await page.keyboard.press('Control+2');
        await frame.locator('#view:focus').waitFor();
      }

      // Out, in both directions: no trap.
      for (const key of ['Tab', 'Shift+Tab']) {
        for (let pressed = 0; pressed < 6 && (await hasKeys(page)); pressed++) await page.keyboard.press(key);
        assert.ok(!(await hasKeys(page)), `${key} comes out`);
        await page.keyboard.press('Control+2');
        await frame.locator('#view:focus').waitFor();
      }
      await page.keyboard.press('Control+1');
      await inText(page);
    },
  }),
);
