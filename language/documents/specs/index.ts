export type * from './model.ts';
export { buildSpecs, missingCount } from './specs.ts';
