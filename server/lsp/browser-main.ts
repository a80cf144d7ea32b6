/** The language server's entry in a worker of a browser. */
import {
  BrowserMessageReader,
  BrowserMessageWriter,
  createConnection,
  ProposedFeatures,
} from 'vscode-languageserver/browser';
import { browserHost } from '../host/browser.ts';
import { serve } from './server.ts';

const worker = globalThis as unknown as ConstructorParameters<typeof BrowserMessageReader>[0];
const connection = createConnection(
  ProposedFeatures.all,
  new BrowserMessageReader(worker),
  new BrowserMessageWriter(worker),
);
serve(connection, browserHost(connection));
