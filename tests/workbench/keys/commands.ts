/** Every command of the manifest, by its title in the palette: where it makes sense, and where it makes none. */
import * as assert from 'node:assert/strict';
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Locator, Page } from 'playwright-core';
import { openFile } from '../browser.ts';
import { root } from '../host.ts';
import { bell, closeAll, isOffered, type KeyboardTest, messages, untilOffered } from './hands.ts';

interface Command {
  readonly command: string;
  readonly title: string;
}

const manifest: { readonly contributes: { readonly commands: readonly Command[] } } = JSON.parse(
  readFileSync(join(root, 'package.json'), 'utf8'),
);

/** What appears once a command has run. */
const appears: Readonly<Record<string, (page: Page) => Locator>> = {
  'handtight.newProcedure': (page) => page.locator('.quick-input-title', { hasText: 'what is rebuilt?' }),
  'handtight.samples': (page) => page.locator('.quick-input-title', { hasText: 'A folder for the samples' }),
  'handtight.preview': (page) => page.locator('.tab', { hasText: 'Sheet: ' }),
  'handtight.specs': (page) => page.locator('.tab', { hasText: 'Specifications: ' }),
  'handtight.drawing': (page) => page.locator('.tab', { hasText: 'Drawing: ' }),
  'handtight.showState': (page) => page.locator('.part.sidebar .title-label', { hasText: /State at the Cursor/iu }),
  'handtight.print': (page) => bell(page),
  'handtight.history': (page) => page.locator('.quick-input-title', { hasText: 'A serial, a job' }),
  'handtight.openJobs': (page) => page.locator('.tab', { hasText: 'In the house' }),
  'handtight.affected': (page) => page.locator('.quick-input-title', { hasText: 'found wrong' }),
  'handtight.learn': (page) => bell(page),
  'handtight.explain': (page) =>
    page.locator('.quick-input-widget input[placeholder="Which rule should be explained?"]'),
  'handtight.tour': (page) => page.locator('.gettingStartedContainer', { hasText: 'Write a rebuild procedure' }),
  'handtight.restartServer': (page) => page.locator('.statusbar', { hasText: 'the language server was restarted' }),
  'handtight.showOutput': (page) => page.locator('.panel .output-view'),
};

/** Those that are about a .rebuild file, and are in the palette only where one is. */
const ofFile = new Set(['handtight.preview', 'handtight.specs', 'handtight.drawing', 'handtight.print']);

/** What no command may say: the editor's own words for a defect. */
const ofDefect = /not found|Error:|undefined|is not a function|rejected|\n\s+at /u;

/** Runs each command that the palette has; which it has not. */
async function runAll(page: Page, before: () => Promise<void>): Promise<string[]> {
  const hidden: string[] = [];
  for (const { command: id, title } of manifest.contributes.commands) {
    await before();
    if (await isOffered(page, title)) {
      await page.keyboard.press('Enter');
      await appears[id]!(page)
        .first()
        .waitFor()
        .catch(() => assert.fail(`${title} brings nothing`));
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
      assert.deepEqual(
        Object.keys(appears),
        manifest.contributes.commands.map((one) => one.command),
      );
      assert.deepEqual(await runAll(page, () => openFile(page, 'clean.rebuild')), []);
    },
  },
  {
    name: 'every command brings something, or is not offered, where another file is open',
    async run(page, workspace) {
      writeFileSync(join(workspace, 'other.json'), '{}\n');
      assert.deepEqual(await runAll(page, () => openFile(page, 'other.json')), [...ofFile]);
    },
  },
  {
    name: 'every command brings something, or is not offered, where no folder is open',
    async run(_, __, bench) {
      const page = await bench.open(null);
      try {
        await untilOffered(page, 'Take the Tour');
        await page.keyboard.press('Escape');
        assert.deepEqual(await runAll(page, async () => undefined), [...ofFile]);
      } finally {
        await page.close();
      }
    },
  },
];
