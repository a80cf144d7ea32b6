export { type SpecsHtmlOptions, specsHtml } from './html.ts';
export type * from './model.ts';
export { missingCount, specsOf } from './specs.ts';
export { type SpecsTextOptions, specsText } from './text.ts';
