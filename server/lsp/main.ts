/** The language server's entry in Node: over the channel that the editor names (`--node-ipc`, `--stdio`). */
import { createConnection, ProposedFeatures } from 'vscode-languageserver/node';
import { serve } from './server.ts';

serve(createConnection(ProposedFeatures.all));
