import type { Difference, Kind, Limit, Quantity, RangeLimit } from '../quantities/types.ts';
import type { ObjectKind } from '../syntax/verbs/verb.ts';
import type { DangerFact } from './danger.ts';
import type { Family } from './family.ts';
import type { Condition, Plan, Wording } from './plan.ts';
import type { AssetKind, DecisionRule, Shop } from './shop.ts';
import type { Allow, Named, NameUse, Source } from './source.ts';
import type { Verb } from './verbs.ts';

export type { ObjectKind } from '../syntax/verbs/verb.ts';

/** A procedure after names are resolved, patches of `like` applied and sequences written out. */
export interface Procedure extends Named {
  readonly family: Family;
  readonly shop: Shop;
  readonly revision: string | null;
  /** ISO 639 code of the language that its own words are in: `es`; null: it does not say. */
  readonly language: string | null;
  readonly writtenBy: string | null;
  readonly approvedBy: string | null;
  /** ISO date. */
  readonly approvedOn: string | null;
  readonly specs: readonly Spec[];
  readonly numbers: readonly PartNumber[];
  readonly stages: readonly Stage[];
  /** From the least to the most thorough, as written. Those written inside an `on fail` come last. */
  readonly repairs: readonly Repair[];
  readonly hazards: readonly Hazard[];
  readonly allow: readonly Allow[];
  /** The procedure that this one is written `like`. */
  readonly like: string | null;
  /** Where it says so. */
  readonly likeSource: Source | null;
  /** From its first word to its last brace. */
  readonly extent: Source;
  /** All files that it is written in: its own, of family and shop, of what it is `like`, and of the sequences it calls. */
  readonly files: readonly string[];
}

/** What the figures and names in a step refer to: nothing of other steps. */
export type StepFacts = Pick<Procedure, 'family' | 'shop' | 'specs' | 'numbers'>;

/** A spring, and the needle that it loads: what a millimeter of shim brings follows from them. */
export interface RateFrom {
  readonly stiffness: Quantity;
  /** Diameters of the needle's guide, and of the seat that it closes. */
  readonly guide: Quantity;
  readonly seat: Quantity;
}

/** What a spec says; a limit that is null was not given here. */
export interface SpecValue {
  /** As rebuilt. */
  readonly rebuilt: Limit | null;
  /** `from stiffness 200 N/mm, guide 6 mm, seat 3 mm`: what `rebuilt` is worked out from, null where none comes of it. */
  readonly rateFrom: RateFrom | null;
  readonly inService: Limit | null;
  /** With new parts (`new spring 258 bar +8 -0`). */
  readonly whenNew: Limit | null;
  /** The part that is new then (`new spring`); null: not said. */
  readonly whenNewPart: string | null | undefined;
  /** `settling 4 bar`: what a new spring will lose of it; the unit is set so much higher. Null: not said. */
  readonly settling: Difference | null;
  /** A value is written that has no meaning: that is reported at its place, and the value does not count as missing. */
  readonly isUnread: boolean;
  readonly notRequired: boolean;
  /** `acceptance guarded` of this limit; null: as the shop. */
  readonly acceptance: DecisionRule | null;
  readonly sourceText: string | null;
}

export interface Spec extends Named, SpecValue {
  readonly kind: Kind | null;
  /** `rate 3 bar per 0.001 in`: the second quantity; null for other specs. */
  readonly per: Quantity | null;
  readonly allow: readonly Allow[];
}

/** A part number of the family with the specs that differ from the procedure's. */
export interface PartNumber extends Named {
  readonly values: readonly (SpecValue & { readonly spec: string; readonly source: Source })[];
  readonly allow: readonly Allow[];
}

export interface Stage extends Named {
  readonly station: string | null;
  /** The set together; else one unit at a time. */
  readonly together: boolean;
  readonly allow: readonly Allow[];
  readonly steps: readonly Step[];
}

export interface Repair extends Named {
  /** `repair NAME at STATION`; null: where the unit was sent from. */
  readonly station: string | null;
  readonly steps: readonly Step[];
  /** Tries over the whole procedure, per unit; null where none of its mentions gives a count and it is unbounded. */
  readonly tries: number | null;
  /** Written inside an `on fail`, not as a `repair` of its own. */
  readonly inline: boolean;
  readonly allow: readonly Allow[];
  /** `for each cylinder that failed`: the places that it is done for, one by one; null: for the unit. */
  readonly eachOf: string | null;
}

/** Where steps are: on the main way, or where a unit is sent after a failed gate. */
export type Block = Stage | Repair;

/** ANSI Z535.4 signal words. */
export type SignalWord = 'DANGER' | 'WARNING' | 'CAUTION' | 'NOTICE';

export interface Hazard {
  readonly word: SignalWord;
  readonly text: string;
  readonly source: Source;
}

/** One thing that a step acts on. `name` is an id of its kind in the family. */
export interface StepObject {
  readonly kind: ObjectKind;
  readonly name: string;
  /** How the author says that it is located: the family's words, or their own; null if not stated. */
  readonly located: string | null;
  /** `with marks aligned`. */
  readonly marksAligned: boolean;
  /** Of an assembly, whose carrying part it names: what else is in it, which goes along as it is. */
  readonly assembly?: { readonly name: string; readonly others: readonly string[] };
  readonly source: Source;
}

