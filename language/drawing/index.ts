export type { Drawing } from './drawing.ts';
export { type Exploded, type ExplodedOptions, explodedOf } from './exploded.ts';
export { type Strip, type StripOptions, stripOf } from './strip.ts';
export type { Presence } from './strip-states.ts';
export { svgOf } from './svg.ts';
export { type DrawingWords, englishWords } from './words.ts';
