/** The workbench in headless Chromium: a page of the VS Code server, with the hooks that a test run needs. */
import { type Browser, chromium, type Page } from 'playwright-core';
import type { Host } from './host.ts';

const chromiumArguments = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

/** Starts the browser named by CHROMIUM, or the system's. */
export function startBrowser(): Promise<Browser> {
  return chromium.launch({ executablePath: process.env.CHROMIUM ?? '/usr/bin/chromium', args: chromiumArguments });
}

/** What is opened, and what is run in it; all paths absolute. */
export interface Workbench {
  /** Null: no folder is open. */
  readonly workspace: string | null;
  /** Under development; null: only what is installed. */
  readonly extension: string | null;
  /** Compiled suite that exports `run`; without it the workbench is only opened. */
  readonly tests?: string;
}

/** Address of the workbench with the extension under development, and the suite, in its payload. */
export function workbenchAddress(host: Host, workbench: Workbench): string {
  const remote = (path: string) => `vscode-remote://127.0.0.1:${host.port}${path}`;
  const payload: [string, string][] = [
    ...(workbench.extension === null
      ? []
      : [['extensionDevelopmentPath', remote(workbench.extension)] satisfies [string, string]]),
    ['skipWelcome', 'true'],
  ];
  if (workbench.tests !== undefined) payload.push(['extensionTestsPath', remote(workbench.tests)]);
  const opened: Record<string, string> =
    workbench.workspace === null ? { ew: 'true' } : { folder: workbench.workspace };
  const query = new URLSearchParams({ ...opened, payload: JSON.stringify(payload) });
  return `${host.origin}/?${query}`;
}

/** A run's end: the code that the suite handed back. */
export interface Hooks {
  /** One line or more that the suite or the extension host printed. */
  log(type: string, values: readonly unknown[]): void;
  exit(code: number): void;
}

/** Gives the page the two functions that the workbench calls of a test run. */
export async function exposeHooks(page: Page, hooks: Hooks): Promise<void> {
  await page.exposeFunction('codeAutomationLog', (type: string, values: unknown[]) => hooks.log(type, values));
  await page.exposeFunction('codeAutomationExit', (code: number) => hooks.exit(code));
}

/** Opens the workbench on a page of its own, to be driven by keys and mouse. */
export async function openWorkbench(browser: Browser, host: Host, workbench: Workbench, scale = 1): Promise<Page> {
  const page = await browser.newPage({ viewport: { width: 1280, height: 800 }, deviceScaleFactor: scale });
  await page.goto(workbenchAddress(host, workbench));
  await page.waitForSelector('.monaco-workbench .part.statusbar');
  return page;
}

/** The box that the editor asks in. */
const box = '.quick-input-widget';

/** What its list has, top to bottom, as a screen reader says it. */
const labelsIn = (page: Page) =>
  page
    .locator(`${box} .monaco-list-row`)
    .evaluateAll((rows) => rows.map((row) => row.getAttribute('aria-label') ?? ''));

/** How often something is tried that a busy editor may let slip, and how long each try may take, ms. */
const most = 10;
const patience = 5000;

/**
 * Opens the box with a key, types there, and waits for a list that is the answer. A box that is closing may take the new
 * one with it, and a window that has just been opened may not know its files yet: then it is opened again.
 */
export async function ask(
  page: Page,
  key: string,
  text: string,
  isAnswer: (labels: readonly string[]) => boolean,
): Promise<readonly string[]> {
  const input = page.locator(`${box} input[type="text"]`);
  let labels: readonly string[] = [];
  for (let tries = 0; tries < most; tries++) {
    try {
      await page.keyboard.press(key);
      await input.fill(text, { timeout: patience });
      for (const end = Date.now() + patience; Date.now() < end; await page.waitForTimeout(50)) {
        labels = await labelsIn(page);
        if (isAnswer(labels)) return labels;
      }
    } catch {
      // It was closed while it was typed into.
    }
    await page.keyboard.press('Escape');
  }
  throw new Error(`“${text}” brings up only: ${labels.join('; ')}`);
}

const beginsWith = (sought: string) => (labels: readonly string[]) => labels[0]?.startsWith(sought) === true;

/** Opens a file of the workspace by its name, as Ctrl+P does. */
export async function openFile(page: Page, name: string): Promise<void> {
  await ask(page, 'Control+P', name, beginsWith(name));
  await page.keyboard.press('Enter');
  await page.locator(`.tab.active[data-resource-name="${name}"]`).waitFor();
  await page.locator('.monaco-editor .view-line').first().waitFor();
}

/** Which commands of a category the palette has, by their titles; the palette is left open. */
export async function offered(page: Page, category: string): Promise<string[]> {
  const prefix = `${category}: `;
  // As long as another command is in it, it is the list of before.
  const labels = await ask(
    page,
    'F1',
    `>${prefix}`,
    (all) => all.length > 0 && all.every((label) => label.startsWith(prefix)),
  );
  return labels.map((label) => label.slice(prefix.length).split(',')[0]!);
}

/** Opens the palette on a command. */
export async function seekCommand(page: Page, title: string): Promise<void> {
  await ask(page, 'F1', `>${title}`, beginsWith(title));
}

/** Runs a command by its title. */
export async function command(page: Page, title: string): Promise<void> {
  await seekCommand(page, title);
  await page.keyboard.press('Enter');
  await page.locator(box).waitFor({ state: 'hidden' });
}
