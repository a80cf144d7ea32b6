/** From nothing to a first procedure, as a newcomer: the questions, the text, and Tab through its blanks. */
import * as assert from 'node:assert/strict';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { command } from '../browser.ts';
import type { KeyboardTest } from './hands.ts';

/** What the questions and the text say, in a language. */
const languages = [
  {
    language: 'en',
    begin: 'what is rebuilt?',
    figures: 'which tests give a figure?',
    name: 'its name',
    stage: '"Take in"',
    blank: 'still has to be filled in',
  },
  {
    language: 'es',
    begin: '¿qué se reconstruye?',
    figures: '¿qué pruebas dan un valor?',
    name: 'su nombre',
    stage: '"Recepción"',
    blank: 'rellenar',
  },
] as const;

export const beginTests: readonly KeyboardTest[] = languages.map(
  ({ language, begin, figures, name, stage, blank }): KeyboardTest => ({
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
        await command(page, 'Handtight: New Procedure');
        await answer(begin, 'valve');
        await answer(figures);
        await answer(name);
        await page.locator('.view-line', { hasText: 'procedure rebuild-valve' }).waitFor();
        await page.keyboard.press('Control+S');
        await page.locator('.quick-input-widget input').fill(join(folder, 'first.rebuild'));
        await page.waitForTimeout(300);
        await page.keyboard.press('Enter');
        await page.locator('.tab.active[data-resource-name="first.rebuild"]').waitFor();
        const text = () => readFileSync(join(folder, 'first.rebuild'), 'utf8');
        assert.ok(text().includes(stage), text());
        const blanks = text().split('…').length - 1;
        assert.ok(blanks > 8, `${blanks} blanks`);
      } finally {
        await page.close();
        rmSync(folder, { recursive: true, force: true });
      }
    },
  }),
);
