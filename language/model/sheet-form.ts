/** What is printed of a procedure: all of it, what is written down for a job, or what is done and why. */
export const sheetForms = ['card', 'record', 'instruction'] as const;
export type SheetForm = (typeof sheetForms)[number];
