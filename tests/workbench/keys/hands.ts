/** Hands for the tests by keys and mouse: what somebody at the keyboard does and looks at. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { FrameLocator, Locator, Page } from 'playwright-core';
import { command, openFile, seekCommand } from '../browser.ts';

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
  await page.keyboard.press('Control+G');
  await page.locator('.quick-input-widget input').fill(`:${before.length}:${before.at(-1)!.length + 1}`);
  await page.keyboard.press('Enter');
  await page.locator('.quick-input-widget').waitFor({ state: 'hidden' });
}

/** Says that there is something to read: the editor shows no message by itself while it is driven. */
export const bell = (page: Page): Locator => page.locator('[id="status.notifications"] .codicon-bell-dot');

/** What the messages say that nobody has read, and puts them away. */
export async function messages(page: Page): Promise<string[]> {
  if ((await bell(page).count()) === 0) return [];
  await command(page, 'Notifications: Show Notifications');
  await page.locator('.notifications-center.visible').waitFor();
  const said = await page.locator('.notifications-center .notification-list-item-message').allTextContents();
  await command(page, 'Notifications: Clear All Notifications');
  return said;
}

/** Whether the palette, which is left open on it, has a command of ours. */
export async function isOffered(page: Page, title: string): Promise<boolean> {
  await seekCommand(page, `Handtight: ${title}`);
  const rows = page.locator('.quick-input-list .monaco-list-row');
  await page.waitForTimeout(250);
  const first = await rows.first().getAttribute('aria-label');
  return first?.startsWith(`Handtight: ${title}`) === true;
}

/** Opens the palette on a command, once a window that has just been opened knows its extensions. */
export async function untilOffered(page: Page, title: string): Promise<void> {
  for (let tries = 0; !(await isOffered(page, title)); tries++) {
    if (tries > 50) throw new Error(`The palette does not have ${title}.`);
    await page.keyboard.press('Escape');
    await page.waitForTimeout(200);
  }
}
