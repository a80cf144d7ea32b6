/** From nothing to a first procedure, as a newcomer: the questions, the text, and Tab through its blanks. */
import * as assert from 'node:assert/strict';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { command } from '../browser.ts';
import { type KeyboardTest, untilOffered } from './hands.ts';

/** What the questions and the text say, in a language. */
const languages = [
  {
    language: 'en',
    begin: 'what is rebuilt?',
    figures: 'which tests give a figure?',
    name: 'its name',
    stage: '"Take in"',
  },
  {
    language: 'es',
    begin: '¿qué se reconstruye?',
    figures: '¿qué pruebas dan un valor?',
    name: 'su nombre',
    stage: '"Recepción"',
  },
] as const;

export const beginTests: readonly KeyboardTest[] = languages.map(
  ({ language, begin, figures, name, stage }): KeyboardTest => ({
    name: `a newcomer with an empty folder gets a first procedure, and Tab goes through its blanks (${language})`,
    async run(_, __, bench) {
      const folder = mkdtempSync(join(tmpdir(), 'handtight-newcomer-'));
      mkdirSync(join(folder, '.vscode'));
      writeFileSync(join(folder, '.vscode/settings.json'), JSON.stringify({ 'handtight.language': language }));
      const page = await bench.open(folder);
      try {
        const title = page.locator('.quick-input-title');
        const answer = async (asked: string, typed = '') => {
          await title.filter({ hasText: asked }).waitFor();
          await page.keyboard.type(typed);
          await page.waitForTimeout(300);
          await page.keyboard.press('Enter');
        };
        await untilOffered(page, 'New Procedure');
        await page.keyboard.press('Enter');
        await answer(begin, 'valve');
        await answer(figures);
        await answer(name);
        // One blank after the other is marked; behind the last one nothing is.
        const isMarked = page.locator('.statusbar', { hasText: '(1 selected)' });
        await isMarked.waitFor();
        const place = page.locator('[id="status.editor.selection"]');
        let stops = 0;
        for (; stops < 200 && (await isMarked.isVisible()); stops++) {
          const before = await place.textContent();
          await page.keyboard.press('Tab');
          for (let tries = 0; tries < 60 && (await place.textContent()) === before; tries++)
            await page.waitForTimeout(50);
        }
        await page.keyboard.press('Control+S');
        const path = page.locator('.quick-input-widget input');
        // The box begins with a name of its own, and reads what is typed before it takes an Enter.
        for (let tries = 0; tries < 50 && !(await path.inputValue()).endsWith('.rebuild'); tries++)
          await page.waitForTimeout(100);
        await path.fill(join(folder, 'first.rebuild'));
        for (let tries = 0; tries < 20 && (await path.isVisible()); tries++) {
          await page.waitForTimeout(500);
          if (await path.isVisible()) await page.keyboard.press('Enter');
        }
        await page.locator('.tab.active[data-resource-name="first.rebuild"]').waitFor();
        const text = () => readFileSync(join(folder, 'first.rebuild'), 'utf8');
        assert.ok(text().includes(stage), text());
        const blanks = text().split('…').length - 1;
        assert.ok(blanks > 8, `${blanks} blanks`);
        assert.equal(stops, blanks);
        // It checks clean but for them, and for what is not approved yet.
        await command(page, 'Problems: Focus on Problems View');
        const rows = page.locator('.markers-panel .monaco-list-row');
        await rows.filter({ hasText: 'blank-left' }).first().waitFor();
        for (const said of await rows.allTextContents()) assert.match(said, /blank-left|not-approved|^first\.rebuild/u);
      } finally {
        await page.close();
        rmSync(folder, { recursive: true, force: true });
      }
    },
  }),
);
