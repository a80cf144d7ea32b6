/** Shapes of the requests and notifications that the protocol does not have; the server checks every one of them. */

export { checkedMethod, printLinkMethod, printMethod, sheetMethod, specsMethod } from '../server/lsp/request-names.ts';
export type {
  CheckedNotification,
  PrintLinkParams,
  PrintLinkResult,
  PrintParams,
  PrintResult,
  SheetParams,
  SheetResult,
  SpecsResult,
} from '../server/lsp/requests.ts';
