import {
  type Asked,
  askedOf,
  heldInService,
  type RequiredTorque,
  stepsFor,
  testsFor,
  torqueLimits,
  torqueSteps,
} from '../analysis/held.ts';
import { guardedOn } from '../engineering/guarded.ts';
import type { Words } from '../i18n/index.ts';
import { limitWords } from '../i18n/limit-words.ts';
import type { FactResult, ReadingResult, Result, ShimResult, TorqueResult, Unit } from '../model/job.ts';
import type { Procedure, Step } from '../model/procedure.ts';
import { readingAt, readingId } from '../model/reading-id.ts';
import type { Asset } from '../model/shop.ts';
import type { Source } from '../model/source.ts';
import { limitUses } from '../model/steps.ts';
import { capital, nameWords, partWords } from '../model/titles.ts';
import { add, asDifference, between, compare, kindOfLimit, kindOfUnit, window } from '../quantities/index.ts';
import type { Difference, Quantity } from '../quantities/types.ts';
import type { Window } from '../quantities/window.ts';
import { type Change, Changes, isAskedAgain } from './changes.ts';
import { insideOf } from './inside.ts';
import type { Known, Stand, TestVerdict, TorqueVerdict, Verdict } from './judged.ts';
import { type Problem, problem } from './problem.ts';
import type { Say } from './say.ts';
import { unfinishedOf } from './unfinished.ts';

function noTool(name: string, value: Quantity, at: Source): Problem {
  return problem('tool-not-written-down', at, (w) =>
    w.certificate.missing.noTool({ name, reading: w.quantity(value) }),
  );
}

export type Read = Extract<Result, { form: 'reading' | 'verdict' }>;

export function isFound(result: Read): boolean {
  return result.asFound;
}

/** Names that were read or judged, in the order in which they first were. */
export function names(results: readonly Result[], wanted: (result: Read) => boolean): string[] {
  const read = results.filter((one): one is Read => one.form === 'reading' || one.form === 'verdict');
  return [...new Set(read.filter(wanted).map(({ name }) => name))];
}

/** Judges the results of one unit. */
export class UnitJudge {
  private readonly known: Known;
  private readonly procedure: Procedure;
  private readonly unit: Unit;
  private readonly changes: Changes;
  /** What was written down, of readings that are worked out. */
  private readonly basis = new Map<Result, Result>();

  constructor(known: Known, unit: Unit) {
    this.known = known;
    this.procedure = known.procedure;
    this.unit = unit;
    this.changes = new Changes(known.procedure, unit);
  }

  /** A test that the unit must have passed; null: not this part number. */
  proof(name: string): Verdict | null {
    const asked = askedOf(this.procedure, name, this.unit);
    const last = this.last(name);
    const { reading } = last;
    const verdict = this.counts(asked, reading, last.verdict) ? last.verdict : null;
    if (asked.notRequired && reading === null && verdict === null) return null;
    const title = nameWords(this.procedure, name);
    const problems: Problem[] = [];
    const old = [reading, verdict].find((one) => one !== null && this.changed(one, name) !== null) ?? null;
    if (reading === null && verdict === null) problems.push(this.noResult(title, name));
    else if (old !== null)
      problems.push(problem('result-from-before', old.source, this.stale(title, this.changed(old, name)!)));
    else if (reading === null && asked.limits.length > 0)
      problems.push(
        problem('not-proven', verdict!.source, (w) =>
          w.certificate.missing.noReading({ name: title, limit: limitWords(w, asked.limits[0]!.limit, null) }),
        ),
      );
    if (reading !== null && asked.verdict && verdict === null)
      problems.push(problem('not-proven', reading.source, (w) => w.certificate.missing.noVerdict({ name: title })));
    return this.judged(asked, reading, verdict, problems);
  }

  /** What made a result old; one that is worked out is as old as what it is worked out of. */
  private changed(result: Result, name: string): Change | null {
    return this.changes.after(this.basis.get(result) ?? result, name);
  }

  private noResult(title: string, name: string): Problem {
    const found = names(this.unit.results, isFound).includes(name);
    return problem('not-proven', this.unit.source, (w) =>
      w.certificate.missing[found ? 'onlyFound' : 'noResult']({ name: title }),
    );
  }

  private stale(name: string, { part, how }: Change): Say {
    if (how === 'again') return this.askedAgain(name);
    const key = how === 'changed' ? 'stale' : 'tightened';
    return (w) => w.certificate.missing[key]({ name, part: w.inSentence(partWords(this.procedure, part)) });
  }

