import Fraction from 'fraction.js';
import type { Step } from '../model/procedure.ts';
import { decimalsOf, toStep, written } from '../quantities/decimal.ts';
import { amount, kindOfUnit, type Limit, type Quantity, sizeOf, unitOf, window } from '../quantities/index.ts';
import { type ChoiceCase, type ShimChoice, shimChoices } from '../rules/shim-choices.ts';
import { unitOfLimit } from './figures.ts';
import { lookupsOf } from './lookups.ts';
import type { Lookup } from './model.ts';
import { objectWords, specTitle } from './names.ts';
import type { Setting } from './setting.ts';
import { markAt, toolUnit, type Where } from './units.ts';

/** Columns that stand beside each other at arm's length, and rows of them: beyond, the hand asks for `handtight work-out`. */
const columns = 7;
const mostRows = 4;
/** Where no limit in service says how low a unit may come in: 15 % under the limit; and 3 % over it. */
const lowest = new Fraction(85, 100);
const highest = new Fraction(103, 100);

/**
 * `choose shim to bring opening to 254 bar by shim-rate` worked out: by how much thicker a shim for which reading, one
 * table for each part number that differs. A reading belongs to the change that brings it nearest to the aim. None
 * where the rate or the aim is not given, or the drawer has no even steps.
 */
export function shimLookup(setting: Setting, step: Step, where: Where): Lookup[] {
  return shimTables(setting, step, where).flatMap(({ table }) => inRows(table));
}

/** One table for each part number that differs, with its figures, to be drawn as well. */
export interface ShimTable {
  /** Part numbers that it is for; empty: all. */
  readonly whose: string;
  readonly table: Lookup;
  readonly stairs: readonly Stair[];
}

/** From a reading to another, as the gauge shows them, the shim is changed by so much: figures in the printed units. */
export interface Stair {
  readonly low: number;
  readonly high: number;
  readonly change: number;
}

export function shimTables(setting: Setting, step: Step, where: Where): ShimTable[] {
  const choice = shimChoices(setting.procedure).find((one) => one.step === step);
  const drawer = choice === undefined ? null : evenStep(choice);
  if (choice === undefined || drawer === null) return [];
  const { words } = setting;
  const numbers = setting.numbers.length === 0 ? [null] : setting.numbers.map(({ name }) => name);
  const cases = numbers.flatMap((number) => {
    const found = choice.cases.find((one) => one.number === number) ?? choice.cases.find((one) => one.number === null);
    return found === undefined ? [] : [{ number: number ?? '', made: columnsOf(setting, step, where, drawer, found) }];
  });
  const tables = lookupsOf(cases, ({ unit, aim }) => ({
    title: words.lookup.shim({
      part: objectWords(setting, step.objects).join(', '),
      reading: words.inSentence(specTitle(setting.procedure, choice.test)),
      aim,
    }),
    from: `${words.lookup.from}, ${words.wording.unit(unit, false)}`,
    to: `${words.lookup.change}, ${drawer.unit}`,
  }));
  // The tables stand in the order in which each first came up: so do the figures.
  const kept = cases.flatMap(({ made }) => (made === null ? [] : [made]));
  const distinct = kept.filter((made, index) => kept.findIndex((one) => same(one, made)) === index);
  return tables.map((table, index) => {
    const of = cases.filter(({ made }) => same(made, distinct[index])).map(({ number }) => number);
    return { whose: of.length === cases.length ? '' : of.join(', '), table, stairs: distinct[index]!.stairs };
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

/** Readings of the gauge, mark by mark, and the change that each asks for. */
function columnsOf(
  setting: Setting,
  step: Step,
  where: Where,
  drawer: EvenStep,
  { rate, target, limit, inService }: ChoiceCase,
) {
  if (rate === null || target === null || limit === null) return null;
  const own = unitOfLimit(limit);
  if (own === null || kindOfUnit(own) !== kindOfUnit(target.unit)) return null;
  const unit = toolUnit(setting, step, where, kindOfUnit(target.unit), limit) ?? target.unit;
  const mark = markAt(setting, step, where, limit);
  const marks = mark?.unit === unit ? mark : { number: '1', unit };
  const aim = amount(target);
  const one = sizeOf(marks);
  const half = drawer.width.div(2);
  const print = (value: Fraction) =>
    setting.words.number(written(value.div(unitOf(unit).factor), decimalsOf(marks.number)));
  const stairs: Stair[] = [];
  const pairs = changesFor({ rate, limit, inService }, aim, drawer.width).flatMap((times) => {
    const change = drawer.width.mul(times);
    // The upper end belongs to this change, the lower one to the next.
    const from = toStep(aim.sub(rate.mul(change.add(half))), one, 'down').add(one);
    const to = toStep(aim.sub(rate.mul(change.sub(half))), one, 'down');
    if (from.compare(to) > 0 || from.compare(0) < 0) return [];
    const shown = (value: Fraction) => value.div(unitOf(unit).factor).valueOf();
    stairs.push({ low: shown(from), high: shown(to), change: change.div(unitOf(drawer.unit).factor).valueOf() });
    const thickness = setting.words.number(written(change.div(unitOf(drawer.unit).factor), drawer.decimals));
    return [
      {
        from: from.equals(to) ? print(from) : `${print(from)}–${print(to)}`,
        to: times > 0 ? `+${thickness}` : times === 0 ? '0' : thickness,
      },
    ];
  });
  return pairs.length > 1 ? { pairs, stairs, unit, aim: setting.words.quantity(target) } : null;
}

/** How many steps of the drawer, thinner first, bring the readings that may come to the aim. */
function changesFor(
  { rate, limit, inService }: { readonly rate: Fraction; readonly limit: Limit; readonly inService: Limit | null },
  aim: Fraction,
  width: Fraction,
): number[] {
  const { low, high } = window(limit);
  const worn = inService === null ? null : window(inService).low;
  const bottom = worn === null ? (low === null ? aim : amount(low)).mul(lowest) : amount(worn);
  const top = (high === null ? aim : amount(high)).mul(highest);
  const steps = (reading: Fraction) => aim.sub(reading).div(rate.mul(width));
  const first = Math.min(0, Number(steps(top).floor()));
  const last = Math.max(1, Number(steps(bottom).ceil()));
  const many = Math.min(last - first + 1, columns * mostRows);
  return Array.from({ length: many }, (_, index) => first + index);
}
