/** Builds what runs: the command, the language server, the extension. `--watch` goes on building. */
import { writeFileSync } from 'node:fs';
import { type BuildOptions, context, type Metafile } from 'esbuild';
import { beside, bundled, noticesOf, packageIn } from './notices.ts';

const requireInModule =
  'import { createRequire as handtightRequire } from "node:module";\nconst require = handtightRequire(import.meta.url);';

const common: BuildOptions = {
  bundle: true,
  platform: 'node',
  target: 'node20',
  // Native code and fonts stay in their packages.
  external: ['vscode', '@myriaddreamin/typst-ts-node-compiler', '@expo-google-fonts/*', 'dejavu-fonts-ttf'],
  // A package with two builds gives the one whose imports can be followed: jsonc-parser's other one asks at run time.
  mainFields: ['module', 'main'],
  sourcemap: true,
  sourcesContent: false,
  minify: true,
  keepNames: true,
  logLevel: 'warning',
  metafile: true,
};

const builds: BuildOptions[] = [
  {
    ...common,
    entryPoints: ['server/cli/main.ts'],
    outfile: 'out/handtight.mjs',
    format: 'esm',
    // Packages written for CommonJS ask for require inside a module.
    banner: { js: `#!/usr/bin/env node\n${requireInModule}` },
  },
  {
    ...common,
    entryPoints: ['server/lsp/main.ts'],
    outfile: 'out/server.cjs',
    format: 'cjs',
    define: { 'import.meta.url': 'handtightUrl' },
    banner: { js: 'const handtightUrl = require("node:url").pathToFileURL(__filename).href;' },
  },
  { ...common, entryPoints: ['extension/client.ts'], outfile: 'out/extension.cjs', format: 'cjs' },
];

const watching = process.argv.includes('--watch');
const metafiles: Metafile[] = [];
for (const options of builds) {
  const build = await context(options);
  if (watching) await build.watch();
  else {
    const { metafile } = await build.rebuild();
    if (metafile !== undefined) metafiles.push(metafile);
    await build.dispose();
  }
}
if (!watching) {
  writeFileSync('out/metafiles.json', JSON.stringify(metafiles));
  const packages = [...bundled(metafiles), ...beside('.')].map((folder) => packageIn('.', folder));
  writeFileSync('out/THIRD-PARTY-NOTICES.txt', noticesOf(packages));
}
