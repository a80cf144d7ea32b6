import { guardedOn } from '../../engineering/guarded.ts';
import type { Words } from '../../i18n/index.ts';
import type { DoneResult, Job, ReadingResult, Result, ShimResult, TorqueResult, Unit } from '../../model/job.ts';
import type { Procedure, Step, StepOf } from '../../model/procedure.ts';
import type { Asset } from '../../model/shop.ts';
import { decimalsOf, decimalValue, rounded } from '../../quantities/decimal.ts';
import {
  add,
  asDifference,
  between,
  compare,
  compareDifferences,
  kindOfLimit,
  kindOfUnit,
  sub,
  window,
} from '../../quantities/index.ts';
import type { Difference, Limit, Quantity } from '../../quantities/types.ts';
import type { Window } from '../../quantities/window.ts';
import { type ScrewStand, screwStands } from '../../recommendations/unit-screws.ts';
import { type UnitStand, unitStands } from '../../recommendations/unit-shims.ts';
import { capital } from '../traveler/names.ts';
import {
  type Asked,
  askedOf,
  type Held,
  heldInService,
  isFor,
  proofsOf,
  stepsFor,
  torqueLimits,
  torqueSteps,
} from './asked.ts';
import { type Change, Changes } from './changes.ts';
import { type Doubt, doubtsOf } from './doubts.ts';
import { limitWords, unitsWords } from './limit-words.ts';
import { dayOf, misdated, uncalibrated } from './on-the-day.ts';
import { nameWords, partWords, type Say } from './say.ts';

/** A last result, and what it was held to. */
export interface Outcome {
  readonly asked: Asked;
  readonly reading: ReadingResult | null;
  /** What was said of it; null: nothing that still counts. */
  readonly verdict: boolean | null;
  readonly held: Held | null;
  /** What the tool may show by a guarded decision rule; null: the limit itself. */
  readonly guarded: Window | null;
  /** It is outside its limit, or was said to fail: not only something is missing. */
  readonly failed: boolean;
  readonly problems: readonly Say[];
}

export interface Torqued {
  readonly torque: TorqueResult;
  readonly held: Held | null;
  readonly problems: readonly Say[];
}

/** A reading as it came in, and the limit in service. */
export interface Found {
  readonly name: string;
  readonly reading: ReadingResult | null;
  /** What was said of it, or what the limit in service says; null: there is none. */
  readonly verdict: boolean | null;
  readonly held: Held | null;
  readonly problems: readonly Say[];
}

/** How a unit stands that is not on hold. */
export interface Judged {
  readonly unit: Unit;
  readonly found: readonly Found[];
  readonly remarks: readonly string[];
  /** Parts that went in new, each once. */
  readonly renewed: readonly string[];
  readonly shimsOut: readonly ShimResult[];
  readonly shimsIn: readonly ShimResult[];
  readonly torques: readonly Torqued[];
  /** The tests that prove the family, then what else was read. */
  readonly outcomes: readonly Outcome[];
  readonly done: readonly DoneResult[];
  /** Tools that what is certified was read with. */
  readonly tools: readonly Asset[];
  readonly problems: readonly Say[];
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
}

export interface JudgedJob {
  readonly units: readonly Judged[];
  readonly onHold: readonly Unit[];
  readonly spreads: readonly Spread[];
  /** Empty: it can be certified. */
  readonly missing: readonly Missing[];
}

