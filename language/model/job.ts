import type { Procedure } from './procedure.ts';
import type { Named, NameUse } from './source.ts';

/** A work order to print from. */
export interface Job extends Named {
  /** Number of the job, as written. */
  readonly procedure: Procedure;
  readonly revision: string | null;
  readonly customer: string | null;
  /** ISO date. */
  readonly received: string | null;
  readonly units: readonly Unit[];
}

export interface Unit {
  /** Place in the set, as written: 1, 2, … */
  readonly place: string;
  /** Name of one of the procedure's part numbers; null: unknown, or not one of them. */
  readonly number: string | null;
  /** The number as it stands on the body. */
  readonly numberText: string;
  readonly serial: string | null;
  readonly onHold: string | null;
  readonly note: string | null;
  readonly source: NameUse['source'];
}
