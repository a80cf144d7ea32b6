/** The sheet of what is at a place of a document: {@link SheetParams} to {@link SheetResult}. */
export const sheetMethod = 'handtight/sheet';

/** The specifications of what is at a place of a document: {@link PlaceParams} to {@link SpecsResult}. */
export const specsMethod = 'handtight/specs';

/** The drawing of what is at a place of a document: {@link PlaceParams} to {@link DrawingResult}. */
export const drawingMethod = 'handtight/drawing';

/** The state of the unit at a place of a document: {@link PlaceParams} to {@link StateResult}. */
export const stateMethod = 'handtight/state';

/** Prints what is at a place of a document: {@link PrintParams} to {@link PrintResult}. */
export const printMethod = 'handtight/print';

/** Finds what a printed sheet was made from, by the link on it: {@link PrintLinkParams} to {@link PrintLinkResult}. */
export const printLinkMethod = 'handtight/printLink';

/** Lists what a procedure can begin from: {@link FamilyChoicesParams} to {@link FamilyChoicesResult}. */
export const familyChoicesMethod = 'handtight/familyChoices';

/** Writes a first procedure: {@link FirstProcedureParams} to {@link FirstProcedureResult}. */
export const firstProcedureMethod = 'handtight/firstProcedure';

/** Sent by the server after each check: {@link CheckedNotification}. */
export const checkedMethod = 'handtight/checked';