/** Holds the results of a job against its procedure. `today`: null where nobody knows it. */
export function judgedJob(procedure: Procedure, job: Job, today: string | null): JudgedJob {
  const known: Known = {
    procedure,
    job,
    today,
    doubts: doubtsOf(job),
    stands: [...unitStands(job), ...screwStands(job)],
  };
  const units = job.units.filter(({ onHold }) => onHold === null).map((unit) => judgedUnit(known, unit));
  const { received } = job;
  const ofJob: Say[] = [
    ...(units.length === 0 ? [({ certificate }: Words) => certificate.missing.empty] : []),
    ...(proofsOf(procedure.family).length === 0 ? [({ certificate }: Words) => certificate.missing.noProof] : []),
    ...(received !== null && today !== null && received > today
      ? [({ certificate }: Words) => certificate.missing.receivedInFuture({ received, today })]
      : []),
  ];
  const { spreads, problems } = spreadsOf(procedure, units, known.stands);
  return {
    units,
    onHold: job.units.filter(({ onHold }) => onHold !== null),
    spreads,
    missing: [
      ...ofJob.map((say): Missing => ({ unit: null, of: 'job', say })),
      ...units.flatMap((one) => one.problems.map((say): Missing => ({ unit: one.unit, of: 'unit', say }))),
      ...problems.map((say): Missing => ({ unit: null, of: 'set', say })),
    ],
  };
}

/** How a unit stands at a reading that a shim or a screw sets. */
type Stand = UnitStand | ScrewStand;

/** What a unit is judged with. */
interface Known {
  readonly procedure: Procedure;
  readonly job: Job;
  readonly today: string | null;
  readonly doubts: readonly Doubt[];
  readonly stands: readonly Stand[];
}

function judgedUnit(known: Known, unit: Unit): Judged {
  const { procedure, job, today } = known;
  const { results } = unit;
  const proofs = proofsOf(procedure.family);
  const judge = new UnitJudge(known, unit);
  const others = names(results, (result) => !isFound(result)).filter((name) => !proofs.includes(name));
  const outcomes = [
    ...proofs.map((name) => judge.proof(name)),
    ...others.flatMap((name) => judge.other(name) ?? []),
  ].filter((one) => one !== null);
  const found = names(results, isFound).map((name) => judge.found(name));
  const torqued = [...new Set(results.flatMap((one) => (one.form === 'torque' ? [one.part] : [])))];
  const torques = torqued.map((part) => judge.torque(part));
  const done = results.filter((result) => result.form === 'done');
  const shims = results.filter((result) => result.form === 'shim');
  const lastOf = (all: readonly ShimResult[]) =>
    all.filter((one, index) => all.findLastIndex(({ part }) => part === one.part) === index);
  const firstOf = (all: readonly ShimResult[]) =>
    all.filter((one, index) => all.findIndex(({ part }) => part === one.part) === index);
  const shimsOut = firstOf(shims.filter(({ fitted }) => !fitted));
  const shimsIn = lastOf(shims.filter(({ fitted }) => fitted));
  const used = [
    ...found.flatMap(({ reading }) => reading ?? []),
    ...outcomes.flatMap(({ reading }) => reading ?? []),
    ...torques.map(({ torque }) => torque),
    ...shimsOut,
    ...shimsIn,
    ...results.filter((result) => result.form === 'verdict'),
  ];
  const tools = used.flatMap((result) => judge.toolsOf(result).map((asset) => ({ asset, on: dayOf(unit, result) })));
  const unknown = unit.number === null && procedure.numbers.length > 0;
  const problems: Say[] = [
    ...judge.serial(),
    ...(results.length === 0
      ? [({ certificate }: Words) => certificate.missing.nothing]
      : [
          ...(unknown
            ? [({ certificate }: Words) => certificate.missing.number({ number: unit.numberText })]
            : // Of a number that nobody knows no limit would tell anything.
              [...found, ...outcomes, ...torques].flatMap((one) => one.problems)),
          ...shimsOut.flatMap((one) => judge.measured(one)),
          ...judge.doubts(),
          ...judge.unexplained(),
          ...once(tools, ({ asset, on }) => `${asset.name} ${on}`).flatMap(({ asset, on }) => uncalibrated(asset, on)),
          ...misdated(unit, job, today),
          ...judge.unsigned(used),
        ]),
  ];
  return {
    unit,
    found,
    remarks: results.flatMap((result) => {
      if (result.form === 'remark') return [result.text];
      return result.form === 'reading' && result.asFound && result.text !== null ? [result.text] : [];
    }),
    renewed: [...new Set(results.flatMap((result) => (result.form === 'renewed' ? [result.part] : [])))],
    shimsOut,
    shimsIn,
    torques,
    outcomes,
    done,
    tools: procedure.shop.assets.filter((asset) => tools.some((tool) => tool.asset === asset)),
    // A doubt that a test has told is not told again.
    problems: [...new Set(problems)],
  };
}

