import Fraction from 'fraction.js';
import { limitOfReading } from '../../analysis/readings.ts';
import { type ChoiceCase, caseFor, type ShimChoice, shimChoices } from '../../analysis/shims.ts';
import { findGauge, markOn, unitOnTool } from '../../analysis/tools.ts';
import type { DrawerLayout } from '../../engineering/drawer.ts';
import { guardedOn } from '../../engineering/guarded.ts';
import { differenceOf } from '../../engineering/measured.ts';
import { type ShimQuestion, safeAim, shimAdvice } from '../../engineering/shim-advice.ts';
import { resolutionOf } from '../../engineering/slip.ts';
import { permissibleError } from '../../engineering/tool-error.ts';
import type { Procedure, Step } from '../../model/procedure.ts';
import type { DecisionRule } from '../../model/shop.ts';
import { specFor } from '../../model/spec-for.ts';
import { decimalsOf, exactText, rounded, toStep, written } from '../../quantities/decimal.ts';
import {
  amount,
  type Difference,
  kindOfUnit,
  type Limit,
  lastPlace,
  type Quantity,
  sizeOf,
  unitOf,
  unitOfLimit,
  window,
} from '../../quantities/index.ts';
import { numbersOf, type PrintContext } from '../print-context.ts';
import { type ForNumbers, forNumbers } from './by-number.ts';

/** Most columns of the table: beyond, the lead is asked. */
const mostColumns = 35;
/** Where no limit in service says how low a unit may come in: 15 % under the limit; and 3 % over it. */
const lowest = new Fraction(85, 100);
const highest = new Fraction(103, 100);
/** So many steps of the drawer at a time, where single ones would not fit on the sheet. */
const strides = [1, 2, 5, 10, 20, 50, 100, 200, 500, 1000];

/** By how much thicker a shim for which reading, in the unit and on the marks of the gauge, lowest first. */
export interface ShimTable {
  /** The reading that the shim is to bring. */
  readonly test: string;
  /** On the gauge. */
  readonly unit: Quantity['unit'];
  /** From one mark of the gauge to the next. */
  readonly mark: Difference;
  /** Where the changes bring a reading. */
  readonly aim: Quantity;
  /** That the drawer is written in. */
  readonly drawerUnit: Quantity['unit'];
  readonly stairs: readonly Stair[];
}

/** From a reading to another, as the gauge shows them, the shim is changed by so much. */
export interface Stair {
  readonly low: Quantity;
  readonly high: Quantity;
  /** Thicker; thinner under nothing. Null: no change brings it into the window. */
  readonly change: Quantity | null;
}

/**
 * `choose shim to bring opening to 254 bar by shim-rate` worked out, one table for each part number that differs. Each
 * change is the one that the advice for a unit gives, and lands in the window for every reading above it.
 * None where the rate or the aim is not given, or the drawer has no even steps.
 */
export function shimTables(setting: PrintContext, step: Step): ForNumbers<ShimTable>[] {
  const { procedure } = setting;
  const choice = shimChoices(procedure).find((one) => one.step === step);
  const drawer = choice === undefined ? null : evenStep(choice);
  if (choice === undefined || drawer === null) return [];
  const numbers = numbersOf(setting).filter((number) => caseFor(choice, number) !== undefined);
  return forNumbers(numbers, (number) => knownTable(procedure, choice, drawer, caseFor(choice, number)!));
}

/** A procedure never changes, and the same shim is chosen in several repairs, on one sheet after the other. */
const known = new WeakMap<Procedure, Map<string, ShimTable | null>>();

function knownTable(procedure: Procedure, choice: ShimChoice, drawer: EvenStep, one: ChoiceCase): ShimTable | null {
  const tables = known.get(procedure) ?? new Map<string, ShimTable | null>();
  known.set(procedure, tables);
  const rule = acceptanceOf(procedure, choice, one);
  const exact = [drawer.width, one.rate, one.rateError].map((value) => value?.toFraction() ?? null);
  const key = JSON.stringify([
    choice.test,
    drawer.unit,
    drawer.decimals,
    exact,
    one.limit,
    one.inService,
    one.target,
    rule,
  ]);
  const before = tables.get(key);
  if (before !== undefined) return before;
  const made = tableFor(procedure, choice, drawer, one, rule);
  tables.set(key, made);
  return made;
}

interface EvenStep {
  /** From one size to the next, in meters. */
  readonly width: Fraction;
  readonly unit: Quantity['unit'];
  readonly decimals: number;
}

