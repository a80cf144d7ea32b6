/** Builds the suite into one file that an extension host can load. */
import { join } from 'node:path';
import { build } from 'esbuild';
import { root } from './host.ts';

/** Bundles tests/workbench/suite/index.ts; the path of what came out, which exports `run`. */
export async function bundleSuite(): Promise<string> {
  const outfile = join(root, 'out/tests/workbench.cjs');
  await build({
    entryPoints: [join(root, 'tests/workbench/suite/index.ts')],
    bundle: true,
    platform: 'node',
    format: 'cjs',
    target: 'node22',
    external: ['vscode'],
    outfile,
    sourcemap: 'inline',
    logLevel: 'warning',
  });
  return outfile;
}