function once<T>(all: readonly T[], key: (one: T) => string): T[] {
  return [...new Map(all.map((one) => [key(one), one])).values()];
}

type Read = Extract<Result, { form: 'reading' | 'verdict' }>;

function isFound(result: Read): boolean {
  return result.asFound;
}

/** Names that were read or judged, in the order in which they first were. */
function names(results: readonly Result[], wanted: (result: Read) => boolean): string[] {
  const read = results.filter((one): one is Read => one.form === 'reading' || one.form === 'verdict');
  return [...new Set(read.filter(wanted).map(({ name }) => name))];
}

/** Judges the results of one unit. */
class UnitJudge {
  private readonly known: Known;
  private readonly procedure: Procedure;
  private readonly unit: Unit;
  private readonly changes: Changes;

  constructor(known: Known, unit: Unit) {
    this.known = known;
    this.procedure = known.procedure;
    this.unit = unit;
    this.changes = new Changes(known.procedure, unit);
  }

  /** A test that the unit must have passed; null: not this part number. */
  proof(name: string): Outcome | null {
    const asked = askedOf(this.procedure, name, this.unit);
    const last = this.last(name);
    const { reading } = last;
    const verdict = this.counts(asked, reading, last.verdict) ? last.verdict : null;
    if (asked.notRequired && reading === null && verdict === null) return null;
    const title = nameWords(this.procedure, name);
    const problems: Say[] = [];
    const changed = [reading, verdict].flatMap((one) => (one === null ? [] : (this.changes.after(one, name) ?? [])))[0];
    if (reading === null && verdict === null) problems.push(this.noResult(title, name));
    else if (changed !== undefined) problems.push(this.stale(title, changed));
    else if (reading === null && asked.limits.length > 0)
      problems.push((w) =>
        w.certificate.missing.noReading({ name: title, limit: limitWords(w, asked.limits[0]!.limit, null) }),
      );
    if (reading !== null && asked.verdict && verdict === null)
      problems.push((w) => w.certificate.missing.noVerdict({ name: title }));
    return this.judged(asked, reading, verdict, problems);
  }

  private noResult(title: string, name: string): Say {
    const found = names(this.unit.results, isFound).includes(name);
    return (w) => w.certificate.missing[found ? 'onlyFound' : 'noResult']({ name: title });
  }

  private stale(name: string, { part, how }: Change): Say {
    const key = how === 'changed' ? 'stale' : 'tightened';
    return (w) => w.certificate.missing[key]({ name, part: w.inSentence(partWords(this.procedure, part)) });
  }

  /** Something else that was read or looked at; null: what it was read of has been renewed since. */
  other(name: string): Outcome | null {
    const asked = askedOf(this.procedure, name, this.unit);
    const { reading, verdict } = this.last(name);
    const fresh = <T extends Read>(result: T | null) =>
      result === null || this.changes.after(result, name) !== null ? null : result;
    const [last, said] = [fresh(reading), this.counts(asked, reading, verdict) ? fresh(verdict) : null];
    return last === null && said === null ? null : this.judged(asked, last, said, []);
  }

  /** A verdict beside a reading that has its limit is only a word on that reading: it goes with a new one. */
  private counts(asked: Asked, reading: ReadingResult | null, verdict: Read | null): boolean {
    const { results } = this.unit;
    if (verdict === null) return false;
    return asked.verdict || reading === null || results.indexOf(verdict) > results.indexOf(reading);
  }

