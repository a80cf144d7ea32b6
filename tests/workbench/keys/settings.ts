/** Settings that are changed while the server runs: each takes effect at once. */
import * as assert from 'node:assert/strict';
import { mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Locator, Page } from 'playwright-core';
import { command, openFile } from '../browser.ts';
import { root } from '../host.ts';
import { bell, closeAll, goBehind, type KeyboardTest, messages, viewIn } from './hands.ts';

/** Changes settings of the folder, as its file says; without any the file is gone. */
export function set(workspace: string, settings: Readonly<Record<string, unknown>> = {}): void {
  const file = join(workspace, '.vscode/settings.json');
  mkdirSync(join(workspace, '.vscode'), { recursive: true });
  if (Object.keys(settings).length === 0) rmSync(file, { force: true });
  else writeFileSync(file, JSON.stringify(settings));
}

/** What is there as long as a setting has another value than the usual one. */
interface Change {
  readonly setting: string;
  readonly value: unknown;
  /** In this file, with the cursor behind this text. */
  readonly file: string;
  readonly behind: string;
  /** What the setting brings, or takes away. */
  readonly seen: (page: Page) => Locator;
  readonly isThere: boolean;
  /** What is done before something can be seen. */
  readonly open?: (page: Page) => Promise<void>;
}

/** Blanks of the text are of a kind of their own in the page. */
const line = (page: Page, text: RegExp) => page.locator('.view-line', { hasText: text }).first();
const problem = (page: Page, text: RegExp) =>
  page.locator('.markers-panel .monaco-list-row', { hasText: text }).first();
const focusProblems = (page: Page) => command(page, 'Problems: Focus on Problems View');

const changes: readonly Change[] = [
  {
    setting: 'handtight.language',
    value: 'de',
    file: 'procedure.rebuild',
    behind: 'slacken nut',
    open: focusProblems,
    seen: (page) => problem(page, /Schritt \d/u),
    isThere: true,
  },
  {
    setting: 'handtight.problems.scope',
    value: 'open',
    file: 'clean.rebuild',
    behind: 'slacken plug',
    open: focusProblems,
    seen: (page) => problem(page, /procedure\.rebuild/u),
    isThere: false,
  },
  {
    setting: 'handtight.hints.shims',
    value: false,
    file: 'procedure.rebuild',
    behind: 'choose shim',
    seen: (page) => line(page, /one\sstep\sof/u),
    isThere: false,
  },
  {
    setting: 'handtight.hints.steps',
    value: true,
    file: 'clean.rebuild',
    behind: 'slacken plug',
    seen: (page) => line(page, /\d\.\d\s*slacken\splug/u),
    isThere: true,
  },
  {
    setting: 'handtight.hints.limits',
    value: true,
    file: 'clean.rebuild',
    behind: 'torque plug to plug-fit',
    seen: (page) => line(page, /torque\splug\sto\splug-fit\s*40/u),
    isThere: true,
  },
  {
    setting: 'handtight.preview.revealStep',
    value: false,
    file: 'clean.rebuild',
    behind: 'slacken plug',
    open: (page) => command(page, 'Handtight: Open Sheet to the Side'),
    seen: (page) => viewIn(page).body.locator('.handtight-here'),
    isThere: false,
  },
];

/** Settings that count when something is done, each with what it changes then. */
const atNextUse = ['handtight.print.paper', 'handtight.print.folder', 'handtight.trace.server'];

export const settingTests: readonly KeyboardTest[] = [
  {
    name: 'each setting takes effect at once, and so does taking it back',
    async run(page, workspace) {
      const { properties } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')).contributes.configuration;
      const tried = [...changes.map(({ setting }) => setting), ...atNextUse];
      assert.deepEqual(tried.sort(), Object.keys(properties).sort());
      for (const { setting, value, file, behind, open, seen, isThere } of changes) {
        await closeAll(page);
        await openFile(page, file);
        await goBehind(page, behind, readFileSync(join(workspace, file), 'utf8'));
        await open?.(page);
        const look = (there: boolean) =>
          seen(page)
            .waitFor({ state: there ? 'visible' : 'detached' })
            .catch(() => assert.fail(`${setting}: what it says is ${there ? 'not ' : ''}there`));
        try {
          await look(!isThere);
          set(workspace, { [setting]: value });
          await look(isThere);
          set(workspace);
          await look(!isThere);
        } finally {
          set(workspace);
        }
      }
    },
  },
  {
    name: 'the paper that is set holds for the next sheet; where it is printed to is not for a folder to say that is not trusted',
    async run(page, workspace) {
      await closeAll(page);
      await openFile(page, 'clean.rebuild');
      try {
        set(workspace, { 'handtight.print.paper': 'letter', 'handtight.print.folder': 'elsewhere' });
        await page.waitForTimeout(500);
        await command(page, 'Handtight: Print to PDF');
        await bell(page).waitFor();
        assert.match((await messages(page)).join(), /Printed to traveler\//u);
        const pdf = readFileSync(join(workspace, 'traveler/rebuild-valve-9-revision-A.pdf'), 'latin1');
        assert.match(pdf, /MediaBox\s*\[0 0 612 792\]/u);
      } finally {
        set(workspace);
      }
    },
  },
  {
    name: 'the messages of the server are in its output once the setting says so',
    async run(page, workspace) {
      await closeAll(page);
      await openFile(page, 'clean.rebuild');
      await command(page, 'Handtight: Show Output');
      try {
        set(workspace, { 'handtight.trace.server': 'messages' });
        await page.waitForTimeout(500);
        await page.keyboard.press('Control+1');
        await page.keyboard.press('ArrowDown');
        await page
          .locator('.panel .view-line', { hasText: /Sending\srequest|Received\sresponse/u })
          .first()
          .waitFor();
      } finally {
        set(workspace);
      }
    },
  },
];
