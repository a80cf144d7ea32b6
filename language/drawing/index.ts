export type { Drawing } from './drawing.ts';
export { type Exploded, type ExplodedOptions, explodedOf } from './exploded.ts';
export { svgOf } from './svg.ts';
export { type DrawingWords, englishWords } from './words.ts';
