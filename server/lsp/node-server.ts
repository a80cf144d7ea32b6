import { nodeHost } from '../host/node.ts';
import { serve as serveFrom } from './server.ts';
import type { Serve } from './start.ts';

/** The server with a machine around it. Bundled it is a file of its own, which is loaded once `initialize` is answered. */
export const serve: Serve = (connection, params) => serveFrom(connection, nodeHost(connection), params);
