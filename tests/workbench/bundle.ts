/** Builds the suite into one file that an extension host can load. */
import { join } from 'node:path';
import { build } from 'esbuild';
import { root } from './host.ts';

/**
 * Bundles tests/workbench/suite/index.ts; the path of what came out, which exports `run`.
 * @param only a pattern of the names of the tests that are run; empty: all
 */
export async function bundleSuite(only = process.env.ONLY ?? ''): Promise<string> {
  const outfile = join(root, 'out/tests/workbench.cjs');
  await build({
    entryPoints: [join(root, 'tests/workbench/suite/index.ts')],
    bundle: true,
    platform: 'node',
    format: 'cjs',
    target: 'node22',
    external: ['vscode'],
    define: { 'process.env.ONLY': JSON.stringify(only) },
    outfile,
    sourcemap: 'inline',
    logLevel: 'warning',
  });
  return outfile;
}
