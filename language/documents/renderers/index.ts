export { renderText } from '../texts.ts';
export { type FontFace, type HtmlOptions, renderDrawingsHtml, renderHtml } from './html.ts';
export { renderSpecsHtml, type SpecsHtmlOptions } from './specs-html.ts';
export { renderSpecsText, type SpecsTextOptions } from './specs-text.ts';
export { renderTypst } from './typst.ts';
