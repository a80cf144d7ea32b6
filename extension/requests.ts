/** Shapes of the requests and notifications that the protocol does not have; the server checks every one of them. */

export { checkedMethod, printMethod, sheetMethod, specsMethod } from '../server/lsp/request-names.ts';
export type {
  CheckedNotification,
  PrintAnswer,
  PrintQuestion,
  SheetAnswer,
  SheetQuestion,
  SpecsAnswer,
} from '../server/lsp/requests.ts';