/** The step of a drawer in which every size is as far from the next. Null: it has none, or is not even. */
function evenStep({ sizes, stocks }: ShimChoice): EvenStep | null {
  if (sizes === null || sizes.length < 2) return null;
  const width = sizes[1]!.sub(sizes[0]!);
  if (sizes.some((size, index) => index > 0 && !size.sub(sizes[index - 1]!).equals(width))) return null;
  const all = stocks.flatMap((stock) => stock.sizes);
  return { width, unit: all[0]!.unit, decimals: Math.max(...all.map(({ number }) => decimalsOf(number))) };
}

/** Readings that ask for the same change, as numbers of marks. */
interface Run {
  readonly from: number;
  readonly to: number;
  /** In steps of the drawer, thinner under nothing; null: none brings them into the window. */
  readonly change: number | null;
}

/** Readings of the gauge, mark by mark, and the change that each asks for. */
function tableFor(
  procedure: Procedure,
  choice: ShimChoice,
  drawer: EvenStep,
  one: ChoiceCase,
  rule: DecisionRule,
): ShimTable | null {
  const { rate, target, limit, inService } = one;
  if (rate === null || target === null || limit === null) return null;
  const own = unitOfLimit(limit);
  if (own === null || kindOfUnit(own) !== kindOfUnit(target.unit)) return null;
  const gauge = findGauge(procedure, choice.test, limit);
  const unit = unitOnTool(gauge, kindOfUnit(own)) ?? own;
  const mark = markOn(gauge, limit, unit);
  const drawn = gauge === null || rule === 'simple' ? null : guardedOn(gauge, limit, rule);
  const { low, high } = drawn === null || drawn.shut ? window(limit) : drawn.window;
  const end = high ?? low;
  if (end === null) return null;
  const zero = amount({ number: '0', unit });
  const size = sizeOf(mark);
  const asked = {
    now: { number: '0', unit: drawer.unit },
    low,
    high,
    aim: target,
    rate,
    rateError: one.rateError,
    scatter: null,
    resolution: differenceOf(resolutionOf(size.valueOf()), unit),
    guard: drawn === null && gauge !== null ? permissibleError(gauge, end) : null,
    settling: null,
  };
  const reading = (marks: number): Quantity => ({
    number: written(new Fraction(mark.number).mul(marks), decimalsOf(mark.number)),
    unit,
  });
  const inMarks = (value: Fraction, rounding: 'up' | 'down') =>
    Number(toStep(value.sub(zero), size, rounding).div(size).valueOf());
  const { bottom, top } = rangeOf(limit, inService, amount(target));
  const [first, last] = [Math.max(0, inMarks(bottom, 'down')), inMarks(top, 'up')];
  if (!(last > first)) return null;
  const middle = Math.min(last, Math.max(first, inMarks(amount(target), 'down')));
  const runs = runsFor(asked, drawer.width, reading, { first, middle, last });
  const aim = safeAim({ ...asked, reading: reading(middle), drawer: changesOf(drawer.width, 1, 1) })!;
  if (runs.length < 2) return null;
  const shift = (steps: number): Quantity => ({
    number: written(drawer.width.mul(steps).div(unitOf(drawer.unit).factor), drawer.decimals),
    unit: drawer.unit,
  });
  return {
    test: choice.test,
    unit,
    mark,
    aim: aimOn(aim, unit, mark),
    drawerUnit: drawer.unit,
    stairs: runs.map(({ from, to, change }) => ({
      low: reading(from),
      high: reading(to),
      change: change === null ? null : shift(change),
    })),
  };
}

/** How readings are judged: by the spec, or as the shop says. */
function acceptanceOf(procedure: Procedure, { test }: ShimChoice, { number }: ChoiceCase): DecisionRule {
  const use = limitOfReading(procedure, test);
  const own = use?.form === 'spec' ? specFor(procedure, use.spec, number)?.acceptance : null;
  return own ?? procedure.shop.acceptance.rule;
}

/** The aim in the unit of the gauge, with a digit more than its marks where it lies between two. */
function aimOn(aim: Fraction, unit: Quantity['unit'], mark: Difference): Quantity {
  const { factor, offset } = unitOf(unit);
  const value = aim.div(factor).sub(offset);
  const places = Math.max(0, decimalsOf(mark.number), -lastPlace(mark.number));
  const exact = exactText(value, decimalsOf(mark.number));
  return { number: decimalsOf(exact) <= places ? exact : rounded(value, places, 'nearest'), unit };
}

