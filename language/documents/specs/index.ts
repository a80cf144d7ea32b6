export type * from './model.ts';
export { missingCount, specsOf } from './specs.ts';
