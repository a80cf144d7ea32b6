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

/** Opens a file of the workspace by its name, as Ctrl+P does. */
export async function openFile(page: Page, name: string): Promise<void> {
  await page.keyboard.press('Control+P');
  await page.locator('.quick-input-widget input').fill(name);
  // On a busy machine the list still has what was opened lately.
  await page.locator('.quick-input-list .monaco-list-row.focused', { hasText: name }).first().waitFor();
  await page.waitForTimeout(400);
  await page.keyboard.press('Enter');
  await page.locator(`.tab.active[data-resource-name="${name}"]`).waitFor();
  await page.locator('.monaco-editor .view-line').first().waitFor();
}

/** Opens the palette and types a title there. A box that is closing may take the palette with it: then it is opened again. */
export async function seekCommand(page: Page, title: string): Promise<void> {
  const input = page.locator('.quick-input-widget input');
  for (let tries = 0; tries < 5; tries++) {
    await page.keyboard.press('F1');
    await page.waitForTimeout(150);
    if (!(await input.isVisible())) continue;
    await input.fill(`>${title}`);
    await page.locator('.quick-input-list .monaco-list-row').first().waitFor();
    return;
  }
  throw new Error('The palette does not open.');
}

/** Runs a command by its title. */
export async function command(page: Page, title: string): Promise<void> {
  await seekCommand(page, title);
  await page.waitForTimeout(300);
  await page.keyboard.press('Enter');
  await page.locator('.quick-input-widget').waitFor({ state: 'hidden' });
}

/** What the page keeps of its window in the browser, all of it as one text: it is written with some seconds’ delay. */
const keptByPage = `(async () => {
  const ended = (request) => new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });
  const all = [];
  for (const { name } of await indexedDB.databases()) {
    if (!name.startsWith('vscode-web-state-db-')) continue;
    const database = await ended(indexedDB.open(name));
    try {
      for (const store of database.objectStoreNames)
        all.push(...(await ended(database.transaction(store).objectStore(store).getAll())));
    } finally {
      database.close();
    }
  }
  return all.map(String).join('\\n');
})()`;

/** The longest that the page takes to write down its window, ms: it does so every five seconds. */
const keeping = 60_000;

/**
 * Waits until the editor has written down that a view of a file is open: a page that is loaded again sooner has the
 * window of some seconds before.
 */
export async function untilKept(page: Page, view: string, name: string): Promise<void> {
  const dot = (text: string) => text.replaceAll('.', '\\.');
  const isKept = new RegExp(
    `"providedId":"${dot(view)}"(?:(?!"providedId")[^])*"state":"\\{"uri":"[^"]*/${dot(name)}"`,
    'u',
  );
  for (const end = Date.now() + keeping; ; await page.waitForTimeout(200)) {
    // Text in text in text: each is quoted once more.
    if (isKept.test((await page.evaluate<string>(keptByPage)).replaceAll('\\', ''))) return;
    if (Date.now() > end) throw new Error(`The window that is kept has no ${view} of ${name}`);
  }
}
