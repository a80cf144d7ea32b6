/** The editor in Spanish and in German: findings, fixes and views. */
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { command, openFile } from '../browser.ts';
import { closeAll, goBehind, type KeyboardTest, viewIn } from './hands.ts';
import { set } from './settings.ts';

const languages = [
  {
    language: 'es',
    finding: /¿Quería decir nozzle\?/u,
    fix: /Escribir nozzle/u,
    sheet: 'Hoja: ',
    errors: /error(?:es)?: se imprime solo como borrador/u,
    state: 'Uniones sin apretar',
  },
  {
    language: 'de',
    finding: /Ist nozzle gemeint\?/u,
    fix: /nozzle schreiben/u,
    sheet: 'Blatt: ',
    errors: /Fehler: wird nur als Entwurf gedruckt/u,
    state: 'Nicht angezogene Verbindungen',
  },
] as const;

export const wordTests: readonly KeyboardTest[] = languages.map(
  ({ language, finding, fix, sheet, errors, state }): KeyboardTest => ({
    name: `findings, fixes and views speak the language of the setting (${language})`,
    async run(page, workspace) {
      await closeAll(page);
      const file = join(workspace, 'procedure.rebuild');
      const source = readFileSync(file, 'utf8');
      set(workspace, { 'handtight.language': language });
      try {
        await openFile(page, 'procedure.rebuild');
        await goBehind(page, 'remove nut, nozzle', source);
        await page.keyboard.type('s');
        await command(page, 'Problems: Focus on Problems View');
        await page.locator('.markers-panel .monaco-list-row', { hasText: finding }).first().waitFor();
        await page.keyboard.press('Control+1');
        await page.keyboard.press('Control+.');
        await page.locator('.action-widget .monaco-list-row', { hasText: fix }).first().waitFor();
        await page.keyboard.press('Escape');
        await command(page, 'Handtight: Open Sheet to the Side');
        await page.locator('.tab', { hasText: sheet }).waitFor();
        await viewIn(page).frame.locator('#problems', { hasText: errors }).waitFor();
        await page.keyboard.press('Control+1');
        await goBehind(page, 'run-down nut', source);
        await command(page, 'Handtight: Show the State at the Cursor');
        await page.locator('.sidebar .monaco-list-row', { hasText: state }).waitFor();
      } finally {
        set(workspace);
        await closeAll(page);
        // A browser saves by itself.
        writeFileSync(file, source);
      }
    },
  }),
);
