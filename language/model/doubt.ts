import type { Limit, Quantity } from '../quantities/types.ts';
import type { ReadingResult, ShimResult, TorqueResult, Unit } from './job.ts';

/** A figure of a job that cannot be as it is written: nothing may be judged or worked out from it. */
export interface Doubt {
  readonly unit: Unit;
  readonly result: ReadingResult | ShimResult | TorqueResult;
  readonly why: DoubtReason;
}

/** Why a figure cannot be. `name` is the author's title of what was read. */
export type DoubtReason = { readonly name: string; readonly value: Quantity } & (
  | { readonly is: 'zero' | 'beyond all tools' }
  | { readonly is: 'far'; readonly limit: Limit }
  /** The point has slipped: what was meant. */
  | { readonly is: 'slip'; readonly limit: Limit; readonly meant: Quantity }
  | { readonly is: 'wrong tool'; readonly tool: string }
  | { readonly is: 'not in stock'; readonly stock: string; readonly near: readonly Quantity[] }
  | { readonly is: 'over most'; readonly most: Quantity }
);
