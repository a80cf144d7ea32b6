/** What a bench is: one file of `benches/`, which exports one as its default, and is called by the name of that file. */
import type { Spread } from './measure/spread.ts';
import type { Peers } from './peers/install.ts';
import type { Folders } from './workload/folders.ts';

export interface Bench {
  /** One line for the list of benches. */
  readonly title: string;
  /** It runs only when it is named. */
  readonly onlyNamed?: true;
  /** Some of its work is done in the process of the bench, which a profile then has to cover. */
  readonly inProcess?: true;
  /** Gives each result as soon as it is there. */
  run(setting: Setting): AsyncIterable<Result>;
}

export interface Setting {
  /** Smaller sizes and fewer rounds, to see that a bench works or whether a change is worth a whole run. */
  readonly quick: boolean;
  /** Fewer rounds of any size: all the targets in a quarter of an hour. */
  readonly brief: boolean;
  /** Roots of the checkouts that are measured: this one, and with `--before FOLDER` another one, built as well. */
  readonly checkouts: readonly Checkout[];
  /** What is measured beside us; null where it could not be installed, which the run has said. */
  readonly peers: Peers | null;
  readonly folders: Folders;
  /** Folder for V8's profiles of our own processes; null where none are wanted. */
  readonly profiles: string | null;
}

export interface Checkout {
  readonly name: string;
  readonly root: string;
}

export type Result = Comparison | Growth | Skipped | Failure;

/** One kind of work, and what was measured beside it in the same run. */
export interface Comparison {
  readonly kind: 'comparison';
  readonly work: string;
  readonly unit: 'ms' | 'MB';
  /** Ours first, then what it is compared with. */
  readonly measured: readonly Measured[];
  readonly limits: readonly Limit[];
}

export interface Measured {
  readonly name: string;
  readonly spread: Spread;
}

/** An upper limit for ours: so many times the median of another one, or a figure in the unit. */
export type Limit = { readonly of: 'median' | 'p95' } & (
  | { readonly times: number; readonly than: string }
  | { readonly most: number }
);

/** How some work grows with the size of what it is done on. */
export interface Growth {
  readonly kind: 'growth';
  readonly work: string;
  /** What is counted, such as `steps`. */
  readonly of: string;
  readonly unit: 'ms' | 'MB';
  readonly points: readonly { readonly size: number; readonly value: number }[];
  /** Most that the exponent may be. */
  readonly most: number;
}

/** Work that there was nothing to measure of, such as a peer that is not installed. */
export interface Skipped {
  readonly kind: 'skipped';
  readonly work: string;
  readonly why: string;
}

/** Work that could not be measured, which is worse than being slow. */
export interface Failure {
  readonly kind: 'failure';
  readonly work: string;
  readonly why: string;
}
