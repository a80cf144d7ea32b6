/** Settings that are changed while the server runs: each takes effect at once. */
import * as assert from 'node:assert/strict';
import { mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { command, openFile } from '../browser.ts';
import { root } from '../host.ts';
import { closeAll, type KeyboardTest } from './hands.ts';

/** Changes settings of the folder, as its file says; without any the file is gone. */
export function set(workspace: string, settings: Readonly<Record<string, unknown>> = {}): void {
  const file = join(workspace, '.vscode/settings.json');
  mkdirSync(join(workspace, '.vscode'), { recursive: true });
  if (Object.keys(settings).length === 0) rmSync(file, { force: true });
  else writeFileSync(file, JSON.stringify(settings));
}

/** What each setting changes, in the file that is open: from what is there by default to what is there with it, and back. */
const changes: Readonly<Record<string, (page: Page, workspace: string) => Promise<void>>> = {
  async 'handtight.language'(page, workspace) {
    await command(page, 'Problems: Focus on Problems View');
    const found = (text: RegExp) =>
      page.locator('.markers-panel .monaco-list-row', { hasText: text }).first().waitFor();
    await found(/./u);
    set(workspace, { 'handtight.language': 'es' });
    await found(/Paso \d/u);
    set(workspace, { 'handtight.language': 'de' });
    await found(/Schritt \d/u);
    set(workspace);
    await found(/Step \d/u);
  },
};

export const settingTests: readonly KeyboardTest[] = [
  {
    name: 'each setting takes effect at once, and so does taking it back',
    async run(page, workspace) {
      const { properties } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')).contributes.configuration;
      assert.deepEqual(Object.keys(changes).sort(), Object.keys(properties).sort());
      for (const [name, change] of Object.entries(changes)) {
        await closeAll(page);
        await openFile(page, 'procedure.rebuild');
        try {
          await change(page, workspace);
        } catch (error) {
          throw new Error(`${name}: ${error instanceof Error ? error.message : error}`);
        } finally {
          set(workspace);
        }
      }
    },
  },
];
