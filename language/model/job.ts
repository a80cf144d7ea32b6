import type { Quantity } from '../quantities/types.ts';
import type { Procedure } from './procedure.ts';
import type { Named, NameUse, Source } from './source.ts';

/** A work order to print from. */
export interface Job extends Named {
  /** Number of the job, as written. */
  readonly procedure: Procedure;
  readonly revision: string | null;
  readonly customer: string | null;
  /** ISO date. */
  readonly received: string | null;
  /** Number of the order that it is a part of, with jobs by other procedures; null: the job is the order. */
  readonly order: string | null;
  /** What was written down when it came in. */
  readonly intake: readonly FactResult[];
  /** Readings of the shop's masters: what shows that a tester was right on a day. */
  readonly checks: readonly ReadingResult[];
  readonly units: readonly Unit[];
  /** A revision that was issued after the one that the job names and is judged by. */
  readonly newerIssue?: NewerIssue;
}

export interface NewerIssue {
  readonly revision: string;
  /** ISO date. */
  readonly issuedOn: string;
  /** Where the job names its own. */
  readonly at: Source;
}

export interface Unit {
  /** Place in the set, as written: 1, 2, … */
  readonly place: string;
  /** Name of one of the procedure's part numbers; null: unknown, or not one of them. */
  readonly number: string | null;
  /** The number as marked on the body. */
  readonly numberText: string;
  readonly serial: string | null;
  /** `serial none "ground off"`: why it has none; null: not said. */
  readonly noSerial: string | null;
  readonly onHold: string | null;
  readonly note: string | null;
  /** What was found, fitted, read and done, in the order in which it is written. */
  readonly results: readonly Result[];
  readonly source: NameUse['source'];
}

/** One thing written down of a unit. */
export type Result =
  | ReadingResult
  | VerdictResult
  | WordsResult
  | ShimResult
  | TorqueResult
  | RenewedResult
  | RemarkResult
  | DoneResult
  | FactResult;

interface At {
  readonly source: Source;
}

interface Read extends At {
  /** `opening 254 bar on PG-400 by "A. B." on 2026-10-05`: where it is not the next `done by` that says so. */
  readonly done?: { readonly by: string | null; readonly on: string | null };
}

/** `opening 253 bar on PG-400`, `as found opening 214 bar`. */
export interface ReadingResult extends Read {
  readonly form: 'reading';
  /** A test, a reading or a spec of the procedure. */
  readonly name: string;
  readonly asFound: boolean;
  readonly value: Quantity;
  /** The tool that showed the figure. */
  readonly tool: string | null;
  /** A gauge that was watched while a time was taken (`back-leak 9 s on PG-400`): it shows no seconds. */
  readonly watched: string | null;
  readonly text: string | null;
}

/** `seat-leak pass`. */
export interface VerdictResult extends Read {
  readonly form: 'verdict';
  readonly name: string;
  /** `as found seat-leak fail`: it passes nothing. */
  readonly asFound: boolean;
  readonly passed: boolean;
  /** The gauge that it was watched on (`seat-leak pass on PG-400`). */
  readonly watched: string | null;
  readonly text: string | null;
}

/** `trim "A7K2Q9" at cylinder 3`: what a `record` asks for. */
export interface WordsResult extends At {
  readonly form: 'words';
  readonly name: string;
  readonly text: string;
}

/** `shim out 1.30 mm`, `shim in 1.45 mm`: what lay in it, and what was fitted. */
export interface ShimResult extends Read {
  readonly form: 'shim';
  readonly part: string;
  readonly fitted: boolean;
  readonly size: Quantity;
  /** What it was measured with (`shim out 1.30 mm with MIC-1`). */
  readonly tool: string | null;
}

/** `torque nut 60 N·m with TW-80`. */
export interface TorqueResult extends Read {
  readonly form: 'torque';
  readonly part: string;
  readonly value: Quantity;
  readonly tool: string | null;
}

/** `renewed spring, washer`: what went in new. */
export interface RenewedResult extends At {
  readonly form: 'renewed';
  readonly part: string;
  /** `renewed spring number "2 417" batch "L-7"`: the maker's own. */
  readonly number?: string;
  readonly batch?: string;
}

/** What is written down and is no result: by its word, and what that takes. */
export interface FactResult extends At {
  readonly form: 'fact';
  readonly word: FactWord;
  /** A part, a test, or what was done with a core. */
  readonly name: string | null;
  readonly text: string | null;
  /** A serial, the number of a paper, a hash, a cause. */
  readonly label: string | null;
  readonly by: string | null;
  /** ISO date. */
  readonly on: string | null;
}

export const factWords = [
  'brought',
  'taken-in',
  'complaint',
  'missing',
  'photo',
  'promised',
  'quote',
  'approved',
  'waiting',
  'sent-out',
  'booked-in',
  'exchange',
  'core',
  'comeback',
  'shop-serial',
  'concession',
  'deviation',
  'moved',
  'again',
] as const;

export type FactWord = (typeof factWords)[number];

/** `as found "light rust"`. */
export interface RemarkResult extends At {
  readonly form: 'remark';
  readonly asFound: boolean;
  readonly text: string;
}

/** `done by "…" on 2026-11-05`. */
export interface DoneResult extends At {
  readonly form: 'done';
  readonly by: string;
  /** ISO date. */
  readonly on: string | null;
}
