/** The language server in Node: over the channel that the editor names (`--node-ipc`, `--stdio`). */
import { createConnection, ProposedFeatures } from 'vscode-languageserver/node';
import { start } from './start.ts';

start(
  (options) => createConnection(ProposedFeatures.all, options),
  async () => (await import('./node-server.ts')).serve,
);
