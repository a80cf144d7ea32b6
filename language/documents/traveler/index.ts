export type * from '../model.ts';
export type { SheetOptions } from '../print-context.ts';
export { buildSheet } from './sheet.ts';
