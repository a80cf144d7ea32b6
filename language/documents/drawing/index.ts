export { annotate } from './annotations.ts';
export type { Drawing } from './drawing.ts';
export { buildExploded, type Exploded, type ExplodedOptions } from './exploded.ts';
export type { Annotations } from './facts.ts';
export { type DrawingWords, drawingWords } from './labels.ts';
export { buildStrip, type Strip, type StripOptions, stripsOf } from './strip.ts';
export type { Presence } from './strip-states.ts';
export { renderSvg, type SvgOptions } from './svg.ts';
