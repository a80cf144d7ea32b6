import {
  type Connection,
  type ConnectionOptions,
  type InitializeParams,
  LSPErrorCodes,
  type Message,
} from 'vscode-languageserver';
import { initializeResult } from './capabilities.ts';

/** Serves a client from `initialized` on. What it gives is called before each message. */
export type Serve = (connection: Connection, params: InitializeParams) => () => void;

/**
 * Answers `initialize`, and has the rest of the server loaded with the first message after it: an editor that starts waits
 * for little, and what it sends meanwhile waits its turn.
 */
export function start(connect: (options: ConnectionOptions) => Connection, load: () => Promise<Serve>): void {
  let params: InitializeParams | null = null;
  let loading: Promise<() => void> | null = null;
  let notice: (() => void) | null = null;

  async function whenLoaded(first: InitializeParams, message: Message, next: (message: Message) => void) {
    loading ??= load().then((serve) => serve(connection, first));
    notice = await loading;
    next(message);
  }

  const connection = connect({
    messageStrategy: {
      handleMessage(message, next) {
        if (params !== null && notice === null) return whenLoaded(params, message, next);
        notice?.();
        return next(message);
      },
    },
    // A request that is canceled before its turn has come is not worked on. The connection fills in its id.
    connectionStrategy: {
      cancelUndispatched: (message) => ({
        jsonrpc: message.jsonrpc,
        id: null,
        error: { code: LSPErrorCodes.RequestCancelled, message: 'The request was canceled.' },
      }),
    },
  });
  connection.onInitialize((given) => {
    params = given;
    return initializeResult(given.capabilities);
  });
  connection.listen();
}
