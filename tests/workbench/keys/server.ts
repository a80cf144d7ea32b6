/** The server as a person sees it: its item in the status bar, its output, a restart, and an end that nobody wanted. */
import { command, openFile } from '../browser.ts';
import { closeAll, type KeyboardTest } from './hands.ts';

export const serverTests: readonly KeyboardTest[] = [
  {
    name: 'the status item says what was checked, leads to the output, and offers a restart where the server has stopped',
    async run(page) {
      await closeAll(page);
      await openFile(page, 'procedure.rebuild');
      const item = page.locator('.statusbar-item[id="status.languageStatus"]');
      await item.hover();
      const about = page.locator('.hover-language-status', { hasText: 'Handtight' });
      await about.filter({ hasText: /Files checked: \d+, errors: \d+, warnings: \d+/u }).waitFor();
      await about.locator('a', { hasText: 'Show output' }).click();
      await page.locator('.panel .output-view').waitFor();
      await command(page, 'Handtight: Restart the Language Server');
      await page.waitForTimeout(200);
      await command(page, 'Handtight: Restart the Language Server');
      await page.locator('.statusbar', { hasText: 'the language server was restarted' }).waitFor();
      await page.locator('.squiggly-error, .squiggly-warning').first().waitFor();
    },
  },
];
