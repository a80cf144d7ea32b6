import type { Family } from '../model/family.ts';
import type { Job } from '../model/job.ts';
import type { Procedure } from '../model/procedure.ts';
import type { Shop } from '../model/shop.ts';
import type { Allow } from '../model/source.ts';
import type { Defect, Reference, ResolveProblem } from './context.ts';

/** All that the files declare, as plain data in trade terms. */
export interface ResolvedWorkspace {
  readonly shops: readonly Shop[];
  readonly families: readonly Family[];
  readonly procedures: readonly Procedure[];
  readonly jobs: readonly Job[];
  /** Every concession, wherever it is. */
  readonly concessions: readonly Allow[];
  readonly problems: readonly ResolveProblem[];
  readonly references: readonly Reference[];
  /** Declarations that are missing above because something threw. */
  readonly defects: readonly Defect[];
}
