/**
 * Runs the editor tests in the real VS Code workbench: `node tests/workbench/run.ts`.
 * Ends with the suite's own code; everything that it started is ended too. With `--install` it only installs the host; with
 * `--packed` it packs the extension, installs that, and runs with it those tests that show that nothing is missing in it; with
 * `--trusted` it runs what the editor does only in a folder that is trusted; with `--keys` only the tests by keys and mouse.
 * ONLY is a pattern of the names of the tests that are run.
 */
import { cpSync, existsSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { packFor } from '../../server/build/package.ts';
import { exposeHooks, openWorkbench, startBrowser, workbenchAddress } from './browser.ts';
import { bundleSuite } from './bundle.ts';
import { installHost, root, startHost, undisturbed } from './host.ts';
import { runKeyboardTests } from './keyboard.ts';

/** The longest that a run may take; a suite that hangs is a failed one. */
const timeLimit = 240_000;

/** What the suite says; the workbench's own chatter is shown with VERBOSE=1. */
const suiteLine = /^(?:ok {3}|FAIL )/;

/** The suite's count: said again at the very end, behind whatever the host still prints. */
let count = '';

const isPacked = process.argv.includes('--packed');
const isTrusted = process.argv.includes('--trusted');
const isByKeys = process.argv.includes('--keys');

/** What shows that a packed extension is whole: the server runs, pages are found, fonts and typesetter are there, samples too. */
const ofPackage =
  'the command prints a PDF|the samples are copied|a new procedure opens|leads to the page of its rule|preview';

/** An extension that does nothing: the editor runs tests for one in development only. */
function emptyExtension(folder: string): string {
  const path = join(folder, 'empty-extension');
  mkdirSync(path, { recursive: true });
  const manifest = { name: 'empty', publisher: 'handtight-tests', version: '1.0.0', engines: { vscode: '*' } };
  writeFileSync(join(path, 'package.json'), JSON.stringify(manifest));
  return path;
}

async function main(): Promise<number> {
  for (const needed of ['out/extension.cjs', 'out/server.cjs']) {
    if (!existsSync(join(root, needed)))
      throw new Error(`${needed} is not there: build the extension first (npm run build).`);
  }
  const tests = await bundleSuite(process.env.ONLY ?? (isPacked ? ofPackage : isTrusted ? '^the task ' : ''));
  const workspace = mkdtempSync(join(tmpdir(), 'handtight-workspace-'));
  cpSync(join(root, 'tests/workbench/workspace'), workspace, { recursive: true });
  const packed = isPacked ? await packFor(`${process.platform}-${process.arch}`) : null;
  const extension = isPacked ? emptyExtension(mkdtempSync(join(tmpdir(), 'handtight-empty-'))) : root;
  const host = await startHost(undisturbed, isTrusted ? ['--disable-workspace-trust'] : [], packed);
  const browser = await startBrowser();
  const open = (folder: string | null) => openWorkbench(browser, host, { workspace: folder, extension: root });
  const runByKeys = async (code: number) => {
    const byKeys = await runKeyboardTests({ open }, workspace);
    const [passed = 0, failed = isByKeys ? 0 : 1] = (count.match(/\d+/gu) ?? []).map(Number);
    count = `${passed + byKeys.passed} passed, ${failed + byKeys.failed} failed`;
    return byKeys.failed > 0 ? 1 : code;
  };
  try {
    if (isByKeys) return await runByKeys(0);
    const page = await browser.newPage({ viewport: { width: 1280, height: 800 } });
    if (process.env.VERBOSE) page.on('console', (message) => console.log(`[page] ${message.text()}`));
    const ended = new Promise<number>((resolve) => {
      const timer = setTimeout(() => {
        console.error(`The suite did not end in ${timeLimit / 1000} s.`);
        resolve(1);
      }, timeLimit);
      timer.unref();
      exposeHooks(page, {
        log(type, values) {
          const text = values.map(String).join(' ').trimEnd();
          if (/^\d+ passed, \d+ failed$/.test(text)) count = text;
          else if (type === 'error' && suiteLine.test(text)) console.error(text);
          else if (suiteLine.test(text) || process.env.VERBOSE) console.log(text);
        },
        exit(code) {
          clearTimeout(timer);
          resolve(code);
        },
      })
        .then(() => page.goto(workbenchAddress(host, { workspace, extension, tests })))
        .catch((error) => {
          console.error(error);
          resolve(1);
        });
    });
    const code = await ended;
    if (code !== 0 && process.env.PICTURE) await page.screenshot({ path: process.env.PICTURE });
    await page.close();
    return isPacked || isTrusted ? code : await runByKeys(code);
  } finally {
    await browser.close();
    await host.stop();
    rmSync(workspace, { recursive: true, force: true });
  }
}

if (process.argv.includes('--install')) installHost();
else
  main().then(
    (code) => {
      console.log(count === '' ? '0 passed, 1 failed' : count);
      process.exit(code);
    },
    (error) => {
      console.error(error);
      console.log('0 passed, 1 failed');
      process.exit(1);
    },
  );
