import { type CancellationToken, LSPErrorCodes, ResponseError } from 'vscode-languageserver';

/**
 * A handler that answers no request which was canceled before it began, or while it waited.
 * @param notice called with each request
 */
export function canceled(notice: () => void) {
  return <Params, Result>(handler: (params: Params) => Result | Promise<Result>) =>
    (params: Params, token: CancellationToken): Result | Promise<Result> => {
      notice();
      refuse(token);
      const answer = handler(params);
      if (!(answer instanceof Promise)) return answer;
      return answer.then((result) => {
        refuse(token);
        return result;
      });
    };
}

function refuse(token: CancellationToken): void {
  if (token.isCancellationRequested)
    throw new ResponseError(LSPErrorCodes.RequestCancelled, 'The request was canceled.');
}