  private askedAgain(name: string): Say {
    const { revision } = this.known.job;
    return (w) => w.certificate.missing.again({ name, revision: revision ?? '' });
  }

  /** Something else that was read or looked at; null: what it was read of has been renewed since. */
  other(name: string): Verdict | null {
    const asked = askedOf(this.procedure, name, this.unit);
    const { reading, verdict } = this.last(name);
    const fresh = <T extends Read>(result: T | null) =>
      result === null || this.changed(result, name) !== null ? null : result;
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
    before: readonly Problem[],
  ): Verdict {
    const { procedure } = this;
    const name = nameWords(procedure, asked.name);
    const problems = [...before];
    if (verdict !== null && !verdict.passed)
      problems.push(problem('result-fails', verdict.source, (w) => w.certificate.missing.failed({ name })));
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
        conceded: null,
        problems,
      };
    const doubt = this.doubtOf(reading);
    // Of a figure that cannot be nothing else is to be said.
    const { guarded, found, failed } =
      doubt === null ? this.against(name, reading, held) : { guarded: null, found: doubt, failed: true };
    if (doubt === null)
      problems.push(
        ...this.readWith(name, reading, held, asked.step === null ? this.measuring(asked.name) : [asked.step]),
      );
    const conceded = failed ? this.concession(asked.name, reading) : null;
    if (conceded !== null) {
      // Said on the certificate as what it is.
    } else if (found !== null) problems.push(found);
    else {
      const settling = settledOut(this.known.stands, reading);
      if (settling !== null)
        problems.push(
          problem('result-fails', reading.source, (w) =>
            w.certificate.missing.settles({
              name,
              reading: w.quantity(reading.value),
              settling: w.quantity(settling),
            }),
          ),
        );
    }
    return {
      asked,
      reading,
      verdict: verdict?.passed ?? null,
      held,
      guarded,
      failed: failed || verdict?.passed === false,
      conceded,
      problems,
    };
  }

  /** A reading against its limit, by the decision rule. */
  private against(
    name: string,
    { value, tool, source }: ReadingResult,
    held: RequiredTorque | null,
  ): { guarded: Window | null; found: Problem | null; failed: boolean } {
    const told = (rule: Problem['rule'], say: Say | null, failed = false, guarded: Window | null = null) => ({
      guarded,
      found: say === null ? null : problem(rule, source, say),
      failed,
    });
    if (held === null) return told(null, null);
    const { limit, rule } = held;
    const shown = (w: Words) => ({ name, reading: w.quantity(value), limit: limitWords(w, limit, value) });
    const inside = insideOf(window(limit), value, compare);
    if (inside === 'open') return told('not-proven', (w) => w.certificate.missing.noTolerance(shown(w)));
    if (inside === 'other kind') return told('result-fails', (w) => w.certificate.missing.otherKind(shown(w)));
    if (inside === 'no') return told('result-fails', (w) => w.certificate.missing.outside(shown(w)), true);
    if (rule === 'simple') return told(null, null);
    const asset = this.asset(tool);
    // A missing tool is reported where its tool is required.
    if (asset === null) return told(null, null);
    const drawn = guardedOn(asset, limit, rule);
    if (drawn === null)
      return told('tool-not-in-date', (w) => w.certificate.missing.noAccuracy({ name, tool: asset.name }));
    if (drawn.shut || insideOf(drawn.window, value, compare) !== 'yes')
      return told(
        'result-in-guard-band',
        (w) => w.certificate.missing.outsideGuarded({ ...shown(w), tool: asset.name }),
        true,
        drawn.window,
      );
    return told(null, null, false, drawn.window);
  }

  found(name: string): TestVerdict {
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

  /** What allows a result that is outside its limit: written down after it. */
  private concession(name: string, result: Result): FactResult | null {
    const { results } = this.unit;
    const after = results.slice(results.indexOf(this.basis.get(result) ?? result) + 1);
    return (
      after.find((one): one is FactResult => one.form === 'fact' && one.word === 'concession' && one.name === name) ??
      null
    );
  }

  /** What was begun and is not over: waiting for a part, or sent out. */
  unfinished(): Problem[] {
    return unfinishedOf(this.unit).map(({ how, fact: { name: part, on, text: what, source } }) =>
      problem('not-proven', source, (w) =>
        how === 'waiting'
          ? w.certificate.missing.waiting({
              part: capital(partWords(this.procedure, part ?? '')),
              since: on ?? '',
            })
          : w.certificate.missing.sentOut({ on: on ?? '', what: what ?? '' }),
      ),
    );
  }

  /** The last torque of a part. */
  torque(part: string): TorqueVerdict {
    const { procedure, unit } = this;
    const torque = unit.results.findLast((one): one is TorqueResult => one.form === 'torque' && one.part === part)!;
    const name = partWords(procedure, part);
    const limits = torqueLimits(procedure, unit, part);
    const fits = (held: RequiredTorque) => insideOf(window(held.limit), torque.value, compare) === 'yes';
    const held = limits.find(fits) ?? limits[0] ?? null;
    const doubt = this.doubtOf(torque);
    if (doubt !== null) return { torque, held, problems: [doubt] };
    const problems = this.readWith(name, torque, held, torqueSteps(procedure, unit, part));
    if (held !== null && !fits(held) && this.concession(part, torque) === null)
      problems.push(
        problem('result-fails', torque.source, (w) =>
          w.certificate.missing.torque({
            name: w.certificate.results.torque({ part: name }),
            reading: w.quantity(torque.value),
            limit: limitWords(w, held.limit, torque.value),
          }),
        ),
      );
    const { results } = unit;
    if (results.slice(results.indexOf(torque)).some((one) => isAskedAgain(one, part)))
      problems.push(
        problem('result-from-before', torque.source, (w) =>
          this.askedAgain(w.certificate.results.torque({ part: name }))(w),
        ),
      );
    const opened = this.changes.underTorque(torque);
    if (opened !== null)
      problems.push(
        problem('result-from-before', torque.source, (w) =>
          w.certificate.missing.torqueStale({
            name: w.certificate.results.torque({ part: name }),
            part: w.inSentence(partWords(procedure, opened)),
          }),
        ),
      );
    return { torque, held, problems };
  }

  /** The tool that a shim which came out was measured with, where the procedure says with which. */
  measured({ part, size, tool, source }: ShimResult): Problem[] {
    const steps = this.allSteps().filter(
      ({ verb, objects }) => verb === 'measure' && objects.some((object) => object.name === part),
    );
    return this.named(capital(partWords(this.procedure, part)), size, { tool: tool ?? null, source }, steps);
  }

  /**
   * The tool of a reading is written down where a step names one, and wherever a figure is judged that a tool of the shop
   * shows. The one at the station is not taken for it: which one was in the hand matters when one of them is
   * found wrong. A guarded rule also needs its permissible error.
   */
  private readWith(
    name: string,
    { value, tool, source }: ReadingResult | TorqueResult,
    held: RequiredTorque | null,
    steps: readonly Step[],
  ): Problem[] {
    const kind = kindOfUnit(value.unit);
    const shown = this.procedure.shop.assets.some(
      ({ range }) => range !== null && kindOfUnit(range.high.unit) === kind,
    );
    if (held !== null && tool === null) {
      if (held.rule !== 'simple')
        return [
          problem('tool-not-written-down', source, (w) =>
            w.certificate.missing.noToolForRule({ name, reading: w.quantity(value) }),
          ),
        ];
      if (shown || kind === 'pressure' || kind === 'torque') return [noTool(name, value, source)];
    }
    // The tools that the step of a timed test names show something else than the time.
    return kind === 'time' ? [] : this.named(name, value, { tool, source }, steps);
  }

  private named(
    name: string,
    value: Quantity,
    { tool, source }: Pick<ReadingResult, 'tool' | 'source'>,
    steps: readonly Step[],
  ): Problem[] {
    return tool === null && steps.some(({ tools }) => tools.some(({ form }) => form !== 'words'))
      ? [noTool(name, value, source)]
      : [];
  }

  /** The tools that a result was read with. */
  toolsOf(result: Result): Asset[] {
    const named = ['tool' in result ? result.tool : null, 'watched' in result ? result.watched : null];
    return named.flatMap((name) => this.asset(name ?? null) ?? []);
  }

  /** The unit can be found again by its serial. */
  serial(): Problem[] {
    const { serial, noSerial, source } = this.unit;
    if (serial === null)
      return noSerial === null
        ? [problem('serial-not-written-down', source, ({ certificate }) => certificate.missing.noSerial)]
        : [];
    const other = this.known.job.units.find((one) => one.serial?.trim() === serial.trim() && one !== this.unit);
    // Reported where it is read.
    return other === undefined
      ? []
      : [problem(null, source, ({ certificate }) => certificate.missing.serialTwice({ serial, place: other.place }))];
  }

  /** Figures that cannot be, the last ones and those before them. */
  doubts(): Problem[] {
    return this.known.doubts.filter(({ unit }) => unit === this.unit).map(({ problem }) => problem);
  }

  private doubtOf(result: Result): Problem | null {
    return this.known.doubts.find((doubt) => doubt.result === result)?.problem ?? null;
  }

  /** Results of one name that contradict each other, or lie far apart, with nothing written down between them. */
  unexplained(): Problem[] {
    return names(this.unit.results, () => true).flatMap((name): Problem[] => {
      const title = nameWords(this.procedure, name);
      const passed = this.passedAfterFail(name);
      if (passed !== null)
        return [
          problem('result-unexplained', passed.source, (w) => w.certificate.missing.passedAfterFail({ name: title })),
        ];
      const jump = this.changes.jump(name);
      const [before, after] = jump ?? this.changes.contrary(name) ?? [];
      if (before === undefined || after === undefined || this.doubtOf(before) !== null || this.doubtOf(after) !== null)
        return [];
      const why = jump === null ? 'contrary' : 'jump';
      return [
        problem('result-unexplained', after.source, (w) =>
          w.certificate.missing[why]({ name: title, before: w.quantity(before.value), after: w.quantity(after.value) }),
        ),
      ];
    });
  }

  private passedAfterFail(name: string): Read | null {
    const of = this.unit.results.filter((one): one is Read => one.form === 'reading' || one.form === 'verdict');
    const mine = of.filter((one) => one.name === name && !isFound(one));
    const { limits } = askedOf(this.procedure, name, this.unit);
    const fails = (one: Read) =>
      one.form === 'verdict'
        ? !one.passed
        : limits.some(({ limit }) => insideOf(window(limit), one.value, compare) === 'no') &&
          this.doubtOf(one) === null;
    const found = mine.find((one, index) => {
      const before = mine[index - 1];
      return before !== undefined && fails(before) && !fails(one) && !this.changes.somethingDone(before, one);
    });
    return found ?? null;
  }

  /** What is certified is before the last `done by`. */
  unsigned(used: readonly Result[]): Problem[] {
    const { results } = this.unit;
    const last = results.findLastIndex(({ form }) => form === 'done');
    const renewed = results.filter(({ form }) => form === 'renewed');
    const isSigned = (one: Result) => 'done' in one && one.done?.by != null;
    const after = [...used, ...renewed].find((one) => results.indexOf(one) > last && !isSigned(one));
    return last >= 0 && after !== undefined
      ? [problem('nobody-answers', after.source, ({ certificate }) => certificate.missing.unsigned)]
      : [];
  }

  private last(name: string) {
    const of = this.unit.results.filter((one): one is Read => one.form === 'reading' || one.form === 'verdict');
    const mine = of.filter((one) => one.name === name && !isFound(one));
    return {
      reading: mine.findLast((one) => one.form === 'reading') ?? this.workedOut(name),
      verdict: mine.findLast((one) => one.form === 'verdict') ?? null,
    };
  }

  /** What comes of two readings, as if it had been read with the second of them. Null: one is missing. */
  private workedOut(id: string): ReadingResult | null {
    const { test, ...at } = readingAt(id);
    const plan = testsFor(this.procedure, this.unit.number).findLast(({ gate }) => gate.test === test)?.plan;
    if (plan?.workedOut == null) return null;
    const { first, second, how } = plan.workedOut;
    const [a, b] = [first, second].map(({ name }) => {
      const of = readingId({ test: name, ...at });
      return this.unit.results.findLast(
        (one): one is ReadingResult => one.form === 'reading' && !one.asFound && one.name === of,
      );
    });
    if (a === undefined || b === undefined) return null;
    const value = how === 'less' ? between(a.value, b.value) : add(a.value, asDifference(b.value));
    if (value === null) return null;
    const { number, unit } = value;
    const { results } = this.unit;
    const later = results.indexOf(a) > results.indexOf(b) ? a : b;
    const made = { ...later, name: id, value: { number, unit } };
    this.basis.set(made, later);
    return made;
  }

  private measuring(name: string): Step[] {
    return this.allSteps().filter((step) => limitUses(step).some((use) => use.form === 'spec' && use.spec === name));
  }

  private allSteps(): Step[] {
    return stepsFor(this.procedure, this.unit.number);
  }

  private asset(name: string | null): Asset | null {
    return this.procedure.shop.assets.find((one) => one.name === name) ?? null;
  }
}

/** What a reading is to lose yet by the settling of a new spring, if it will then be under its limit. */
function settledOut(stands: readonly Stand[], reading: ReadingResult): Difference | null {
  const stand = stands.find((one) => one.reading === reading);
  if (stand === undefined || stand.settling === null || stand.low === null) return null;
  const least = add(stand.low, stand.settling);
  return least !== null && compare(reading.value, least) === -1 ? stand.settling : null;
}
