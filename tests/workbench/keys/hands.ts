/** Hands for the tests by keys and mouse: what somebody at the keyboard does and looks at. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { FrameLocator, Locator, Page } from 'playwright-core';
import { ask, command, openFile } from '../browser.ts';

export interface KeyboardTest {
  readonly name: string;
  run(page: Page, workspace: string, bench: Bench): Promise<void>;
}

/** What a test may open besides the page that all share. */
export interface Bench {
  /** Another page; of a folder, or of none. */
  open(folder: string | null): Promise<Page>;
}

/** An empty file, open in the editor. */
export async function begin(page: Page, name: string): Promise<void> {
  await openFile(page, name);
  await page.locator('.monaco-editor .view-lines').first().click();
  await page.locator('.monaco-editor.focused').waitFor();
}

/** The pause before Enter, ms: long enough for the list of suggestions to be there. */
const pause = 250;

/**
 * Types lines as an author does: the editor indents by itself, and has closed the brace already, so that a line that
 * closes a block is gone down to.
 */
export async function type(page: Page, text: string): Promise<void> {
  for (const [index, line] of text.split('\n').entries()) {
    const keys = line.trimStart();
    if (keys === '}') {
      // An open list would take the arrow.
      await page.keyboard.press('Escape');
      await page.keyboard.press('ArrowDown');
      await page.keyboard.press('End');
      continue;
    }
    if (index > 0) await page.keyboard.press('Enter');
    await page.keyboard.type(keys);
    await page.waitForTimeout(pause);
  }
}

/** What the file holds after it was saved. */
export async function saved(page: Page, workspace: string, name: string): Promise<string> {
  await page.keyboard.press('Escape');
  await page.keyboard.press('Control+S');
  await page.locator(`.tab.active:not(.dirty)[data-resource-name="${name}"]`).waitFor();
  return readFileSync(join(workspace, name), 'utf8');
}

/** The frame of the view beside the text, and the page in it. */
export function viewIn(page: Page): { readonly frame: FrameLocator; readonly body: Locator } {
  const frame = page.frameLocator('iframe.webview.ready').frameLocator('iframe#active-frame');
  return { frame, body: frame.frameLocator('iframe#sheet').locator('body') };
}

/** Nothing open: what is not saved is given up. */
export async function closeAll(page: Page): Promise<void> {
  await page.keyboard.press('Escape');
  const isDirty = (await page.locator('.tab.dirty').count()) > 0;
  await command(page, 'View: Close All Editors');
  if (isDirty) await page.locator('.monaco-dialog-box .monaco-button', { hasText: "Don't Save" }).click();
  await page.locator('.tab').first().waitFor({ state: 'detached' });
}

/** Puts the cursor behind the first place of a text in the editor that has the keys. */
export async function goBehind(page: Page, text: string, source: string): Promise<void> {
  const before = source.slice(0, source.indexOf(text) + text.length).split('\n');
  const line = before.length;
  const isThere = new RegExp(`\\b${line}\\b`, 'u');
  const place = `:${line}:${before.at(-1)!.length + 1}`;
  await ask(page, 'Control+G', place, ([label]) => label !== undefined && isThere.test(label));
  await page.keyboard.press('Enter');
  await page.locator('.quick-input-widget').waitFor({ state: 'hidden' });
}

/** The longest that somebody waits for an answer, ms. */
const patience = 30_000;

/** Says that there is something to read: the editor shows no message by itself while it is driven. */
const bell = (page: Page): Locator => page.locator('[id="status.notifications"] .codicon-bell-dot');

/** What the messages say that nobody has read, and puts them away. */
export async function messages(page: Page): Promise<string[]> {
  if ((await bell(page).count()) === 0) return [];
  await command(page, 'Notifications: Show Notifications');
  const said = page.locator('.notifications-center.visible .notification-list-item-message');
  await said.first().waitFor();
  const all = await said.allTextContents();
  await command(page, 'Notifications: Clear All Notifications');
  await bell(page).waitFor({ state: 'detached' });
  return all;
}

/** Waits for a message that says this, and what all of them say then; they are put away. */
export async function untilSaid(page: Page, text: RegExp): Promise<string[]> {
  const all: string[] = [];
  for (const end = Date.now() + patience; !all.some((said) => text.test(said)); ) {
    if (Date.now() > end) throw new Error(`Nothing says ${text}, only: ${all.join(' | ')}`);
    await bell(page).waitFor();
    all.push(...(await messages(page)));
  }
  return all;
}

/** Presses a key that takes the focus on, and waits until it went: where the focus is takes a moment to arrive. */
export async function pressOn(page: Page, key: string): Promise<void> {
  const focused = () =>
    Promise.all(
      page
        .frames()
        .map((frame) =>
          frame
            .evaluate<string>(
              "document.hasFocus() ? (document.activeElement?.id || document.activeElement?.className || '') + '' : ''",
            )
            .catch(() => ''),
        ),
    ).then((all) => all.join('|'));
  const before = await focused();
  await page.keyboard.press(key);
  for (const end = Date.now() + patience; (await focused()) === before; await page.waitForTimeout(30))
    if (Date.now() > end) throw new Error(`${key} goes nowhere from ${before}`);
}
