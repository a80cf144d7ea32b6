import { type CancellationToken, LSPErrorCodes, ResponseError } from 'vscode-languageserver';

/** A handler that takes its time, and gives no answer that nobody needs anymore. */
export function unlessCanceled<Params, Result>(handler: (params: Params) => Promise<Result>) {
  return async (params: Params, token: CancellationToken): Promise<Result> => {
    const result = await handler(params);
    if (token.isCancellationRequested)
      throw new ResponseError(LSPErrorCodes.RequestCancelled, 'The request was canceled.');
    return result;
  };
}