  private judged(
    asked: Asked,
    reading: ReadingResult | null,
    verdict: Extract<Result, { form: 'verdict' }> | null,
    before: readonly Say[],
  ): Outcome {
    const { procedure } = this;
    const name = nameWords(procedure, asked.name);
    const problems = [...before];
    if (verdict !== null && !verdict.passed) problems.push((w) => w.certificate.missing.failed({ name }));
    const held =
      reading === null
        ? (asked.limits[0] ?? null)
        : (asked.limits.find(({ limit }) => kindOfLimit(limit) === kindOfUnit(reading.value.unit)) ??
          asked.limits[0] ??
          null);
    if (reading === null)
      return {
        asked,
        reading,
        verdict: verdict?.passed ?? null,
        held,
        guarded: null,
        failed: verdict?.passed === false,
        problems,
      };
    const doubt = this.doubtOf(reading);
    // Of a figure that cannot be nothing else is to be said.
    const { guarded, problem, failed } =
      doubt === null ? this.against(name, reading, held) : { guarded: null, problem: doubt, failed: true };
    if (doubt === null)
      problems.push(
        ...this.readWith(name, reading, held, asked.step === null ? this.measuring(asked.name) : [asked.step]),
      );
    if (problem !== null) problems.push(problem);
    else {
      const settling = settledOut(this.known.stands, reading);
      if (settling !== null)
        problems.push((w) =>
          w.certificate.missing.settles({
            name,
            reading: w.quantity(reading.value),
            settling: w.quantity(settling),
          }),
        );
    }
    return {
      asked,
      reading,
      verdict: verdict?.passed ?? null,
      held,
      guarded,
      failed: failed || verdict?.passed === false,
      problems,
    };
  }

  /** A reading against its limit, by the decision rule. */
  private against(
    name: string,
    { value, tool }: ReadingResult,
    held: Held | null,
  ): { guarded: Window | null; problem: Say | null; failed: boolean } {
    const told = (problem: Say | null, failed = false, guarded: Window | null = null) => ({ guarded, problem, failed });
    if (held === null) return told(null);
    const { limit, rule } = held;
    const shown = (w: Words) => ({ name, reading: w.quantity(value), limit: limitWords(w, limit, value) });
    const inside = insideOf(window(limit), value, compare);
    if (inside === 'open') return told((w) => w.certificate.missing.noTolerance(shown(w)));
    if (inside === 'other kind') return told((w) => w.certificate.missing.otherKind(shown(w)));
    if (inside === 'no') return told((w) => w.certificate.missing.outside(shown(w)), true);
    if (rule === 'simple') return told(null);
    const asset = this.asset(tool);
    // That no tool is written down is said where its tool is asked for.
    if (asset === null) return told(null);
    const drawn = guardedOn(asset, limit, rule);
    if (drawn === null) return told((w) => w.certificate.missing.noAccuracy({ name, tool: asset.name }));
    if (drawn.shut || insideOf(drawn.window, value, compare) !== 'yes')
      return told((w) => w.certificate.missing.outsideGuarded({ ...shown(w), tool: asset.name }), true, drawn.window);
    return told(null, false, drawn.window);
  }

  found(name: string): Found {
    const { results } = this.unit;
    const reading =
      results.findLast((one): one is ReadingResult => one.form === 'reading' && one.asFound && one.name === name) ??
      null;
    const said = results.findLast((one) => one.form === 'verdict' && one.asFound && one.name === name);
    const steps = this.allSteps().filter((step) => step.verb === 'read' && step.asFound && step.reading === name);
    const held = heldInService(this.procedure, name, this.unit);
    const doubt = reading === null ? null : this.doubtOf(reading);
    const inside =
      reading === null || held === null || doubt !== null
        ? 'open'
        : insideOf(window(held.limit), reading.value, compare);
    const verdict = inside === 'yes' ? true : inside === 'no' ? false : null;
    const title = nameWords(this.procedure, name);
    return {
      name,
      reading,
      // What was said may be worse than the figure, and never makes it better.
      verdict: said?.form === 'verdict' && verdict !== false ? said.passed : verdict,
      held,
      problems: reading === null ? [] : doubt === null ? this.readWith(title, reading, held, steps) : [doubt],
    };
  }

