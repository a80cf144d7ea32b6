export { familySvg } from './drawings.ts';
export { type FontFace, type HtmlOptions, htmlOf, htmlOfAll } from '../renderers/html.ts';
export type * from './model.ts';
export type { SheetOptions } from './print-context.ts';
export { sheetOf } from './sheet.ts';
export { textOf } from '../renderers/text.ts';
export { typstOf } from '../renderers/typst.ts';