/** A tool by its number, or a kind of tool that the job names (`with wrench 16..80 N·m`). */
export type ToolUse =
  | {
      readonly form: 'asset';
      readonly name: string;
      readonly source: Source;
      /** `and adapter 50 mm at 0°`: from the square drive to the nut, and its angle to the wrench. */
      readonly adapter: { readonly length: Quantity; readonly angle: Quantity | null } | null;
    }
  | { readonly form: 'kind'; readonly kind: AssetKind; readonly range: RangeLimit | null; readonly source: Source }
  | { readonly form: 'words'; readonly text: string; readonly source: Source };

/** A limit that a step sets or reads: through a spec, or written in the step. */
export type LimitUse =
  | { readonly form: 'spec'; readonly spec: string; readonly source: Source }
  | { readonly form: 'limit'; readonly limit: Limit; readonly source: Source };

export interface FailEntry {
  readonly repair: string;
  /** Tries as written, Infinity for `without limit`; null: none written. */
  readonly tries: number | null;
  /** `repair`: the name of a repair. `at once`: what is done is written here. `verdict`: a check asks for it (`lap if`), not as a try before the others but as another outcome. */
  readonly as: 'repair' | 'at once' | 'verdict';
  /** `then all again`: every point and place is read again after it, not only those that failed. */
  readonly allAgain: boolean;
  /** `of the furthest out`: across the set, the unit furthest from the middle. */
  readonly furthestOut: boolean;
  readonly source: Source;
}

/** What a unit must pass, and what happens where it does not. */
interface GateBase {
  /** Its identity among the gates of the procedure: tests of one name are one gate, every check is one of its own. */
  readonly id: string;
  readonly onFail: readonly FailEntry[];
  /** `on fail` is written, even if empty. */
  readonly failWritten: boolean;
  readonly stopIfFails: boolean;
  /** Joints, adjusters, faces it proves through; null: every one that holds pressure or carries the spring. */
  readonly provesThrough: readonly string[] | null;
}

/** A reading of the unit is judged: by a `test`, across the set, or while it is set. */
export interface TestGate extends GateBase {
  readonly kind: 'test' | 'across' | 'set';
  /** Name of the test, or of the reading that is compared or set. */
  readonly test: string;
}

/** Parts in the hand are judged. */
export interface PartGate extends GateBase {
  readonly kind: 'check' | 'measure';
}

export type Gate = TestGate | PartGate;

/** `hold 20 bar below reading`, `hold 230 bar`. */
export interface Hold {
  readonly amount: Limit;
  readonly relation: 'below' | 'above' | 'at';
  readonly of: string | null;
}

/** The pressures and times of a test, each as written. */
export interface TestFigures {
  /** What is read: pressure, time, length, … null for a test that only accepts. */
  readonly reads: Kind | null;
  readonly hold: Hold | null;
  /** `from 150 bar to 100 bar`. */
  readonly from: Limit | null;
  readonly to: Limit | null;
  /** `in 6..20 s`: time limit. */
  readonly inTime: Limit | null;
  /** `for 10 s`. */
  readonly forTime: Limit | null;
  readonly neverAbove: Quantity | null;
}

/** What any step has, whatever its verb. */
interface StepBase {
  readonly source: Source;
  /** None where the verb acts on the unit, or on a reading. */
  readonly objects: readonly StepObject[];
  readonly tools: readonly ToolUse[];
  /** `with air at most 2 bar`. */
  readonly air: Limit | null;
  /** `with air` with no limit, `with vacuum`: in a test there is no fluid then. */
  readonly gas: 'air' | 'vacuum' | null;
  /** The author's own words: place, look, free text, signer. */
  readonly text: string | null;
  /** Clauses whose words are part of it: `by "feel"`. Words beside the step, after none of these, answer no question. */
  readonly wordsAfter: readonly ('in' | 'for' | 'by')[];
  /** `source "…"` of a limit written in the step. */
  readonly sourceText: string | null;
  readonly takes: Quantity | null;
  readonly note: string | null;
  readonly hazards: readonly Hazard[];
  readonly dangers: readonly DangerFact[];
  readonly allow: readonly Allow[];
  /** Part numbers that it is for; null: all. */
  readonly only: readonly string[] | null;
  /** Title of the sequence that it is the first step of. */
  readonly lead: string | null;
  /** The call that wrote this step out of a sequence; null: written in place. */
  readonly call: NameUse | null;
}

/** `all` may be its object. */
interface OfAll {
  readonly all: boolean;
}

/** `remove … with`, `fit … with`, `guard … with`: parts that go along. */
interface WithParts {
  readonly withObjects: readonly StepObject[];
}

/** `wash … in solvent`: a fluid of the shop. */
interface InFluid {
  readonly fluid: string | null;
}

/** `clamp body in "holding fixture"`, `held by "wrench"`. */
interface Held {
  readonly holder: string | null;
}