  /** The last torque of a part. */
  torque(part: string): Torqued {
    const { procedure, unit } = this;
    const torque = unit.results.findLast((one): one is TorqueResult => one.form === 'torque' && one.part === part)!;
    const name = partWords(procedure, part);
    const limits = torqueLimits(procedure, unit, part);
    const fits = (held: Held) => insideOf(window(held.limit), torque.value, compare) === 'yes';
    const held = limits.find(fits) ?? limits[0] ?? null;
    const doubt = this.doubtOf(torque);
    if (doubt !== null) return { torque, held, problems: [doubt] };
    const problems = this.readWith(name, torque, held, torqueSteps(procedure, unit, part));
    if (held !== null && !fits(held))
      problems.push((w) =>
        w.certificate.missing.torque({
          name: w.certificate.results.torque({ part: name }),
          reading: w.quantity(torque.value),
          limit: limitWords(w, held.limit, torque.value),
        }),
      );
    const opened = this.changes.underTorque(torque);
    if (opened !== null)
      problems.push((w) =>
        w.certificate.missing.torqueStale({
          name: w.certificate.results.torque({ part: name }),
          part: w.inSentence(partWords(procedure, opened)),
        }),
      );
    return { torque, held, problems };
  }

  /** The tool that a shim which came out was measured with, where the procedure says with which. */
  measured({ part, size, tool }: ShimResult): Say[] {
    const steps = this.allSteps().filter(
      ({ verb, objects }) => verb === 'measure' && objects.some((object) => object.name === part),
    );
    return this.named(capital(partWords(this.procedure, part)), size, tool ?? null, steps);
  }

  /**
   * The tool of a reading is written down where a step names one, and wherever a figure is judged that a tool of the shop
   * shows. The one at the station is not taken for it: which was in the hand is what is asked for when one of them is
   * found wrong. With a guarded rule it is asked for how far it may be off besides.
   */
  private readWith(
    name: string,
    { value, tool }: ReadingResult | TorqueResult,
    held: Held | null,
    steps: readonly Step[],
  ): Say[] {
    const kind = kindOfUnit(value.unit);
    const shown = this.procedure.shop.assets.some(
      ({ range }) => range !== null && kindOfUnit(range.high.unit) === kind,
    );
    if (held !== null && tool === null) {
      if (held.rule !== 'simple')
        return [(w) => w.certificate.missing.noToolForRule({ name, reading: w.quantity(value) })];
      if (shown || kind === 'pressure' || kind === 'torque')
        return [(w) => w.certificate.missing.noTool({ name, reading: w.quantity(value) })];
    }
    // The tools that the step of a timed test names show something else than the time.
    return kind === 'time' ? [] : this.named(name, value, tool, steps);
  }

  private named(name: string, value: Quantity, tool: string | null, steps: readonly Step[]): Say[] {
    return tool === null && steps.some(({ tools }) => tools.some(({ form }) => form !== 'words'))
      ? [(w) => w.certificate.missing.noTool({ name, reading: w.quantity(value) })]
      : [];
  }

  /** The tools that a result was read with. */
  toolsOf(result: Result): Asset[] {
    const named = ['tool' in result ? result.tool : null, 'watched' in result ? result.watched : null];
    return named.flatMap((name) => this.asset(name ?? null) ?? []);
  }

