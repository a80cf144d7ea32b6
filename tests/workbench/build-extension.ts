/** Builds only what the editor tests need, into out/: for work on the editor's side without the whole build. */
import { join } from 'node:path';
import { build } from 'esbuild';
import { root } from './host.ts';

const common = { bundle: true, platform: 'node', format: 'cjs', target: 'node22', sourcemap: 'linked', logLevel: 'warning' } as const;

await build({ ...common, entryPoints: [join(root, 'extension/client.ts')], outfile: join(root, 'out/extension.cjs'), external: ['vscode'] });
await build({
  ...common,
  entryPoints: [join(root, 'server/lsp/main.ts')],
  outfile: join(root, 'out/server.cjs'),
  // Fonts and the typesetter are found beside the bundle, through createRequire(import.meta.url).
  banner: { js: 'const importMetaUrl = require("node:url").pathToFileURL(__filename).href;' },
  define: { 'import.meta.url': 'importMetaUrl' },
});
