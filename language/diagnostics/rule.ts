import type { Departure, FlowAnalysis, PathContext, Visit, Visitor } from '../analysis/flow-analysis.ts';
import type { StepSetting } from '../analysis/stages.ts';
import type { Fix, Related, Severity, Statement } from '../model/diagnostic.ts';
import type { Family } from '../model/family.ts';
import type { Job } from '../model/job.ts';
import type { Block, Procedure, Step } from '../model/procedure.ts';
import type { Shop } from '../model/shop.ts';
import type { Allow, Source } from '../model/source.ts';
import type { UnitInWork } from '../model/unit-in-work.ts';
import type { Verb } from '../model/verbs.ts';
import type { Said } from '../say/say.ts';
import type { ResolveProblem } from '../semantics/context.ts';

/** A folder of rules. `language` is about the text and its names, `family` about what a family declares. */
export type Area =
  | 'language'
  | 'family'
  | 'specifications'
  | 'tools'
  | 'hazards'
  | 'order'
  | 'protection'
  | 'gates'
  | 'traceability';

/**
 * What a rule reports at one place.
 * @typeParam Data what the fix of the rule needs; `never` if it has no fix
 */
export interface Report<Data = unknown> extends Statement {
  /** The step that it is reported at, or a place that is not a step. */
  readonly at: Step | Source;
  /** The place in the step, if that is narrower. */
  readonly source?: Source | undefined;
  /**
   * One finding per cause: of those with the same cause only the first is kept, whichever rule reports it. Without a
   * cause, a finding is identified by its rule and place.
   */
  readonly rootCause?: string | undefined;
  /** The point of the flow analysis where the state arose, for the related place. */
  readonly since?: number | undefined;
  readonly path?: PathContext;
  readonly related?: readonly Related[];
  /** Concessions that cover it, besides those of its step and of the procedure. */
  readonly allow?: readonly Allow[] | undefined;
  /** It says that something is missing, for a rule that does not always do so: like `ofAbsence` of a rule. */
  readonly ofAbsence?: true;
  /** What the rule's fix needs. */
  readonly data?: Data | undefined;
}

/**
 * One rule: one file, and beside it one page whose examples are tests. A check never edits and a fix never diagnoses:
 * `fix` gets only what the report carries as `data`.
 */
export interface Rule<Data = never> {
  /** Stable name that describes the defect. */
  readonly code: string;
  readonly severity: Severity;
  /** The defect makes the sheet unsafe: no setting lowers the severity, only a concession with a reason. */
  readonly unsafe?: true;
  /** It says that something is missing: an unreadable text there is already reported, and may be just that. */
  readonly ofAbsence?: true;
  /** The first version of Handtight that has it. */
  readonly since: string;
  /** Standards that it is based on, as its page names them. */
  readonly references?: readonly string[];
  /** One line: what it finds. */
  readonly title: string;
  /** Over what could not be read, or found, in one file. Several procedures may have the same problem in a sequence. */
  problems?(problems: readonly ResolveProblem[], report: Sink<Data>): void;
  concession?(allow: Allow, report: Sink<Data>): void;
  shop?(shop: Shop, report: Sink<Data>): void;
  family?(family: Family, report: Sink<Data>): void;
  /** Its procedure has no places of steps, and none of their notes, hazards and concessions: a job is judged by figures. */
  job?(job: Job, report: Sink<Data>): void;
  /** The units of the jobs of a file, beside those of other files that have the serial of one of them. */
  units?(units: readonly UnitInWork[], elsewhere: readonly UnitInWork[], report: Sink<Data>): void;
  procedure?(procedure: Procedure, report: Sink<Data>): void;
  /**
   * Each step by itself, after `procedure`. What it reports depends on what it is given and on nothing else: a step at which
   * no rule reports anything is not shown to any of them again until one of these is another.
   */
  eachStep?(step: Step, setting: StepSetting, report: Sink<Data>): void;
  /** Checks every path through a procedure: what it listens to in the flow analysis. */
  flow?(flow: FlowAnalysis, report: Sink<Data>): PathChecks;
  fix?(data: Data): Fix<Said> | null;
}

/** A check of steps, and the verbs of those that it is shown. */
export interface StepCheck {
  readonly verbs: readonly Verb[];
  readonly check: (visit: Visit) => void;
}

/** Listens to steps with certain verbs. */
export function on<const V extends Verb>(verbs: readonly V[], check: (visit: Visit<V>) => void): StepCheck {
  // It is shown no others.
  return { verbs, check: check as unknown as (visit: Visit) => void };
}

/**
 * What a rule listens to on the paths through a procedure. What it reports may depend on the procedure, on the state and
 * the path that it is shown, and on what it has reported before; where all that it read was the same once, it is not
 * asked again.
 */
export interface PathChecks {
  /**
   * It looks at more than what it is shown (a step, its block, state and path) and what the family, the shop, the specs and
   * `absent` say: at other steps, gates, part numbers; or it remembers what it was shown. Otherwise what it was shown for
   * one part number is not shown to it again for another.
   */
  readonly looksAround?: true;
  /** Before a step is applied. */
  readonly step?: StepCheck;
  /** The unit goes from one station to another. */
  leave?(leaving: Departure & { readonly to: Block }): void;
  end?(ending: Departure): void;
  /** As `comeBack` of a visitor. */
  comeBack?(coming: Parameters<NonNullable<Visitor['comeBack']>>[0]): void;
}

/** Takes what a rule reports. */
type Sink<Data> = (report: Report<Data>) => void;

/** A rule in a list, where each has data of its own. Its fix must get what its own check reported. */
export type AnyRule = Rule<unknown>;
