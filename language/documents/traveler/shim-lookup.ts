import Fraction from 'fraction.js';
import type { LaidOut } from '../../engineering/drawer.ts';
import { guardedOn } from '../../engineering/guarded.ts';
import { differenceOf } from '../../engineering/measured.ts';
import { type ShimQuestion, safeAim, shimAdvice } from '../../engineering/shim-advice.ts';
import { resolutionOf } from '../../engineering/slip.ts';
import { permissibleError } from '../../engineering/tool-error.ts';
import type { Step } from '../../model/procedure.ts';
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
  window,
} from '../../quantities/index.ts';
import { gaugeOfReading, markOn, unitOnTool } from '../../analysis/gauge-of-reading.ts';
import { type ChoiceCase, limitOfReading, type ShimChoice, shimChoices } from '../../analysis/shim-choices.ts';
import { unitOfLimit } from './figures.ts';
import { lookupsOf } from './lookups.ts';
import type { Lookup } from './model.ts';
import { objectWords, specTitle } from './names.ts';
import type { Setting } from './print-context.ts';

/** Columns that stand beside each other at arm's length, and rows of them: beyond, the lead is asked. */
const columns = 7;
const mostRows = 5;
/** Where no limit in service says how low a unit may come in: 15 % under the limit; and 3 % over it. */
const lowest = new Fraction(85, 100);
const highest = new Fraction(103, 100);
/** So many steps of the drawer at a time, where single ones would not fit on the sheet. */
const strides = [1, 2, 5, 10, 20, 50, 100, 200, 500, 1000];

/**
 * `choose shim to bring opening to 254 bar by shim-rate` worked out: by how much thicker a shim for which reading, in the
 * unit and on the marks of the gauge that it is read on, lowest first, one table for each part number that differs. Each
 * change is the one that the advice for a unit gives, and lands in the window for every reading that it stands under. What
 * the table does not cover it says. None where the rate or the aim is not given, or the drawer has no even steps.
 */
export function shimLookup(setting: Setting, step: Step): Lookup[] {
  return shimTables(setting, step).flatMap(({ table }) => inRows(table));
}

/** One table for each part number that differs, with its figures, to be drawn as well. */
export interface ShimTable {
  /** Part numbers that it is for; empty: all. */
  readonly whose: string;
  readonly table: Lookup;
  readonly stairs: readonly Stair[];
  /** From one mark of the gauge to the next. */
  readonly mark: number;
}

/** From a reading to another, as the gauge shows them, the shim is changed by so much: figures in the printed units. */
export interface Stair {
  readonly low: number;
  readonly high: number;
  /** Null: no change brings it into the window. */
  readonly change: number | null;
}

export function shimTables(setting: Setting, step: Step): ShimTable[] {
  const choice = shimChoices(setting.procedure).find((one) => one.step === step);
  const drawer = choice === undefined ? null : evenStep(choice);
  if (choice === undefined || drawer === null) return [];
  const { words } = setting;
  const numbers = setting.numbers.length === 0 ? [null] : setting.numbers.map(({ name }) => name);
  const cases = numbers.flatMap((number) => {
    const found = choice.cases.find((one) => one.number === number) ?? choice.cases.find((one) => one.number === null);
    return found === undefined ? [] : [{ number: number ?? '', made: columnsOf(setting, choice, drawer, found) }];
  });
  const tables = lookupsOf(cases, ({ unit, aim, ends }) => ({
    title: words.lookup.outside({
      title: words.lookup.shim({
        part: objectWords(setting, step.objects).join(', '),
        reading: words.inSentence(specTitle(setting.procedure, choice.test)),
        aim,
      }),
      ...ends,
    }),
    from: `${words.lookup.from}, ${words.wording.unit(unit, false)}`,
    to: `${words.lookup.change}, ${drawer.unit}`,
  }));
  // The tables stand in the order in which each first came up: so do the figures.
  const kept = cases.flatMap(({ made }) => (made === null ? [] : [made]));
  const distinct = kept.filter((made, index) => kept.findIndex((one) => same(one, made)) === index);
  return tables.map((table, index) => {
    const of = cases.filter(({ made }) => same(made, distinct[index])).map(({ number }) => number);
    const { stairs, mark } = distinct[index]!;
    return { whose: of.length === cases.length ? '' : of.join(', '), table, stairs, mark };
  });
}

function same(one: unknown, other: unknown): boolean {
  return JSON.stringify(one) === JSON.stringify(other);
}

