export type { Drawing } from './drawing.ts';
export { type Exploded, type ExplodedOptions, explodedOf } from './exploded.ts';
export { type DrawingWords, drawingWords } from './labels.ts';
export { type Strip, type StripOptions, stripOf, stripsOf } from './strip.ts';
export type { Presence } from './strip-states.ts';
export { type SvgOptions, svgOf } from './svg.ts';
