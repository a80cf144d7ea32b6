/** The tour: every button of every step is pressed, and opens what it names. */
import * as assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Locator, Page } from 'playwright-core';
import { command, openFile } from '../browser.ts';
import { root } from '../host.ts';
import { bell, closeAll, type KeyboardTest, messages } from './hands.ts';

interface Step {
  readonly id: string;
  readonly title: string;
  readonly description: string;
}

const { steps }: { readonly steps: readonly Step[] } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8'))
  .contributes.walkthroughs[0];

/** Each button with its step, as the manifest has them. */
const buttons = steps.flatMap(({ id, title, description }) =>
  [...description.matchAll(/\[([^\]]+)\]\(command:([\w.]+)\)/gu)].map(([, label, id_]) => ({
    step: id,
    title,
    label: label!,
    command: id_!,
  })),
);

const opens: Readonly<Record<string, (page: Page) => Locator>> = {
  'handtight.newProcedure': (page) => page.locator('.quick-input-title', { hasText: 'what is rebuilt?' }),
  'handtight.samples': (page) => page.locator('.quick-input-title', { hasText: 'A folder for the samples' }),
  'workbench.actions.view.problems': (page) => page.locator('.markers-panel'),
  'handtight.showState': (page) => page.locator('.part.sidebar .title-label', { hasText: /State at the Cursor/iu }),
  'handtight.drawing': (page) => page.locator('.tab', { hasText: 'Drawing: ' }),
  'handtight.preview': (page) => page.locator('.tab', { hasText: 'Sheet: ' }),
  'handtight.print': (page) => bell(page),
};

export const tourTests: readonly KeyboardTest[] = [
  {
    name: 'each button of the tour opens what it names, also where the tour covers the text',
    async run(page) {
      assert.deepEqual(buttons.map((one) => one.command).sort(), Object.keys(opens).sort());
      for (const { step, label, command: id } of buttons) {
        await closeAll(page);
        await openFile(page, 'clean.rebuild');
        await command(page, 'Handtight: Take the Tour');
        const tour = page.locator('.gettingStartedContainer');
        const of = tour.locator(`[data-step-id$="${step}"]`);
        if ((await of.getAttribute('aria-expanded')) !== 'true') await of.locator('.step-title').click();
        await of.locator('.button-container .monaco-button', { hasText: label }).click();
        await opens[id]!(page)
          .first()
          .waitFor()
          .catch(() => assert.fail(`“${label}” opens nothing`));
        await page.keyboard.press('Escape');
        for (const said of await messages(page)) assert.match(said, /^Printed to traveler/u, label);
      }
    },
  },
];
