import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const here = fileURLToPath(new URL('.', import.meta.url));

/** What speed is measured against, by the programs that run it. */
export interface Peers {
  /** Microsoft's JSON language server, as it is packed for other editors. */
  readonly jsonServer: string;
  /** Reads, validates and reports a folder of YAML: `yaml` and `ajv`. */
  readonly checkYaml: string;
  /** The module `yaml`. */
  readonly yaml: string;
}

/** Installs the peers if they are not there in the versions of the lock. Without a network it gives up and says why. */
export function installPeers(): Peers | { readonly why: string } {
  if (!isInstalled()) {
    const args = ['ci', '--ignore-scripts', '--no-audit', '--no-fund', '--fetch-retries=1', '--fetch-timeout=20000'];
    const { status, stderr, error } = spawnSync('npm', args, {
      cwd: here,
      encoding: 'utf8',
      timeout: 180_000,
      shell: process.platform === 'win32',
    });
    if (status !== 0) {
      const said = error?.message ?? stderr.split('\n').find((line) => /npm err/iu.test(line)) ?? `exit code ${status}`;
      return { why: `npm ci in tests/bench/peers failed: ${said}` };
    }
  }
  return {
    jsonServer: join(here, 'node_modules/vscode-langservers-extracted/bin/vscode-json-language-server'),
    checkYaml: join(here, 'check-yaml.mjs'),
    yaml: join(here, 'node_modules/yaml/dist/index.js'),
  };
}

/** npm leaves a copy of the lock with what it has installed. */
function isInstalled(): boolean {
  const versions = (path: string) => {
    const { packages } = JSON.parse(readFileSync(join(here, path), 'utf8')) as {
      packages: Record<string, { version: string }>;
    };
    return Object.entries(packages).flatMap(([name, { version }]) => (name === '' ? [] : [`${name} ${version}`]));
  };
  try {
    const installed = new Set(versions('node_modules/.package-lock.json'));
    return versions('package-lock.json').every((one) => installed.has(one));
  } catch {
    return false;
  }
}
