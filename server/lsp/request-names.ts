/** The sheet of what stands at a place of a document: {@link SheetQuestion} to {@link SheetAnswer}. */
export const sheetMethod = 'handtight/sheet';

/** Prints what stands at a place of a document: {@link PrintQuestion} to {@link PrintAnswer}. */
export const printMethod = 'handtight/print';

/** Sent by the server after each check: {@link CheckedNotification}. */
export const checkedMethod = 'handtight/checked';
