import { type ScrewStand, screwStands } from '../advice/unit-screws.ts';
import { type UnitStand, unitStands } from '../advice/unit-shims.ts';
import { guardedOn } from '../calculations/guarded.ts';
import type { DoneResult, Job, ReadingResult, Result, ShimResult, TorqueResult, Unit } from '../model/job.ts';
import type { Procedure, Step } from '../model/procedure.ts';
import type { Asset } from '../model/shop.ts';
import { add, compare, kindOfLimit, kindOfUnit, sub, window } from '../quantities/index.ts';
import type { Limit, Quantity } from '../quantities/types.ts';
import type { Window } from '../quantities/window.ts';
import { shimChoices } from '../rules/shim-choices.ts';
import { suits } from '../rules/tool-choice.ts';
import { capital, titleOf } from '../sheet/names.ts';
import type { Words } from '../words/index.ts';
import { type Asked, askedOf, type Held, heldInService, heldOf, isFor, proofsOf, testsFor } from './asked.ts';
import { limitWords, unitsWords } from './limit-words.ts';

/** Says in a language what is missing. */
export type Say = (words: Words) => string;

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
  readonly spread: Quantity;
  readonly limit: Limit;
  readonly source: string | null;
  /** One of them has a new spring in it, which had not settled when it was read. */
  readonly unsettled: boolean;
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

