/** What is built: the command, the language server for Node and for browsers, the extension. */
import type { BuildOptions, Plugin } from 'esbuild';

const requireInModule =
  'import { createRequire as handtightRequire } from "node:module";\nconst require = handtightRequire(import.meta.url);';

const common: BuildOptions = {
  bundle: true,
  // A package with two builds gives the one whose imports can be followed: jsonc-parser's other one asks at run time.
  mainFields: ['module', 'main'],
  sourcemap: true,
  sourcesContent: false,
  minify: true,
  logLevel: 'warning',
  metafile: true,
};

const node: BuildOptions = {
  ...common,
  platform: 'node',
  target: 'node20',
  // Names stay as they are, for the stacks of errors. To have them kept apart would cost a definition for each closure made.
  minify: false,
  minifySyntax: true,
  minifyWhitespace: true,
  // Native code, WebAssembly and fonts stay in their packages.
  external: [
    'vscode',
    '@myriaddreamin/typst-ts-node-compiler',
    '@expo-google-fonts/*',
    'dejavu-fonts-ttf',
    'node-sqlite3-wasm',
  ],
};

/** Leaves a module out of a bundle, which loads it from a file beside it: what is loaded so is compiled once for all starts. */
function apart(module: string, file: string): Plugin {
  return {
    name: 'apart',
    setup({ onResolve }) {
      onResolve({ filter: /^\./ }, ({ path }) => (path === module ? { path: file, external: true } : undefined));
    },
  };
}

/** Has the parts of the language server share one copy of the protocol: an error of one is known to the other. */
const protocolApart: Plugin = {
  name: 'protocol-apart',
  setup({ onResolve }) {
    onResolve({ filter: /^vscode-languageserver(?:\/node)?$/ }, () => ({ path: './protocol.cjs', external: true }));
  },
};

/** The language server for a worker of a browser: nothing of Node, nothing beside it. */
export const browserWorker: BuildOptions = {
  ...common,
  platform: 'browser',
  target: 'es2022',
  entryPoints: ['server/lsp/browser-main.ts'],
  outfile: 'out/server-worker.js',
  format: 'iife',
  loader: { '.ttf': 'dataurl' },
};

/** What is loaded later is required: of a file that is imported, Node first searches the whole text for its exports. */
const required = { 'dynamic-import': false };

export const bundles: readonly BuildOptions[] = [
  {
    ...node,
    entryPoints: ['server/cli/main.ts'],
    outfile: 'out/handtight.mjs',
    format: 'esm',
    banner: { js: '#!/usr/bin/env node' },
    plugins: [apart('./run.ts', './command.mjs')],
  },
  {
    ...node,
    entryPoints: ['server/cli/run.ts'],
    outfile: 'out/command.mjs',
    format: 'esm',
    // Packages written for CommonJS ask for require inside a module.
    banner: { js: requireInModule },
    plugins: [apart('../mcp/serve.ts', './mcp.mjs')],
  },
  {
    ...node,
    entryPoints: ['server/mcp/serve.ts'],
    outfile: 'out/mcp.mjs',
    format: 'esm',
    banner: { js: requireInModule },
  },
  {
    ...node,
    entryPoints: ['server/host/threads/check-thread.ts'],
    outfile: 'out/check-thread.mjs',
    format: 'esm',
    banner: { js: requireInModule },
  },
  {
    ...node,
    entryPoints: ['server/lsp/main.ts'],
    outfile: 'out/server.cjs',
    format: 'cjs',
    supported: required,
    plugins: [apart('./node-main.ts', './language-server.cjs')],
  },
  {
    ...node,
    entryPoints: ['server/lsp/node-main.ts'],
    outfile: 'out/language-server.cjs',
    format: 'cjs',
    supported: required,
    plugins: [protocolApart, apart('./node-server.ts', './node-server.cjs')],
  },
  { ...node, entryPoints: ['server/lsp/protocol.ts'], outfile: 'out/protocol.cjs', format: 'cjs' },
  {
    ...node,
    entryPoints: ['server/lsp/node-server.ts'],
    outfile: 'out/node-server.cjs',
    format: 'cjs',
    plugins: [protocolApart],
    define: { 'import.meta.url': 'handtightUrl' },
    banner: { js: 'const handtightUrl = require("node:url").pathToFileURL(__filename).href;' },
  },
  browserWorker,
  { ...node, entryPoints: ['extension/node-main.ts'], outfile: 'out/extension.cjs', format: 'cjs' },
  {
    ...common,
    platform: 'browser',
    target: 'es2022',
    entryPoints: ['extension/browser-main.ts'],
    outfile: 'out/extension-browser.js',
    format: 'cjs',
    external: ['vscode'],
  },
];
