import type Fraction from 'fraction.js';
import { choosing, stepsFor, testsFor, tightens } from '../analysis/held.ts';
import { provesThrough } from '../analysis/reach.ts';
import { Relations } from '../analysis/relations.ts';
import { caseFor, shimChoices } from '../analysis/shims.ts';
import { permissibleError } from '../engineering/tool-error.ts';
import type { ReadingResult, Result, Unit } from '../model/job.ts';
import type { Procedure, Step } from '../model/procedure.ts';
import { readingAt, testOf } from '../model/reading-id.ts';
import { isTestOf, limitUses, namedIn } from '../model/steps.ts';
import { amount, compare, sizeOf } from '../quantities/index.ts';
import type { Quantity } from '../quantities/types.ts';

/**
 * What made a result old: a part that was changed after it, a joint that was tightened again, or a revision that asks for it
 * again (then there is no part).
 */
export interface Change {
  readonly part: string;
  readonly how: 'changed' | 'tightened' | 'again';
}

/** What the order of the lines of a unit says: which results are from before a change, and which changed with none. */
export class Changes {
  private readonly procedure: Procedure;
  private readonly unit: Unit;
  private readonly relations: Relations;

  constructor(procedure: Procedure, unit: Unit) {
    this.procedure = procedure;
    this.unit = unit;
    this.relations = Relations.of(procedure.family);
  }

  /**
   * What was changed after a result of a name, so that it no longer counts. Another shim makes stale the test that it
   * is chosen for and those that come after; another part, or a joint that is tightened again, every test that proves
   * through it, unless the procedure itself does it after the test. What was measured of a part in the hand is stale
   * when that part is renewed.
   */
  after(result: Result, reading: string): Change | null {
    const { procedure, unit } = this;
    const name = testOf(reading);
    const order = (test: string) => testsFor(procedure, unit.number).findIndex(({ gate }) => gate.test === test);
    const at = order(name);
    const measured = at === -1 ? this.partsMeasured(name) : null;
    for (const one of unit.results.slice(unit.results.indexOf(result) + 1)) {
      if (isAskedAgain(one, reading)) return { part: '', how: 'again' };
      if ('part' in one && this.isElsewhere(reading, one.part)) continue;
      if (measured !== null) {
        if (one.form === 'renewed' && measured.has(one.part)) return { part: one.part, how: 'changed' };
        continue;
      }
      if (one.form === 'shim' && one.fitted) {
        const chosen = choosing(procedure, one.part);
        if (chosen.length === 0 || chosen.some(({ choose }) => choose === null || order(choose.test) <= at))
          return { part: one.part, how: 'changed' };
      }
      if (one.form === 'renewed' && !this.isFittedLater(name, one.part)) return { part: one.part, how: 'changed' };
      if (
        one.form === 'torque' &&
        this.provesThrough(name, one.part) &&
        !this.isLater(name, (step) => tightens(step, one.part))
      )
        return { part: one.part, how: 'tightened' };
    }
    return null;
  }

  /** What belongs to one cylinder leaves the readings of the others as they are, unless a repair asks for all again. */
  private isElsewhere(reading: string, name: string): boolean {
    const { test, place } = readingAt(reading);
    const part = this.procedure.family.parts.find((one) => one.name === name);
    const own = part?.side ?? part?.position ?? null;
    if (place === null || own === null || String(own) === place) return false;
    // A side says where a part is; that it is one of the places that are read, only where it is called the same.
    if (part?.side != null && !this.isPlace(part.side)) return false;
    return !testsFor(this.procedure, this.unit.number).some(
      ({ gate }) => gate.test === test && gate.onFail.some(({ allAgain }) => allAgain),
    );
  }

  private isPlace(name: string): boolean {
    return this.procedure.family.places.some(({ places }) => places.some((place) => place.name === name));
  }

  /** The part that was changed after the last torque of the joint that closes over it: the joint was opened for it. */
  underTorque(torque: Result & { readonly part: string }): string | null {
    const { results } = this.unit;
    const closed = this.relations.closure(torque.part);
    const changed = results
      .slice(results.indexOf(torque) + 1)
      .find(
        (one) =>
          ((one.form === 'shim' && one.fitted) || one.form === 'renewed') &&
          (closed.has(one.part) || this.isOpenedFor(one.part, torque.part)),
      );
    return changed !== undefined && 'part' in changed ? changed.part : null;
  }

  /** Another part is chosen or goes in new in a repair that tightens the joint again, however the family holds them. */
  private isOpenedFor(part: string, joint: string): boolean {
    return this.procedure.repairs.some(({ steps }) => {
      const changed = steps.findIndex(
        ({ verb, objects }) =>
          (verb === 'choose' || verb === 'renew') && objects.some((object) => object.name === part),
      );
      return changed >= 0 && steps.slice(changed).some((step) => tightens(step, joint));
    });
  }

  /** A reading that is far from the one before it, with nothing written down between them that could have moved it. */
  jump(name: string): readonly [ReadingResult, ReadingResult] | null {
    const { family } = this.procedure;
    const isSet =
      family.adjusters.some(({ sets }) => sets === name) ||
      family.parts.some((part) => choosing(this.procedure, part.name).some(({ choose }) => choose?.test === name));
    if (!isSet) return null;
    const readings = this.unit.results.filter((one) => one.form === 'reading' && one.name === name) as ReadingResult[];
    for (const [index, after] of readings.entries()) {
      const before = readings[index - 1];
      if (before !== undefined && this.isFar(before, after) && !this.somethingDone(before, after))
        return [before, after];
    }
    return null;
  }

