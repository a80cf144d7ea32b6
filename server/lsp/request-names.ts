/** The sheet of what is at a place of a document: {@link SheetQuestion} to {@link SheetAnswer}. */
export const sheetMethod = 'handtight/sheet';

/** The specifications of what is at a place of a document: {@link SheetQuestion} to {@link SpecsAnswer}. */
export const specsMethod = 'handtight/specs';

/** Prints what is at a place of a document: {@link PrintQuestion} to {@link PrintAnswer}. */
export const printMethod = 'handtight/print';

/** Finds what a printed sheet was made of: {@link OriginQuestion} to {@link OriginAnswer}. */
export const originMethod = 'handtight/origin';

/** Sent by the server after each check: {@link CheckedNotification}. */
export const checkedMethod = 'handtight/checked';
