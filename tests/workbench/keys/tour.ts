/** The tour: every button of every step is pressed, and opens what it names. */
import * as assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { command, openFile } from '../browser.ts';
import { root } from '../host.ts';
import { appears } from './appears.ts';
import { closeAll, type KeyboardTest, messages } from './hands.ts';

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

export const tourTests: readonly KeyboardTest[] = [
  {
    name: 'each button of the tour opens what it names, also where the tour covers the text',
    async run(page) {
      assert.ok(buttons.length >= 7, JSON.stringify(buttons));
      for (const { step, label, command: id } of buttons) {
        await closeAll(page);
        await openFile(page, 'clean.rebuild');
        await command(page, 'Handtight: Take the Tour');
        const tour = page.locator('.gettingStartedContainer');
        const of = tour.locator(`[data-step-id$="${step}"]`);
        if ((await of.getAttribute('aria-expanded')) !== 'true') await of.locator('.step-title').click();
        await of.locator('.button-container .monaco-button', { hasText: label }).click();
        await appears[id]!(page).catch((error) => assert.fail(`“${label}” opens nothing: ${error}`));
        await page.keyboard.press('Escape');
        assert.deepEqual(await messages(page), [], label);
      }
    },
  },
];
