/** From nothing to a first procedure, as a newcomer: the questions, the text, and Tab through its blanks. */
import * as assert from 'node:assert/strict';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Locator } from 'playwright-core';
import { command, seekCommand } from '../browser.ts';
import type { KeyboardTest } from './hands.ts';

/** What the questions and the text say, in a language. */
const languages = [
  {
    language: 'en',
    begin: 'what is rebuilt?',
    figures: 'which tests give a figure?',
    name: 'its name',
    letters: 'Letters, digits and hyphens',
    stage: '"Take in"',
  },
  {
    language: 'es',
    begin: '¿qué se reconstruye?',
    figures: '¿qué pruebas dan un valor?',
    name: 'su nombre',
    letters: 'Letras, cifras y guiones',
    stage: '"Recepción"',
  },
] as const;

export const beginTests: readonly KeyboardTest[] = languages.map(
  ({ language, begin, figures, name, letters, stage }): KeyboardTest => ({
    name: `a newcomer with an empty folder gets a first procedure, and Tab goes through its blanks (${language})`,
    async run(_, __, bench) {
      const folder = mkdtempSync(join(tmpdir(), 'handtight-newcomer-'));
      mkdirSync(join(folder, '.vscode'));
      writeFileSync(join(folder, '.vscode/settings.json'), JSON.stringify({ 'handtight.language': language }));
      const page = await bench.open(folder);
      try {
        const title = page.locator('.quick-input-title');
        // What can be chosen, or is proposed, comes a moment after the question.
        const answer = async (asked: string, typed: string, offers: Locator) => {
          await title.filter({ hasText: asked }).waitFor();
          await page.keyboard.type(typed);
          await offers.waitFor();
          await page.keyboard.press('Enter');
        };
        const list = page.locator('.quick-input-list');
        await seekCommand(page, 'Handtight: New Procedure');
        await page.keyboard.press('Enter');
        await answer(begin, 'valve', list.locator('.monaco-list-row.focused', { hasText: /valve/u }));
        await answer(figures, '', list.locator('.monaco-list-row', { hasText: 'opening' }));
        await answer(name, '', page.locator('.quick-input-message', { hasText: letters }));
        // One blank after the other is marked; behind the last one nothing is.
        const isMarked = page.locator('.statusbar', { hasText: '(1 selected)' });
        await isMarked.waitFor();
        const place = page.locator('[id="status.editor.selection"]');
        let stops = 0;
        for (; stops < 200 && (await isMarked.isVisible()); stops++) {
          const before = await place.textContent();
          await page.keyboard.press('Tab');
          for (let tries = 0; tries < 600 && (await place.textContent()) === before; tries++)
            await page.waitForTimeout(50);
        }
        // It has the name that was given, and is there.
        await page.locator('.tab.active:not(.dirty)[data-resource-name="rebuild-valve.rebuild"]').waitFor();
        const text = () => readFileSync(join(folder, 'rebuild-valve.rebuild'), 'utf8');
        assert.ok(text().includes(stage), text());
        const blanks = text().split('…').length - 1;
        assert.ok(blanks > 8, `${blanks} blanks`);
        assert.equal(stops, blanks);
        // It checks clean but for them, and for what is not approved yet.
        await command(page, 'Problems: Focus on Problems View');
        const rows = page.locator('.markers-panel .monaco-list-row');
        await rows.filter({ hasText: 'blank-left' }).first().waitFor();
        for (const said of await rows.allTextContents())
          assert.match(said, /blank-left|not-approved|^rebuild-valve\.rebuild/u);
      } finally {
        await page.close();
        rmSync(folder, { recursive: true, force: true });
      }
    },
  }),
);
