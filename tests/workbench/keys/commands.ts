/** Every command of the manifest, by its title in the palette: where it makes sense, and where it makes none. */
import * as assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { offered, openFile, seekCommand } from '../browser.ts';
import { root } from '../host.ts';
import { appears } from './appears.ts';
import { closeAll, type KeyboardTest, messages } from './hands.ts';

interface Command {
  readonly command: string;
  readonly title: string;
}

const manifest: { readonly contributes: { readonly commands: readonly Command[] } } = JSON.parse(
  readFileSync(join(root, 'package.json'), 'utf8'),
);

/** Those that are about a .rebuild file, and are in the palette only where one is. */
const ofFile = new Set(['handtight.preview', 'handtight.specs', 'handtight.drawing', 'handtight.print']);

/** What no command may say: the editor's own words for a defect. */
const ofDefect = /not found|Error:|undefined|is not a function|rejected|\n\s+at /u;

/** Runs each command that the palette has; which it has not. */
async function runAll(page: Page, before: () => Promise<void>): Promise<string[]> {
  const hidden: string[] = [];
  for (const { command: id, title } of manifest.contributes.commands) {
    await before();
    if ((await offered(page, 'Handtight')).includes(title)) {
      await page.keyboard.press('Escape');
      await seekCommand(page, `Handtight: ${title}`);
      await page.keyboard.press('Enter');
      await appears[id]!(page).catch((error) => assert.fail(`${title} brings nothing: ${error}`));
    } else hidden.push(id);
    await page.keyboard.press('Escape');
    await page.keyboard.press('Escape');
    for (const said of await messages(page)) assert.doesNotMatch(said, ofDefect, title);
    await closeAll(page);
  }
  return hidden;
}

export const commandTests: readonly KeyboardTest[] = [
  {
    name: 'every command brings something where a procedure is open',
    async run(page) {
      assert.deepEqual(await runAll(page, () => openFile(page, 'clean.rebuild')), []);
    },
  },
  {
    name: 'every command brings something, or is not offered, where another file is open',
    async run(page) {
      assert.deepEqual(await runAll(page, () => openFile(page, 'other.json')), [...ofFile]);
    },
  },
  {
    name: 'every command brings something, or is not offered, where no folder is open',
    async run(_, __, bench) {
      const page = await bench.open(null);
      try {
        assert.deepEqual(await runAll(page, async () => undefined), [...ofFile]);
      } finally {
        await page.close();
      }
    },
  },
];