/** Holds the results of a job against its procedure. */
export function judgedJob(procedure: Procedure, job: Job): JudgedJob {
  const stands = [...unitStands(job), ...screwStands(job)];
  const units = job.units
    .filter(({ onHold }) => onHold === null)
    .map((unit) => judgedUnit(procedure, unit, settledOut(stands)));
  const ofJob: Say[] = [
    ...(units.length === 0 ? [({ certificate }: Words) => certificate.missing.empty] : []),
    ...(proofsOf(procedure.family).length === 0 ? [({ certificate }: Words) => certificate.missing.noProof] : []),
  ];
  const { spreads, problems } = spreadsOf(procedure, units, stands);
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

type Stand = UnitStand | ScrewStand;

/** Readings that are inside their limit, and will not be when the new spring has settled. */
function settledOut(stands: readonly Stand[]): (reading: ReadingResult) => Quantity | null {
  return (reading) => {
    const stand = stands.find((one) => one.reading === reading);
    if (stand === undefined || stand.settling === null) return null;
    const least = stand.low === null ? null : add(stand.low, stand.settling);
    return least !== null && compare(reading.value, least) === -1 ? stand.settling : null;
  };
}

/** What a name in a job is called: a test, a spec, or a part that was looked at. */
export function nameWords({ specs, family }: Procedure, name: string): string {
  const known = specs.find((one) => one.name === name) ?? family.parts.find((one) => one.name === name);
  return capital(titleOf(known ?? { name, title: name }));
}

export function partWords({ family }: Procedure, name: string): string {
  return titleOf(family.parts.find((one) => one.name === name) ?? { name, title: name });
}

function judgedUnit(procedure: Procedure, unit: Unit, settledBy: (reading: ReadingResult) => Quantity | null): Judged {
  const { results } = unit;
  const proofs = proofsOf(procedure.family);
  const judge = new UnitJudge(procedure, unit, settledBy);
  const others = names(results, (result) => !isFound(result)).filter((name) => !proofs.includes(name));
  const outcomes = [
    ...proofs.map((name) => judge.proof(name)),
    ...others.flatMap((name) => judge.other(name) ?? []),
  ].filter((one) => one !== null);
  const found = names(results, isFound).map((name) => judge.found(name));
  const torqued = [...new Set(results.flatMap((one) => (one.form === 'torque' ? [one.part] : [])))];
  const torques = torqued.map((part) => judge.torque(part));
  const done = results.filter((result) => result.form === 'done');
  const used = [
    ...found.map(({ reading }) => reading),
    ...outcomes.map(({ reading }) => reading),
    ...torques.map(({ torque }) => torque),
  ].filter((one) => one !== null);
  const unknown = unit.number === null && procedure.numbers.length > 0;
  const problems: Say[] = [
    ...(unknown
      ? [({ certificate }: Words) => certificate.missing.number({ number: unit.numberText })]
      : // Of a number that nobody knows no limit would tell anything.
        [...found, ...outcomes, ...torques].flatMap((one) => one.problems)),
    ...used.flatMap((one) => judge.overdue(one)),
    ...judge.signed(done),
  ];
  const shims = results.filter((result) => result.form === 'shim');
  const lastOf = (all: readonly ShimResult[]) =>
    all.filter((one, index) => all.findLastIndex(({ part }) => part === one.part) === index);
  const firstOf = (all: readonly ShimResult[]) =>
    all.filter((one, index) => all.findIndex(({ part }) => part === one.part) === index);
  return {
    unit,
    found,
    remarks: results.flatMap((result) => {
      if (result.form === 'remark') return [result.text];
      return result.form === 'reading' && result.asFound && result.text !== null ? [result.text] : [];
    }),
    renewed: [...new Set(results.flatMap((result) => (result.form === 'renewed' ? [result.part] : [])))],
    shimsOut: firstOf(shims.filter(({ fitted }) => !fitted)),
    shimsIn: lastOf(shims.filter(({ fitted }) => fitted)),
    torques,
    outcomes,
    done,
    tools: procedure.shop.assets.filter(({ name }) => used.some(({ tool }) => tool === name)),
    // The same tool that is out of date is said once.
    problems: [...new Set(problems)],
  };
}

type Read = Extract<Result, { form: 'reading' | 'verdict' }>;

function isFound(result: Read): boolean {
  return result.asFound === true;
}

/** Names that were read or judged, in the order in which they first were. */
function names(results: readonly Result[], wanted: (result: Read) => boolean): string[] {
  const read = results.filter((one): one is Read => one.form === 'reading' || one.form === 'verdict');
  return [...new Set(read.filter(wanted).map(({ name }) => name))];
}

/** Judges the results of one unit. */
class UnitJudge {
  private readonly procedure: Procedure;
  private readonly unit: Unit;
  private readonly settledBy: (reading: ReadingResult) => Quantity | null;
  private readonly late = new Map<string, Say>();

  constructor(procedure: Procedure, unit: Unit, settledBy: (reading: ReadingResult) => Quantity | null) {
    this.procedure = procedure;
    this.unit = unit;
    this.settledBy = settledBy;
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
    const changed = [reading, verdict].flatMap((one) => (one === null ? [] : (this.changedAfter(one, name) ?? [])))[0];
    if (reading === null && verdict === null) problems.push((w) => w.certificate.missing.noResult({ name: title }));
    else if (changed !== undefined)
      problems.push((w) =>
        w.certificate.missing.stale({ name: title, part: w.inSentence(partWords(this.procedure, changed)) }),
      );
    else if (reading === null && asked.limits.length > 0)
      problems.push((w) =>
        w.certificate.missing.noReading({ name: title, limit: limitWords(w, asked.limits[0]!.limit, null) }),
      );
    if (reading !== null && asked.verdict && verdict === null)
      problems.push((w) => w.certificate.missing.noVerdict({ name: title }));
    return this.judged(asked, reading, verdict, problems);
  }

  /** Something else that was read or looked at; null: what it was read of has been renewed since. */
  other(name: string): Outcome | null {
    const asked = askedOf(this.procedure, name, this.unit);
    const { reading, verdict } = this.last(name);
    const fresh = <T extends Read>(result: T | null) =>
      result === null || this.changedAfter(result, name) !== null ? null : result;
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
    const { guarded, problem, failed } = this.against(name, reading, held);
    problems.push(...this.readWith(name, reading, asked.step === null ? this.measuring(asked.name) : [asked.step]));
    if (problem !== null) problems.push(problem);
    else {
      const settling = this.settledBy(reading);
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
    const inside = insideOf(window(limit), value);
    if (inside === 'open') return told((w) => w.certificate.missing.noTolerance(shown(w)));
    if (inside === 'other kind') return told((w) => w.certificate.missing.otherKind(shown(w)));
    if (inside === 'no') return told((w) => w.certificate.missing.outside(shown(w)), true);
    if (rule === 'simple') return told(null);
    const asset = this.asset(tool);
    if (asset === null) return told((w) => w.certificate.missing.noToolForRule({ name, reading: w.quantity(value) }));
    const drawn = guardedOn(asset, limit, rule);
    if (drawn === null) return told((w) => w.certificate.missing.noAccuracy({ name, tool: asset.name }));
    if (drawn.shut || insideOf(drawn.window, value) !== 'yes')
      return told((w) => w.certificate.missing.outsideGuarded({ ...shown(w), tool: asset.name }), true, drawn.window);
    return told(null, false, drawn.window);
  }

  found(name: string): Found {
    const { results } = this.unit;
    const reading = results.findLast(
      (one): one is ReadingResult => one.form === 'reading' && one.asFound && one.name === name,
    );
    const verdict = results.findLast((one) => one.form === 'verdict' && one.asFound === true && one.name === name);
    const steps = this.allSteps().filter((step) => step.verb === 'read' && step.asFound && step.text === name);
    return {
      name,
      reading: reading ?? null,
      verdict: verdict?.form === 'verdict' ? verdict.passed : null,
      held: heldInService(this.procedure, name, this.unit),
      problems: reading === undefined ? [] : this.readWith(nameWords(this.procedure, name), reading, steps),
    };
  }

  /** The last torque of a part. Through an adapter the wrench does not show the torque: then it is not judged. */
  torque(part: string): Torqued {
    const { procedure, unit } = this;
    const torque = unit.results.findLast((one): one is TorqueResult => one.form === 'torque' && one.part === part)!;
    const steps = this.allSteps().filter(
      (step) => (step.verb === 'torque' || step.verb === 'lock') && step.objects.some(({ name }) => name === part),
    );
    const name = partWords(procedure, part);
    const through = steps.some(({ tools }) => tools.some((tool) => tool.form === 'asset' && tool.adapter !== null));
    const limits = through
      ? []
      : steps.flatMap((step) => (step.limit === null ? [] : heldOf(procedure, step.limit, unit, step)));
    const fits = (held: Held) => insideOf(window(held.limit), torque.value) === 'yes';
    const held = limits.find(fits) ?? limits[0] ?? null;
    const outside: Say[] =
      held === null || fits(held)
        ? []
        : [
            (w) =>
              w.certificate.missing.torque({
                name: w.certificate.results.torque({ part: name }),
                reading: w.quantity(torque.value),
                limit: limitWords(w, held.limit, torque.value),
              }),
          ];
    return { torque, held, problems: [...this.readWith(name, torque, steps), ...outside] };
  }

  /** The tool of a reading: written down where a step names one, and such as can show it. */
  private readWith(name: string, read: ReadingResult | TorqueResult, steps: readonly Step[]): Say[] {
    const { value } = read;
    const asset = this.asset(read.tool);
    if (asset === null) {
      const named = steps.some(({ tools }) => tools.some(({ form }) => form !== 'words'));
      return named ? [(w) => w.certificate.missing.noTool({ name, reading: w.quantity(value) })] : [];
    }
    const { range } = asset;
    const shows =
      suits(asset, kindOfUnit(value.unit)) &&
      (range === null || (compare(value, range.low) !== -1 && compare(value, range.high) !== 1));
    return shows
      ? []
      : [(w) => w.certificate.missing.wrongTool({ name, tool: asset.name, reading: w.quantity(value) })];
  }

  /** The tool was past its date on the day on which the work was done. Dates are compared as they are written. */
  overdue(read: ReadingResult | TorqueResult): Say[] {
    const asset = this.asset(read.tool);
    const { results } = this.unit;
    const at = results.indexOf(read);
    const done =
      results.find((one, index): one is DoneResult => one.form === 'done' && index > at) ??
      results.findLast((one): one is DoneResult => one.form === 'done');
    const { due = null, name = '' } = asset ?? {};
    const on = done?.on ?? null;
    if (due === null || on === null || on <= due) return [];
    const key = `${name} ${on}`;
    const say = this.late.get(key) ?? ((w: Words) => w.certificate.missing.overdue({ tool: name, due, on }));
    this.late.set(key, say);
    return [say];
  }

  signed(done: readonly DoneResult[]): Say[] {
    if (done.length === 0) return [({ certificate }) => certificate.missing.noDone];
    return done
      .filter(({ on }) => on === null)
      .map(
        ({ by }): Say =>
          ({ certificate }) =>
            certificate.missing.noDate({ by }),
      );
  }

  private last(name: string) {
    const of = this.unit.results.filter((one): one is Read => one.form === 'reading' || one.form === 'verdict');
    const mine = of.filter((one) => one.name === name && !isFound(one));
    return {
      reading: mine.findLast((one) => one.form === 'reading') ?? null,
      verdict: mine.findLast((one) => one.form === 'verdict') ?? null,
    };
  }

  /**
   * The part that was changed after a result, so that it no longer counts. Another shim makes stale the test that it
   * is chosen for and those that come after; another part, unless it is a seal that is renewed at the end, all tests. What
   * was measured of a part in the hand is stale when that part is renewed.
   */
  private changedAfter(result: Read, name: string): string | null {
    const { procedure, unit } = this;
    const { results } = unit;
    const after = results.slice(results.indexOf(result) + 1);
    const order = (test: string) => testsFor(procedure, unit.number).findIndex(({ gate }) => gate?.name === test);
    const at = order(name);
    const measured = at === -1 ? this.partsMeasured(name) : null;
    for (const one of after) {
      if (measured !== null) {
        if (one.form === 'renewed' && measured.has(one.part)) return one.part;
        continue;
      }
      if (one.form === 'shim' && one.fitted) {
        const chosen = shimChoices(procedure).filter(({ step }) => step.objects.some((part) => part.name === one.part));
        if (chosen.length === 0 || chosen.some(({ test }) => order(test) <= at)) return one.part;
      }
      if (one.form === 'renewed') {
        const part = procedure.family.parts.find((other) => other.name === one.part);
        if (part?.renewed !== true && part?.suppliedLoose !== true) return one.part;
      }
    }
    return null;
  }

  private measuring(name: string): Step[] {
    return this.allSteps().filter(({ limit }) => limit?.form === 'spec' && limit.spec === name);
  }

  private partsMeasured(name: string): ReadonlySet<string> {
    return new Set([name, ...this.measuring(name).flatMap(({ objects }) => objects.map((object) => object.name))]);
  }

  private allSteps(): Step[] {
    const { stages, repairs } = this.procedure;
    return [...stages, ...repairs].flatMap(({ steps }) => steps).filter((step) => isFor(step, this.unit.number));
  }

  private asset(name: string | null): Asset | null {
    return this.procedure.shop.assets.find((one) => one.name === name) ?? null;
  }
}

function insideOf({ low, high }: Window, value: Quantity): 'yes' | 'no' | 'open' | 'other kind' {
  if (low === null && high === null) return 'open';
  const [over, under] = [low === null ? 1 : compare(value, low), high === null ? -1 : compare(value, high)];
  if (over === null || under === null) return 'other kind';
  return over === -1 || under === 1 ? 'no' : 'yes';
}

/** How far the units of each part number lie apart, where the family is proven so. */
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
        return unit.number === number && reading !== null ? [{ unit, value: reading.value, reading }] : [];
      });
      if (read.length < 2) continue;
      const step = procedure.stages
        .flatMap(({ steps }) => steps)
        .findLast((one) => one.verb === 'across' && one.gate?.name === `across ${name}` && isFor(one, number));
      const limit = step?.test?.spread ?? null;
      if (limit === null) {
        problems.push((w) => w.certificate.missing.noSpread({ name: title }));
        continue;
      }
      const of = read.map(({ unit }) => unit);
      const most = read.reduce((a, b) => (compare(b.value, a.value) === 1 ? b : a)).value;
      const least = read.reduce((a, b) => (compare(b.value, a.value) === -1 ? b : a)).value;
      const spread = sub(most, least);
      const inside = spread === null ? 'other kind' : insideOf(window(limit), spread);
      const shown = (w: Words) => ({
        name: title,
        units: unitsWords(w, of),
        limit: limitWords(w, limit, spread),
      });
      if (inside === 'other kind' || inside === 'open' || spread === null)
        problems.push((w) => w.certificate.missing.spreadKind(shown(w)));
      else if (inside === 'no')
        problems.push((w) => w.certificate.missing.spread({ ...shown(w), spread: w.quantity(spread) }));
      const unsettled = stands.some(
        (stand) => stand.settling !== null && read.some(({ reading }) => reading === stand.reading),
      );
      if (spread !== null)
        spreads.push({ name, units: of, spread, limit, source: step?.sourceText ?? null, unsettled });
    }
  }
  return { spreads, problems };
}
