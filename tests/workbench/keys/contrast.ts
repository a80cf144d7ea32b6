/** High contrast: what can be pressed in a view has a line around it, and what has the keys shows it. */
import * as assert from 'node:assert/strict';
import type { Page } from 'playwright-core';
import { command, openFile } from '../browser.ts';
import { closeAll, type KeyboardTest, viewIn } from './hands.ts';

/** By hand: at the start a theme that is not loaded yet falls back to light. */
async function chooseTheme(page: Page, name: string): Promise<void> {
  await page.keyboard.press('Control+K');
  await page.keyboard.press('Control+T');
  await page.locator('.quick-input-widget input').fill(name);
  await page.locator('.quick-input-list .monaco-list-row', { hasText: name }).first().waitFor();
  await page.keyboard.press('Enter');
  await page.locator('.quick-input-widget').waitFor({ state: 'hidden' });
}

export const contrastTests: readonly KeyboardTest[] = [
  {
    name: 'in high contrast what can be pressed in a view has a line around it, and so has what has the keys',
    async run(page) {
      await closeAll(page);
      await openFile(page, 'procedure.rebuild');
      await command(page, 'Handtight: Open Sheet to the Side');
      const { frame, body } = viewIn(page);
      await body.locator('[data-source-line]').first().waitFor();
      try {
        for (const theme of ['Dark High Contrast', 'Light High Contrast']) {
          await chooseTheme(page, theme);
          await frame.locator('body.vscode-high-contrast').waitFor();
          await page.keyboard.press('Control+2');
          await frame.locator('#view:focus').waitFor();
          await page.keyboard.press('Control+F');
          await frame.locator('#sought:focus').waitFor();
          const lines = await frame
            .locator('button:enabled, select, input')
            .evaluateAll((all) =>
              all.map((one) => [one.id, one.ownerDocument.defaultView.getComputedStyle(one).borderTopColor] as const),
            );
          assert.ok(lines.length >= 7, JSON.stringify(lines));
          assert.deepEqual(
            lines.filter(([, color]) => /^rgba\(.*, 0\)$|^transparent$/u.test(color)),
            [],
          );
          assert.equal(
            await frame
              .locator('#sought')
              .evaluate((one) => one.ownerDocument.defaultView.getComputedStyle(one).outlineStyle),
            'solid',
          );
          await page.keyboard.press('Escape');
          await frame.locator('#view:focus').waitFor();
        }
      } finally {
        await chooseTheme(page, 'Light 2026');
      }
    },
  },
];
