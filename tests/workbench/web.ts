/**
 * Drives the extension in the extension host of the browser: `npm run test:web`. The workbench is the page of the VS Code server, changed
 * so that there is no server behind it: all runs in the browser, and the folder that is open is on no disk.
 */
import * as assert from 'node:assert/strict';
import { createReadStream, existsSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { join, normalize } from 'node:path';
import { build } from 'esbuild';
import type { Page } from 'playwright-core';
import { packedManifest } from '../../server/build/package.ts';
import { command, startBrowser } from './browser.ts';
import { type Host, root, startHost, undisturbed } from './host.ts';

/** Where the extensions are, at the address of the page: ours as it is packed, and the one that provides the folder. */
const own = '/handtight';
const virtual = '/virtual';

/** The manifest of that extension. */
const manifest = {
  name: 'virtual',
  publisher: 'handtight-tests',
  version: '1.0.0',
  engines: { vscode: '*' },
  browser: './extension.js',
  activationEvents: ['onFileSystem:memfs'],
  capabilities: { virtualWorkspaces: true, untrustedWorkspaces: { supported: true } },
};

/** The extension that provides the folder, as it is served. */
async function virtualExtension(): Promise<ReadonlyMap<string, string>> {
  const { outputFiles } = await build({
    entryPoints: [join(root, 'tests/workbench/virtual/extension.ts')],
    bundle: true,
    platform: 'browser',
    format: 'cjs',
    external: ['vscode'],
    write: false,
  });
  const workspace = join(root, 'tests/workbench/workspace');
  const names = readdirSync(workspace).filter((name) => name.endsWith('.rebuild'));
  const files = names.map((name) => [`/shop/${name}`, readFileSync(join(workspace, name), 'utf8')]);
  return new Map([
    [`${own}/package.json`, JSON.stringify(packedManifest())],
    [`${virtual}/package.json`, JSON.stringify(manifest)],
    [`${virtual}/extension.js`, outputFiles[0]!.text],
    [`${virtual}/files.json`, JSON.stringify(Object.fromEntries(files))],
  ]);
}

/** What the editor's page and its script are changed into: there is no server, and both extensions are under development. */
function withoutServer(path: string, text: string, address: string): string {
  if (path === '/')
    return text.replace(
      /(id="vscode-workbench-web-configuration" data-settings=")([^"]*)"/u,
      (_, before: string, settings: string) => {
        const configuration = JSON.parse(settings.replaceAll('&quot;', '"'));
        delete configuration.remoteAuthority;
        const extension = (at: string) => ({ scheme: 'http', authority: address, path: at });
        configuration.developmentOptions = { extensions: [extension(own), extension(virtual)] };
        configuration.configurationDefaults = undisturbed;
        return `${before}${JSON.stringify(configuration).replaceAll('"', '&quot;')}"`;
      },
    );
  // This script takes whoever serves it for the machine that it works on.
  const local = text.replace(',remoteAuthority:location.host}', '}');
  const done = local.replace(/(\.file\(this\.userDataPath\)\.with\(\{scheme:\w+)\.vscodeRemote/u, '$1.vscodeUserData');
  assert.ok(local !== text && done !== local, 'the script names its server in both places');
  return done;
}

/** Serves the editor's page and all that it loads from one address. */
async function serveWeb(host: Host): Promise<Server> {
  const made = await virtualExtension();
  const server = createServer(async ({ url = '/', headers }, response) => {
    const { pathname } = new URL(url, host.origin);
    const path = decodeURIComponent(pathname);
    if (/\.js$/u.test(path)) response.setHeader('Content-Type', 'text/javascript');
    const text = made.get(path);
    if (text !== undefined) return response.end(text);
    if (path.startsWith(`${own}/`)) {
      const file = join(root, normalize(path.slice(own.length)));
      if (!existsSync(file) || !statSync(file).isFile()) return response.writeHead(404).end();
      return createReadStream(file).pipe(response);
    }
    const from = await fetch(host.origin + url, { headers: { accept: headers.accept ?? '*/*' } });
    const type = from.headers.get('content-type');
    const policy = from.headers.get('content-security-policy');
    if (type !== null) response.setHeader('Content-Type', type);
    if (policy !== null) response.setHeader('Content-Security-Policy', policy);
    const changes = path === '/' || path.endsWith('/browser/workbench/workbench.js');
    response.writeHead(from.status);
    return response.end(
      changes ? withoutServer(path, await from.text(), headers.host!) : Buffer.from(await from.arrayBuffer()),
    );
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  return server;
}

/** Waits for a text on the page. */
async function see(page: Page, what: string, selector: string, text: RegExp): Promise<void> {
  try {
    await page.locator(selector).filter({ hasText: text }).first().waitFor({ timeout: 20_000 });
  } catch {
    throw new Error(`waited in vain for ${what}`);
  }
}

async function drive(page: Page): Promise<void> {
  await page.locator('.explorer-folders-view .monaco-list-row', { hasText: 'procedure.rebuild' }).dblclick();
  const line = page.locator('.view-line', { hasText: 'torque nut to nut-fit' });
  await line.waitFor();

  await line.locator('span', { hasText: 'torque' }).first().dblclick();
  await page.keyboard.press('Home');
  await page.keyboard.type('x');
  await page.locator('.monaco-editor .squiggly-error').first().waitFor();
  await command(page, 'View: Focus Problems');
  await see(page, 'the finding in the list', '.markers-panel .monaco-list-row', /Did you mean torque/u);
  await command(page, 'View: Toggle Panel Visibility');

  await page.locator('.view-line', { hasText: 'slacken nut' }).locator('span', { hasText: 'nut' }).last().hover();
  await see(page, 'the hover on a part', '.monaco-hover', /part nut/u);

  await command(page, 'Handtight: Open Sheet to the Side');
  await see(page, 'the sheet', '.tab', /Sheet: Rebuild and set/u);
  const view = page.frameLocator('iframe.webview.ready').frameLocator('#active-frame').frameLocator('#sheet');
  await view.getByText('Rebuild and set').first().waitFor();

  // There is no typesetter, and no disk: the sheet is offered as a page.
  await page.locator('.explorer-folders-view .monaco-list-row', { hasText: 'clean.rebuild' }).dblclick();
  await see(page, 'the sheet of the other procedure', '.tab', /Sheet: (?!Rebuild and set)/u);
  await command(page, 'Handtight: Print to PDF');
  await page.locator('.notification-toast .monaco-button', { hasText: 'Save as HTML' }).click();
  await page.locator('.quick-input-widget input').waitFor();
  await page.keyboard.press('Enter');
  await see(page, 'the question about the new folder', '.quick-input-widget', /traveler does not exist/u);
  await page.keyboard.press('Enter');
  await see(page, 'where it was saved', '.notification-toast', /Saved to traveler\/[\w-]+\.html/u);
}

const host = await startHost(undisturbed);
const server = await serveWeb(host);
const browser = await startBrowser();
let count = '0 passed, 1 failed';
try {
  const page = await browser.newPage({ viewport: { width: 1280, height: 800 } });
  if (process.env.VERBOSE) page.on('console', (message) => console.log(`[page] ${message.text()}`));
  const query = new URLSearchParams({ folder: 'memfs:/shop', payload: JSON.stringify([['skipWelcome', 'true']]) });
  await page.goto(`http://127.0.0.1:${(server.address() as AddressInfo).port}/?${query}`);
  try {
    await drive(page);
    count = '1 passed, 0 failed';
  } finally {
    if (process.env.PICTURE) await page.screenshot({ path: process.env.PICTURE });
  }
} catch (error) {
  console.error(error);
  process.exitCode = 1;
} finally {
  await browser.close();
  server.closeAllConnections();
  server.close();
  await host.stop();
}
console.log(count);