/** `keep … at`, `send … to`. */
interface AtStation {
  readonly station: string | null;
}

/** `prime 6 strokes`, `wait at least 10 min`, `soak … for 20 min`. */
interface Counted {
  readonly count: Limit | null;
}

/** `wash … at 50..60 °C`: how warm the bath is. */
interface Bathed {
  readonly bath: Limit | null;
}

/** A limit that it sets or reads. */
interface Limited {
  readonly limit: LimitUse | null;
}

interface Gauged {
  readonly gauge: 'shut' | 'open' | null;
}

/** How the reading or the look is taken. */
interface Looked extends Gauged {
  /** `with "upright, tip down"`: the author's own words, which may name a tool. */
  readonly conditions: readonly string[];
}

/** A reading on the tester. */
interface OnTester extends Looked, AtStation {
  /** `at 20..60 strokes/min`, `at 600 rpm`. */
  readonly at: Limit | null;
  /** The other figures that it is taken at: `rack 9.0 mm ±0.05`, `oil 40 °C ±2`. */
  readonly figures: readonly Condition[];
  /** It is read at points or places, or worked out; null: once, of the unit. */
  readonly plan: Plan | null;
}

interface ReadyToFit {
  readonly readyToFit: boolean;
}

/** `reuse if "…"  lap if "…"  reject if "…"`. */
export interface Verdict {
  readonly verdict: 'reuse' | 'lap' | 'reject';
  readonly text: string;
}

/** `to bring opening to 254 bar`. */
export interface Choice {
  readonly test: string;
  /** Null: what is written cannot be read. */
  readonly target: LimitUse | null;
}

/** What a step has besides, by its verb. A verb that is not here has nothing of its own. */
interface OwnFields {
  clamp: Held;
  keep: OfAll & WithParts & AtStation & InFluid;
  send: AtStation;
  slacken: Held;
  remove: WithParts & Held & AtStation & InFluid;
  compress: InFluid;
  guard: WithParts;
  cap: OfAll;
  uncap: OfAll;
  prime: Counted & Gauged;
  wash: OfAll & InFluid & Counted & Bathed & AtStation;
  soak: OfAll & InFluid & Counted & Bathed & AtStation;
  rinse: OfAll & InFluid & Counted;
  wipe: OfAll & InFluid;
  oil: OfAll & InFluid;
  'blow-dry': OfAll;
  blast: InFluid & AtStation;
  'clean-outside': InFluid;
  renew: WithParts & ReadyToFit;
  fit: WithParts & InFluid & ReadyToFit & { readonly forTrial: boolean };
  choose: {
    readonly choose: Choice | null;
    /** `by shim-rate`: a spec. */
    readonly rate: string | null;
    /** `never above 1.90 mm`: no shim over it. */
    readonly neverAbove: Quantity | null;
  };
  'run-down': Held;
  torque: Held &
    Limited &
    InFluid & {
      /** `by stretch 0.009..0.010 in`. */
      readonly stretch: Limit | null;
      readonly passes: readonly Quantity[];
      readonly pattern: boolean;
      readonly oiled: boolean;
    };
  lock: Held & Limited;
  mark: AtStation & { readonly marking: readonly ('number' | 'serial')[] };
  pack: InFluid;
  wait: Counted;
  check: OfAll &
    Looked &
    Limited & {
      readonly gate: PartGate;
      readonly accept: string | null;
      readonly verdicts: readonly Verdict[];
      /** `check needle slides "…"`: it is felt to move. */
      readonly moves: 'slides' | 'turns-free' | null;
    };
  /** With a limit it is a gate, and where it says what is done on a fail: there a limit that is missing is reported. */
  measure: Looked &
    ({ readonly limit: LimitUse | null; readonly gate: PartGate } | { readonly limit: null; readonly gate: null });
  read: OnTester & {
    /** The test, spec or master that is read. */
    readonly reading: string;
    readonly asFound: boolean;
    readonly asLeft: boolean;
  };
  /** Words are written down, under a name and a title of their own. */
  record: {
    readonly reading: string;
    readonly title: string | null;
    readonly wording: Wording;
    readonly plan: Plan | null;
  };
  set: OnTester & Limited & { readonly gate: TestGate; readonly reading: string };
  test: OnTester &
    Limited &
    InFluid & {
      readonly gate: TestGate;
      readonly test: TestFigures;
      readonly accept: string | null;
      readonly reject: string | null;
    };
  across: Looked & {
    readonly gate: TestGate;
    /** `spread at most 5 bar`. */
    readonly spread: Limit | null;
  };
}

/** What is done in one step, by its verb. */
export type Action = {
  [V in Verb]: StepBase & { readonly verb: V } & (V extends keyof OwnFields ? OwnFields[V] : unknown);
}[Verb];

/** One printed step. */
export type Step = Action & {
  /** As printed: `3.4`, `R1.3`, `2.3a`. */
  readonly number: string;
  /** Stage or repair, verb, first object, and an ordinal where alike: `build/torque nut`. */
  readonly key: string;
};

/** The step of a verb, or of one of several. */
export type StepOf<V extends Verb> = Extract<Step, { readonly verb: V }>;