  /** The unit can be found again by its serial. */
  serial(): Say[] {
    const { serial, noSerial } = this.unit;
    if (serial === null) return noSerial === null ? [({ certificate }) => certificate.missing.noSerial] : [];
    const other = this.known.job.units.find((one) => one.serial?.trim() === serial.trim() && one !== this.unit);
    return other === undefined
      ? []
      : [({ certificate }) => certificate.missing.serialTwice({ serial, place: other.place })];
  }

  /** Figures that cannot be, the last ones and those before them. */
  doubts(): Say[] {
    return this.known.doubts.filter(({ unit }) => unit === this.unit).map(({ say }) => say);
  }

  private doubtOf(result: Result): Say | null {
    return this.known.doubts.find((doubt) => doubt.result === result)?.say ?? null;
  }

  /** Results of one name that contradict each other, or lie far apart, with nothing written down between them. */
  unexplained(): Say[] {
    return names(this.unit.results, () => true).flatMap((name): Say[] => {
      const title = nameWords(this.procedure, name);
      if (this.passedAfterFail(name)) return [(w) => w.certificate.missing.passedAfterFail({ name: title })];
      const jump = this.changes.jump(name);
      const [before, after] = jump ?? this.changes.contrary(name) ?? [];
      if (before === undefined || after === undefined || this.doubtOf(before) !== null || this.doubtOf(after) !== null)
        return [];
      const why = jump === null ? 'contrary' : 'jump';
      return [
        (w) =>
          w.certificate.missing[why]({ name: title, before: w.quantity(before.value), after: w.quantity(after.value) }),
      ];
    });
  }

  private passedAfterFail(name: string): boolean {
    const of = this.unit.results.filter((one): one is Read => one.form === 'reading' || one.form === 'verdict');
    const mine = of.filter((one) => one.name === name && !isFound(one));
    const { limits } = askedOf(this.procedure, name, this.unit);
    const fails = (one: Read) =>
      one.form === 'verdict'
        ? !one.passed
        : limits.some(({ limit }) => insideOf(window(limit), one.value, compare) === 'no') &&
          this.doubtOf(one) === null;
    return mine.some((one, index) => {
      const before = mine[index - 1];
      return before !== undefined && fails(before) && !fails(one) && !this.changes.somethingDone(before, one);
    });
  }

  /** What is certified stands before the last `done by`. */
  unsigned(used: readonly Result[]): Say[] {
    const { results } = this.unit;
    const last = results.findLastIndex(({ form }) => form === 'done');
    const renewed = results.filter(({ form }) => form === 'renewed');
    return last >= 0 && [...used, ...renewed].some((one) => results.indexOf(one) > last)
      ? [({ certificate }) => certificate.missing.unsigned]
      : [];
  }

  private last(name: string) {
    const of = this.unit.results.filter((one): one is Read => one.form === 'reading' || one.form === 'verdict');
    const mine = of.filter((one) => one.name === name && !isFound(one));
    return {
      reading: mine.findLast((one) => one.form === 'reading') ?? null,
      verdict: mine.findLast((one) => one.form === 'verdict') ?? null,
    };
  }

  private measuring(name: string): Step[] {
    return this.allSteps().filter((step) => 'limit' in step && step.limit?.form === 'spec' && step.limit.spec === name);
  }

  private allSteps(): Step[] {
    return stepsFor(this.procedure, this.unit.number);
  }

  private asset(name: string | null): Asset | null {
    return this.procedure.shop.assets.find((one) => one.name === name) ?? null;
  }
}

function insideOf<T extends Quantity | Difference>(
  { low, high }: Window,
  value: T,
  by: (a: T, b: Quantity) => -1 | 0 | 1 | null,
): 'yes' | 'no' | 'open' | 'other kind' {
  if (low === null && high === null) return 'open';
  const [over, under] = [low === null ? 1 : by(value, low), high === null ? -1 : by(value, high)];
  if (over === null || under === null) return 'other kind';
  return over === -1 || under === 1 ? 'no' : 'yes';
}

/** The limit of a spread is written as values, and means differences. */
function compareSpread(spread: Difference, end: Quantity) {
  return compareDifferences(spread, asDifference(end));
}

