export type * from '../model.ts';
export type { SheetOptions } from '../print-context.ts';
export { sheetOf } from './sheet.ts';
