export { familySvg } from './drawings.ts';
export { type FontFace, type HtmlOptions, htmlOf } from './html.ts';
export type * from './model.ts';
export type { SheetOptions } from './setting.ts';
export { sheetOf } from './sheet.ts';
export { textOf } from './text.ts';
export { typstOf } from './typst.ts';