/** Readings that may come: from the lowest in service, or somewhat under the limit, to somewhat over it. */
function rangeOf(limit: Limit, inService: Limit | null, aim: Fraction): { bottom: Fraction; top: Fraction } {
  const { low, high } = window(limit);
  const worn = inService === null ? null : window(inService).low;
  return {
    bottom: worn === null ? (low === null ? aim : amount(low)).mul(lowest) : amount(worn),
    top: (high === null ? aim : amount(high)).mul(highest),
  };
}

/** Changes of a shim, as a drawer about nothing: so many steps thinner, to so many thicker, each as its number of steps. */
function changesOf(width: Fraction, stride: number, most: number): DrawerLayout {
  const { n, d } = width;
  const pieces = Array.from({ length: 2 * most + 1 }, (_, index) => {
    const steps = (index - most) * stride;
    return { thickness: { number: String(steps), unit: 'mm' } as const, ticks: n * BigInt(steps), count: null };
  });
  return { pieces, perMetre: d, stacks: false, most: null };
}

/** More than can be shown, and still looked at: it may be that the next stride leaves readings with no change. */
const mostRuns = 3 * mostColumns;

/**
 * What the advice says for each reading, readings with the same change together. Single steps of the drawer, or as few at
 * a time as leave no more columns than fit; where that would leave readings with no change that lands, the table goes
 * about the aim as far as it has columns.
 */
function runsFor(
  asked: Omit<ShimQuestion, 'reading' | 'drawer'>,
  width: Fraction,
  reading: (marks: number) => Quantity,
  { first, middle, last }: { readonly first: number; readonly middle: number; readonly last: number },
): Run[] {
  const span = amount(reading(last))
    .sub(amount(reading(first)))
    .div(asked.rate);
  let best: Run[] | null = null;
  for (const stride of strides) {
    const most = Math.ceil(span.div(width.mul(stride)).valueOf()) + 1;
    if (most > mostRuns && stride !== strides.at(-1)) continue;
    const drawer = changesOf(width, stride, Math.min(most, mostRuns));
    const adviceOf = (marks: number): Told => {
      const advice = shimAdvice({ ...asked, reading: reading(marks), drawer });
      if ('choice' in advice)
        return { key: advice.choice.shims[0]!.number, change: Number(advice.choice.shims[0]!.number) };
      const { nothing } = advice;
      return {
        key: nothing.reason === 'too coarse' ? `over ${nothing.under.shims[0]!.number}` : nothing.reason,
        change: null,
      };
    };
    const runs = runsBetween(adviceOf, first, last);
    if (best !== null && without(runs) > without(best)) break;
    best = runs;
    if (runs.length <= mostColumns) break;
  }
  const runs = best ?? [];
  const at = runs.findIndex(({ to }) => to >= middle);
  const most = mostColumns;
  // Most units come in under the limit.
  const start = Math.max(0, Math.min(runs.length - most, at - Math.floor((most * 3) / 4)));
  return runs.slice(start, start + most);
}

/** The advice, and a key that is the same for readings with the same advice. */
interface Told {
  readonly key: string;
  readonly change: number | null;
}

/** How many readings are left with no change. */
function without(runs: readonly Run[]): number {
  return runs.reduce((sum, { from, to, change }) => sum + (change === null ? to - from + 1 : 0), 0);
}

/** Consecutive readings with the same advice; a lower reading never needs a smaller change, so equal ends decide. */
function runsBetween(of: (marks: number) => Told, first: number, last: number): Run[] {
  const runs: Run[] = [];
  const add = ({ from, to, change }: Run) => {
    const before = runs.at(-1);
    if (before?.change === change) runs[runs.length - 1] = { ...before, to };
    else runs.push({ from, to, change });
  };
  const split = (from: number, to: number, low: Told, high: Told) => {
    if (low.key === high.key) add({ from, to, change: low.change });
    else if (to - from === 1) {
      add({ from, to: from, change: low.change });
      add({ from: to, to, change: high.change });
    } else {
      const middle = Math.floor((from + to) / 2);
      const told = of(middle);
      split(from, middle, low, told);
      // The middle one is in the first half.
      if (middle + 1 <= to) split(middle + 1, to, middle + 1 === to ? high : of(middle + 1), high);
    }
  };
  split(first, last, of(first), of(last));
  return runs;
}
