/** Shapes of the requests and notifications that the protocol does not have; the server checks every one of them. */

export {
  checkedMethod,
  drawingMethod,
  familyChoicesMethod,
  firstProcedureMethod,
  printLinkMethod,
  printMethod,
  sheetMethod,
  specsMethod,
  stateMethod,
} from '../server/lsp/request-names.ts';
export type {
  CheckedNotification,
  DrawingResult,
  FamilyChoicesParams,
  FamilyChoicesResult,
  FirstProcedureParams,
  FirstProcedureResult,
  PlaceParams,
  PrintLinkParams,
  PrintLinkResult,
  PrintParams,
  PrintResult,
  SheetParams,
  SheetResult,
  SpecsResult,
  StateResult,
} from '../server/lsp/requests.ts';
