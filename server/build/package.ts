/**
 * Packs the extension, one file per platform: `npm run package [-- TARGET…]`. Only the typesetter is native, so each file has that
 * of its own platform. What is packed is listed in .vscodeignore; of the manifest it has what
 * an editor reads.
 */
import { execFileSync } from 'node:child_process';
import { cpSync, existsSync, mkdirSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { createVSIX, listFiles } from '@vscode/vsce';
import { localized } from './manifest-words.ts';
import { packagedReadme } from './package-readme.ts';

/** Platforms of the editor, each with the package of the typesetter for it. */
export const targets: Readonly<Record<string, string>> = {
  'linux-x64': 'linux-x64-gnu',
  'linux-arm64': 'linux-arm64-gnu',
  'linux-armhf': 'linux-arm-gnueabihf',
  'alpine-x64': 'linux-x64-musl',
  'alpine-arm64': 'linux-arm64-musl',
  'darwin-x64': 'darwin-x64',
  'darwin-arm64': 'darwin-arm64',
  'win32-x64': 'win32-x64-msvc',
  'win32-arm64': 'win32-arm64-msvc',
};

/** The platform that is a browser: it has no typesetter, and none of the programs for Node. The others have none for it. */
const webTarget = 'web';
const onlyForNode = /^(?:out\/.*\.[cm]js|node_modules\/)/u;
const onlyForBrowser = /^out\/(?:extension-browser|server-worker)\.js$/u;

/** Largest size of a packed file, bytes: where there is a typesetter it takes most of it. */
const sizeBudget = (target: string) => (target === webTarget ? 3_000_000 : 32_000_000);

/** Every file that is published. */
const allTargets = [...Object.keys(targets), webTarget];

const typesetter = '@myriaddreamin/typst-ts-node-compiler';
const folder = 'out/package';

/**
 * What is not packed of the manifest: everything of development. An editor in a browser would take `type` to mean that its entry, which
 * must end in .js, is a module, and refuse it; the programs say by their own endings what they are.
 */
const ofDevelopment = ['type', 'scripts', 'devDependencies', 'bin', 'workspaces', 'packageManager', 'overrides'];

/** The manifest as it is packed, but for its dependencies. */
export function packedManifest() {
  const manifest = JSON.parse(readFileSync('package.json', 'utf8'));
  for (const key of ofDevelopment) delete manifest[key];
  return manifest;
}

export async function packFor(target: string): Promise<string> {
  const native = targets[target];
  if (native === undefined && target !== webTarget)
    throw new Error(`${target} is no platform of the editor. There are: ${allTargets.join(', ')}.`);
  const stage = join(folder, target);
  rmSync(stage, { recursive: true, force: true });
  const listed = await listFiles({ cwd: '.' });
  const isPacked = (path: string) =>
    native === undefined
      ? !onlyForNode.test(path)
      : !onlyForBrowser.test(path) && !path.startsWith(`node_modules/${typesetter}-`);
  for (const file of listed.filter(isPacked)) {
    mkdirSync(dirname(join(stage, file)), { recursive: true });
    cpSync(file, join(stage, file));
  }
  const manifest = packedManifest();
  // The bundles hold the others.
  const beside = Object.keys(manifest.dependencies).filter((name) => existsSync(join(stage, 'node_modules', name)));
  manifest.dependencies = Object.fromEntries(beside.map((name) => [name, manifest.dependencies[name]]));
  // The entry that is not in this file.
  delete manifest[native === undefined ? 'main' : 'browser'];
  const { displayName, description, capabilities, contributes } = manifest;
  const { part, files } = localized({ displayName, description, capabilities, contributes });
  Object.assign(manifest, part);
  for (const [name, text] of Object.entries(files)) writeFileSync(join(stage, name), text);
  writeFileSync(join(stage, 'package.json'), `${JSON.stringify(manifest, null, 2)}\n`);
  writeFileSync(join(stage, 'README.md'), packagedReadme(readFileSync('README.md', 'utf8')));
  cpSync('.vscodeignore', join(stage, '.vscodeignore'));
  if (native !== undefined) addTypesetter(stage, native);
  const packed = join(folder, `handtight-${target}-${manifest.version}.vsix`);
  await createVSIX({
    cwd: stage,
    target,
    packagePath: packed,
    readmePath: 'README.md',
    rewriteRelativeLinks: false,
    allowMissingRepository: true,
  });
  rmSync(stage, { recursive: true });
  const { size } = statSync(packed);
  if (size > sizeBudget(target))
    throw new Error(
      `${packed} has ${megabytes(size)}, over the budget of ${megabytes(sizeBudget(target))}. See what has grown: vsce ls --tree`,
    );
  return packed;
}

/** The typesetter's program for a platform: from this installation, or from the registry of packages. */
function addTypesetter(stage: string, native: string): void {
  const name = `${typesetter}-${native}`;
  const to = join(stage, 'node_modules', name);
  const here = join('node_modules', name);
  if (existsSync(here)) {
    cpSync(here, to, { recursive: true });
    return;
  }
  const { version } = JSON.parse(readFileSync(join('node_modules', typesetter, 'package.json'), 'utf8'));
  const download = join(stage, '.download');
  mkdirSync(download, { recursive: true });
  execFileSync('npm', ['pack', `${name}@${version}`, '--pack-destination', download, '--silent'], {
    stdio: ['ignore', 'ignore', 'inherit'],
    shell: process.platform === 'win32',
  });
  const [archive] = readdirSync(download);
  mkdirSync(to, { recursive: true });
  execFileSync('tar', ['-xzf', join(download, archive!), '-C', to, '--strip-components=1']);
  rmSync(download, { recursive: true });
}

function megabytes(bytes: number): string {
  return `${(bytes / 1e6).toFixed(1)} MB`;
}

/** The platform that this runs on. */
function ownTarget(): string {
  return `${process.platform}-${process.arch}`;
}

if (import.meta.main) {
  const asked = process.argv.slice(2);
  const wanted = asked.includes('all') ? allTargets : asked.length === 0 ? [ownTarget()] : asked;
  for (const target of wanted) {
    const packed = await packFor(target);
    console.log(`${packed}  ${megabytes(statSync(packed).size)}`);
  }
}