/** A long table in rows that can be read, all of about the same length; the title stands over the first. */
function inRows(table: Lookup): Lookup[] {
  const rows = Math.ceil(table.pairs.length / columns);
  const length = Math.ceil(table.pairs.length / rows);
  return Array.from({ length: rows }, (_, row) => ({
    ...table,
    title: row === 0 ? table.title : '',
    pairs: table.pairs.slice(row * length, (row + 1) * length),
  }));
}

interface EvenStep {
  /** From one size to the next, in metres. */
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
function columnsOf(setting: Setting, choice: ShimChoice, drawer: EvenStep, one: ChoiceCase) {
  const { rate, target, limit, inService } = one;
  if (rate === null || target === null || limit === null) return null;
  const own = unitOfLimit(limit);
  if (own === null || kindOfUnit(own) !== kindOfUnit(target.unit)) return null;
  const gauge = gaugeOfReading(setting.procedure, choice.test, limit);
  const unit = unitOnTool(gauge, kindOfUnit(own)) ?? own;
  const mark = markOn(gauge, limit, unit);
  const rule = acceptanceOf(setting, choice, one);
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
  const print = (marks: number) => setting.words.number(reading(marks).number);
  const shift = (steps: number) => drawer.width.mul(steps).div(unitOf(drawer.unit).factor);
  const pairs = runs.map(({ from, to, change }) => {
    const thickness = change === null ? '' : setting.words.number(written(shift(change), drawer.decimals));
    return {
      from: from === to ? print(from) : `${print(from)}–${print(to)}`,
      to: change === null ? setting.words.lookup.ask : change > 0 ? `+${thickness}` : change === 0 ? '0' : thickness,
    };
  });
  const stairs = runs.map(
    ({ from, to, change }): Stair => ({
      low: Number(reading(from).number),
      high: Number(reading(to).number),
      change: change === null ? null : shift(change).valueOf(),
    }),
  );
  const shown = (marks: number) => setting.words.quantity(reading(marks));
  return {
    pairs,
    stairs,
    mark: Number(mark.number),
    unit,
    aim: aimWords(setting, aim, unit, mark),
    ends: { low: shown(runs[0]!.from), high: shown(runs.at(-1)!.to) },
  };
}

/** How readings are judged: by the spec, or as the shop says. */
function acceptanceOf({ procedure }: Setting, { test }: ShimChoice, { number }: ChoiceCase): DecisionRule {
  const use = limitOfReading(procedure, test);
  const own = use?.form === 'spec' ? specFor(procedure, use.spec, number)?.acceptance : null;
  return own ?? procedure.shop.acceptance.rule;
}

/** The aim in the unit of the gauge, with a digit more than its marks where it lies between two. */
function aimWords({ words }: Setting, aim: Fraction, unit: Quantity['unit'], mark: Difference): string {
  const { factor, offset } = unitOf(unit);
  const value = aim.div(factor).sub(offset);
  const places = Math.max(0, decimalsOf(mark.number), -lastPlace(mark.number));
  const exact = exactText(value, decimalsOf(mark.number));
  return words.quantity({ number: decimalsOf(exact) <= places ? exact : rounded(value, places, 'nearest'), unit });
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
function changesOf(width: Fraction, stride: number, most: number): LaidOut {
  const { n, d } = width;
  const pieces = Array.from({ length: 2 * most + 1 }, (_, index) => {
    const steps = (index - most) * stride;
    return { thickness: { number: String(steps), unit: 'mm' } as const, ticks: n * BigInt(steps), count: null };
  });
  return { pieces, perMetre: d, stacks: false, most: null };
}

/** More than can be shown, and still looked at: it may be that the next stride leaves readings with no change. */
const mostRuns = 3 * columns * mostRows;

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
    if (runs.length <= columns * mostRows) break;
  }
  const runs = best ?? [];
  const at = runs.findIndex(({ to }) => to >= middle);
  const most = columns * mostRows;
  // Most units come in under the limit.
  const start = Math.max(0, Math.min(runs.length - most, at - Math.floor((most * 3) / 4)));
  return runs.slice(start, start + most);
}

/** What is advised, and a word that is the same for readings of which the same is said. */
interface Told {
  readonly key: string;
  readonly change: number | null;
}

/** How many readings are left with no change. */
function without(runs: readonly Run[]): number {
  return runs.reduce((sum, { from, to, change }) => sum + (change === null ? to - from + 1 : 0), 0);
}

/** Readings together of which the same is said; a lower one is never to be changed by less, so that ends that are alike tell all. */
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
      // The middle one stands in the first half.
      if (middle + 1 <= to) split(middle + 1, to, middle + 1 === to ? high : of(middle + 1), high);
    }
  };
  split(first, last, of(first), of(last));
  return runs;
}
