/** Shapes of the requests and notifications that the protocol does not have; the server checks every one of them. */

export {
  checkedMethod,
  familyChoicesMethod,
  firstProcedureMethod,
  printLinkMethod,
  printMethod,
  sheetMethod,
  specsMethod,
} from '../server/lsp/request-names.ts';
export type {
  CheckedNotification,
  FamilyChoicesParams,
  FamilyChoicesResult,
  FirstProcedureParams,
  FirstProcedureResult,
  PrintLinkParams,
  PrintLinkResult,
  PrintParams,
  PrintResult,
  SheetParams,
  SheetResult,
  SpecsResult,
} from '../server/lsp/requests.ts';
