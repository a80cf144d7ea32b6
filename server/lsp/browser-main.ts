/** The language server's entry in a worker of a browser. */
import {
  BrowserMessageReader,
  BrowserMessageWriter,
  createConnection,
  ProposedFeatures,
} from 'vscode-languageserver/browser';
import { browserHost } from '../host/browser.ts';
import { serve } from './server.ts';
import { start } from './start.ts';

const worker = globalThis as unknown as ConstructorParameters<typeof BrowserMessageReader>[0];
start(
  (options) =>
    createConnection(ProposedFeatures.all, new BrowserMessageReader(worker), new BrowserMessageWriter(worker), options),
  async () => (connection, params) => serve(connection, browserHost(connection), params),
);
