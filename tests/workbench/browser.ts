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
  readonly workspace: string;
  readonly extension: string;
  /** Compiled suite that exports `run`; without it the workbench is only opened. */
  readonly tests?: string;
}

/** Address of the workbench with the extension under development, and the suite, in its payload. */
export function workbenchAddress(host: Host, workbench: Workbench): string {
  const remote = (path: string) => `vscode-remote://127.0.0.1:${host.port}${path}`;
  const payload: [string, string][] = [
    ['extensionDevelopmentPath', remote(workbench.extension)],
    ['skipWelcome', 'true'],
  ];
  if (workbench.tests !== undefined) payload.push(['extensionTestsPath', remote(workbench.tests)]);
  const query = new URLSearchParams({ folder: workbench.workspace, payload: JSON.stringify(payload) });
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
