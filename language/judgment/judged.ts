import type { Asked, RequiredTorque } from '../analysis/held.ts';
import type { Doubt } from '../model/doubt.ts';
import type {
  DoneResult,
  FactResult,
  Job,
  ReadingResult,
  RenewedResult,
  ShimResult,
  TorqueResult,
  Unit,
} from '../model/job.ts';
import type { Procedure } from '../model/procedure.ts';
import type { Asset, Calibration } from '../model/shop.ts';
import type { Difference, Limit } from '../quantities/types.ts';
import type { Window } from '../quantities/window.ts';
import type { ScrewReading } from '../recommendations/unit-screws.ts';
import type { UnitReading } from '../recommendations/unit-shims.ts';
import type { MasterCheck } from './master-checks.ts';
import type { PlaceSpread } from './plan-judge.ts';
import type { Problem } from './problem.ts';
import type { Say } from './say.ts';

/** A last result, and what it was held to. */
export interface Verdict {
  readonly asked: Asked;
  readonly reading: ReadingResult | null;
  /** The verdict that was written; null: nothing that still counts. */
  readonly verdict: boolean | null;
  readonly held: RequiredTorque | null;
  /** What the tool may show by a guarded decision rule; null: the limit itself. */
  readonly guarded: Window | null;
  /** It is outside its limit, or was said to fail: not only something is missing. */
  readonly failed: boolean;
  /** What allows that, for this unit. */
  readonly conceded: FactResult | null;
  readonly problems: readonly Problem[];
}

export interface TorqueVerdict {
  readonly torque: TorqueResult;
  readonly held: RequiredTorque | null;
  readonly problems: readonly Problem[];
}

/** A reading as it came in, and the limit in service. */
export interface TestVerdict {
  readonly name: string;
  readonly reading: ReadingResult | null;
  /** The verdict that was written, or what the limit in service says; null: there is none. */
  readonly verdict: boolean | null;
  readonly held: RequiredTorque | null;
  readonly problems: readonly Problem[];
}

/** The results of a unit that is not on hold. */
export interface LimitVerdict {
  readonly unit: Unit;
  readonly found: readonly TestVerdict[];
  readonly remarks: readonly string[];
  /** Parts that went in new, each once. */
  readonly renewed: readonly RenewedResult[];
  /** What is written down besides. */
  readonly facts: readonly FactResult[];
  readonly shimsOut: readonly ShimResult[];
  readonly shimsIn: readonly ShimResult[];
  readonly torques: readonly TorqueVerdict[];
  /** The tests that prove the family, then what else was read. */
  readonly outcomes: readonly Verdict[];
  /** How far its places lie apart. */
  readonly placeSpreads: readonly PlaceSpread[];
  readonly done: readonly DoneResult[];
  /** Tools that what is certified was read with, and the calibration that was in force on the day; each pair once. */
  readonly tools: readonly ToolUsed[];
  readonly problems: readonly Problem[];
}

export interface ToolUsed {
  readonly asset: Asset;
  /** Null: none is written down. */
  readonly calibration: Calibration | null;
}

/** Units of one part number, compared with each other. */
export interface Spread {
  readonly name: string;
  readonly units: readonly Unit[];
  /** What is held to the limit: with new springs settled, if any will settle. */
  readonly spread: Difference;
  /** As the gauge showed it, where a new spring will settle; null: that is the spread. */
  readonly asRead: Difference | null;
  readonly limit: Limit;
  readonly source: string | null;
}

export interface Missing {
  /** Null: the set, or the job as a whole. */
  readonly unit: Unit | null;
  readonly of: 'unit' | 'set' | 'job';
  readonly say: Say;
  /** What it is, and where it is written; null: the errors that are reported in the text. */
  readonly problem: Problem | null;
}

export interface JudgedJob {
  readonly units: readonly LimitVerdict[];
  readonly onHold: readonly Unit[];
  readonly spreads: readonly Spread[];
  /** What the masters of the shop read. */
  readonly checks: readonly MasterCheck[];
  /** Empty: it can be certified. */
  readonly missing: readonly Missing[];
}

/** A reading of a unit that a shim or a screw sets. */
export type Stand = UnitReading | ScrewReading;

/** A figure that cannot be, said once wherever it is met. */
export interface SaidDoubt extends Pick<Doubt, 'unit' | 'result'> {
  readonly problem: Problem;
}

/** What a unit is judged with. */
export interface Known {
  readonly procedure: Procedure;
  readonly job: Job;
  readonly today: string | null;
  readonly doubts: readonly SaidDoubt[];
  readonly stands: readonly Stand[];
}