  /**
   * A reading that moved the other way than the shim that was fitted before it moves it, or nowhere near as far, or much
   * further: off from what the shim brings by more than half of that. Common practice, no source: rates of units of one
   * family differ by a fifth.
   */
  contrary(name: string): readonly [ReadingResult, ReadingResult] | null {
    const choice = shimChoices(this.procedure).find(({ test }) => test === name);
    const rate = choice === undefined ? null : (caseFor(choice, this.unit.number)?.rate ?? null);
    if (choice === undefined || rate === null) return null;
    const { results } = this.unit;
    const part = choice.parts[0]!.name;
    const readings = results.filter(
      (one): one is ReadingResult => one.form === 'reading' && one.name === name && !one.asFound,
    );
    for (const [index, after] of readings.entries()) {
      const before = readings[index - 1];
      if (before === undefined || after.text !== null) continue;
      const [from, to] = [results.indexOf(before), results.indexOf(after)];
      const was = sizeBefore(results, part, from);
      const is = sizeBefore(results, part, to);
      // A new part may move it either way.
      if (was === null || is === null || results.slice(from, to).some(({ form }) => form === 'renewed')) continue;
      const brings = amount(is).sub(amount(was)).mul(rate);
      const off = amount(after.value).sub(amount(before.value)).sub(brings).abs();
      if (off.compare(brings.abs().div(2)) > 0 && this.isApart(off, before, after)) return [before, after];
    }
    return null;
  }

  /** Anything written down between two results that may have changed the unit, or words behind the later one. */
  somethingDone(before: Result, after: Result): boolean {
    const { results } = this.unit;
    if ('text' in after && after.text !== null) return true;
    const from = results.indexOf(before);
    const wasFound = 'asFound' in before && before.asFound;
    return results.slice(from + 1, results.indexOf(after)).some((one) => {
      if (one.form === 'renewed' || one.form === 'torque') return true;
      // What came in is taken apart and cleaned: that alone moves it. Later only another shim does.
      if (one.form !== 'shim') return false;
      if (!one.fitted) return wasFound;
      const now = results
        .slice(0, results.indexOf(one))
        .findLast((other) => other.form === 'shim' && other.part === one.part);
      return now?.form !== 'shim' || compare(now.size, one.size) !== 0;
    });
  }

  /**
   * Further apart than the errors of the tools and a twentieth of the reading. Common practice, no source: a unit that
   * nobody touches repeats within a few percent.
   */
  private isFar(before: ReadingResult, after: ReadingResult): boolean {
    if (compare(before.value, after.value) === null) return false;
    return this.isApart(amount(after.value).sub(amount(before.value)).abs(), before, after);
  }

  private isApart(by: Fraction, before: ReadingResult, after: ReadingResult): boolean {
    const [a, b] = [amount(before.value), amount(after.value)];
    const most = a.compare(b) > 0 ? a : b;
    const errors = [before, after].map(({ tool, value }) => {
      const asset = this.procedure.shop.assets.find(({ name }) => name === tool);
      const error = asset === undefined ? null : permissibleError(asset, value);
      return error === null ? most.mul(0) : sizeOf(error);
    });
    return by.compare(errors.reduce((sum, error) => sum.add(error), most.div(20))) > 0;
  }

  /** The procedure itself does it after the last test of a name. */
  private isLater(test: string, does: (step: Step) => boolean): boolean {
    return this.around(test).after.some(does);
  }

  /** A seal that goes on at the end, or one that is packed beside the unit. */
  private isFittedLater(test: string, name: string): boolean {
    const { before, after } = this.around(test);
    const fits = (step: Step) => step.verb === 'fit' && namedIn(step).some((object) => object.name === name);
    const part = this.procedure.family.parts.find((one) => one.name === name);
    return after.some(fits) || ((part?.renewed === true || part?.suppliedLoose === true) && !before.some(fits));
  }

  private around(test: string) {
    const steps = stepsFor({ ...this.procedure, repairs: [] }, this.unit.number);
    const at = steps.findLastIndex((step) => isTestOf(step, test));
    return { before: steps.slice(0, at), after: steps.slice(at + 1) };
  }

  /** A joint that holds pressure or carries the spring, or locks what is set: the test says through which, or all of them. */
  private provesThrough(test: string, part: string): boolean {
    const { family } = this.procedure;
    const gate = testsFor(this.procedure, this.unit.number).findLast((step) => step.gate.test === test)?.gate ?? null;
    if (gate === null) return false;
    const locks = family.adjusters.find((one) => one.part === part || one.lockedBy === part);
    const loaded = this.relations.joint(part) !== undefined && this.relations.loaded(part);
    return (
      ((loaded || gate.provesThrough !== null) && provesThrough(this.procedure, gate, part)) ||
      (locks !== undefined && provesThrough(this.procedure, gate, locks.part))
    );
  }

  private partsMeasured(name: string): ReadonlySet<string> {
    const measuring = stepsFor(this.procedure, this.unit.number).filter((step) =>
      limitUses(step).some((use) => use.form === 'spec' && use.spec === name),
    );
    return new Set([name, ...measuring.flatMap(({ objects }) => objects.map((object) => object.name))]);
  }
}

/** The job was moved to a revision for which a result does not hold over. */
export function isAskedAgain(one: Result, reading: string): boolean {
  return one.form === 'fact' && one.word === 'again' && (one.name === reading || one.name === testOf(reading));
}

/** The shim that was in before a result, as far as it is written down. */
function sizeBefore(results: readonly Result[], part: string, at: number): Quantity | null {
  const last = results.slice(0, at).findLast((one) => one.form === 'shim' && one.part === part);
  return last?.form === 'shim' ? last.size : null;
}
