export { type FontFace, type HtmlOptions, htmlOf } from './html.ts';
export { type SpecsHtmlOptions, specsHtml } from './specs-html.ts';
export { type SpecsTextOptions, specsText } from './specs-text.ts';
export { textOf } from './text.ts';
export { typstOf } from './typst.ts';
