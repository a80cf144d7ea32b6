export type * from './diagnostic.ts';
export type * from './family.ts';
export type * from './job.ts';
export type * from './plan.ts';
export type * from './procedure.ts';
export type * from './shop.ts';
export type * from './source.ts';
export * from './verbs.ts';
