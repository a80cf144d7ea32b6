/** The language server in Node: over the channel that the editor names (`--node-ipc`, `--stdio`). */
import { createConnection, ProposedFeatures } from 'vscode-languageserver/node';
import { nodeHost } from '../host/node.ts';
import { serve } from './server.ts';

serve(createConnection(ProposedFeatures.all), nodeHost);