/** In which unit the limit of a spread is shown: that of temperatures in its own, since 5 °C apart are no 41 °F. */
export function ownUnit(spread: Difference | null): Difference | null {
  return spread === null || kindOfUnit(spread.unit) === 'temperature' ? null : spread;
}

/** What a reading is to lose yet by the settling of a new spring, if it will then be under its limit. */
function settledOut(stands: readonly Stand[], reading: ReadingResult): Difference | null {
  const stand = stands.find((one) => one.reading === reading);
  if (stand === undefined || stand.settling === null || stand.low === null) return null;
  const least = add(stand.low, stand.settling);
  return least !== null && compare(reading.value, least) === -1 ? stand.settling : null;
}

/**
 * How far the units of each part number lie apart, where the family is proven so. Where a new spring has still to settle,
 * as they will lie then: so the shims of the set are advised, and so the set will run.
 */
function spreadsOf(
  procedure: Procedure,
  units: readonly Judged[],
  stands: readonly Stand[],
): { spreads: Spread[]; problems: Say[] } {
  const spreads: Spread[] = [];
  const problems: Say[] = [];
  for (const { name } of procedure.family.provenAcrossSet) {
    const title = nameWords(procedure, name);
    const numbers = [...new Set(units.map(({ unit }) => unit.number))];
    for (const number of numbers) {
      const read = units.flatMap(({ unit, outcomes }) => {
        const reading = outcomes.find(({ asked }) => asked.name === name)?.reading ?? null;
        if (unit.number !== number || reading === null) return [];
        const settling = stands.find((stand) => stand.reading === reading)?.settling ?? null;
        return [{ unit, value: reading.value, settled: settling === null ? null : sub(reading.value, settling) }];
      });
      if (read.length < 2) continue;
      const step = procedure.stages
        .flatMap(({ steps }) => steps)
        .findLast(
          (one): one is StepOf<'across'> => one.verb === 'across' && one.gate.test === name && isFor(one, number),
        );
      const limit = step?.spread ?? null;
      if (limit === null) {
        problems.push((w) => w.certificate.missing.noSpread({ name: title }));
        continue;
      }
      const of = read.map(({ unit }) => unit);
      const settles = read.some(({ settled }) => settled !== null);
      const asRead = settles ? spreadOf(read.map(({ value }) => value)) : null;
      const spread = spreadOf(read.map(({ value, settled }) => settled ?? value));
      const inside = spread === null ? 'other kind' : insideOf(window(limit), spread, compareSpread);
      const shown = (w: Words) => ({
        name: title,
        units: unitsWords(w, of),
        limit: limitWords(w, limit, ownUnit(spread)),
      });
      if (inside === 'other kind' || inside === 'open' || spread === null)
        problems.push((w) => w.certificate.missing.spreadKind(shown(w)));
      else if (inside === 'no')
        problems.push((w) =>
          w.certificate.missing[settles ? 'spreadSettled' : 'spread']({ ...shown(w), spread: w.quantity(spread) }),
        );
      if (spread !== null) spreads.push({ name, units: of, spread, asRead, limit, source: step?.sourceText ?? null });
    }
  }
  return { spreads, problems };
}

/**
 * From the least to the most, exact, unless they are read in two units: then up to the last digit that was read. Null:
 * they measure different kinds.
 */
function spreadOf(values: readonly Quantity[]): Difference | null {
  const most = values.reduce((a, b) => (compare(b, a) === 1 ? b : a));
  const least = values.reduce((a, b) => (compare(b, a) === -1 ? b : a));
  const spread = between(most, least);
  if (spread === null || values.every(({ unit }) => unit === spread.unit)) return spread;
  const digits = Math.max(...values.map(({ number }) => decimalsOf(number)));
  return { ...spread, number: rounded(decimalValue(spread.number), digits, 'up') };
}
