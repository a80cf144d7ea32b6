/** Shapes of the requests and notifications that the protocol does not have; the server checks every one of them. */

export { checkedMethod, originMethod, printMethod, sheetMethod, specsMethod } from '../server/lsp/request-names.ts';
export type {
  CheckedNotification,
  OriginAnswer,
  OriginQuestion,
  PrintAnswer,
  PrintQuestion,
  SheetAnswer,
  SheetQuestion,
  SpecsAnswer,
} from '../server/lsp/requests.ts';
