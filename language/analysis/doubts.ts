import Fraction from 'fraction.js';
import type { Doubt, DoubtReason } from '../model/doubt.ts';
import type { Job, ReadingResult, ShimResult, TorqueResult, Unit } from '../model/job.ts';
import type { Procedure } from '../model/procedure.ts';
import type { Asset, Stock } from '../model/shop.ts';
import { capital, nameWords, partWords } from '../model/titles.ts';
import { decimalsOf, decimalValue, exactText, tenTo } from '../quantities/decimal.ts';
import { amount, compare, kindOfLimit, kindOfUnit, type Limit, window } from '../quantities/index.ts';
import type { Kind, Quantity } from '../quantities/types.ts';
import { askedOf, choosing, heldInService, torqueLimits } from './held.ts';
import { suits } from './tools.ts';

/**
 * How many times over the upper end of its limit, or under the lower, a figure is no result but a slip. Common practice,
 * no source: units that come in worn are off by a half, and the slip that is looked for is one of ten.
 */
const far = 3;

/** Kinds that are set to their limit, so that what is far from it is a slip. A time or a count may be anything. */
const settable: ReadonlySet<Kind> = new Set(['pressure', 'torque', 'length', 'force']);

/** Kinds that are read below zero as well. */
const signed: ReadonlySet<Kind> = new Set([
  'pressure',
  'length',
  'temperature',
  'angle',
  'cam angle',
  'voltage',
  'current',
]);

/** Figures of a job that cannot be as they are written. */
export function findDoubts(job: Job): Doubt[] {
  return job.units.flatMap((unit) =>
    unit.results.flatMap((result): Doubt[] => {
      if (result.form !== 'reading' && result.form !== 'shim' && result.form !== 'torque') return [];
      const why = doubtOf(job.procedure, unit, result);
      return why === null ? [] : [{ unit, result, why }];
    }),
  );
}

function doubtOf(procedure: Procedure, unit: Unit, result: Doubt['result']): DoubtReason | null {
  switch (result.form) {
    case 'reading':
      return readingDoubt(procedure, unit, result);
    case 'torque':
      return torqueDoubt(procedure, unit, result);
    case 'shim':
      return shimDoubt(procedure, unit, result);
  }
}

function readingDoubt(procedure: Procedure, unit: Unit, reading: ReadingResult): DoubtReason | null {
  const { name, value, asFound } = reading;
  const kind = kindOfUnit(value.unit);
  const title = nameWords(procedure, name);
  const asked = askedOf(procedure, name, unit);
  const limits = [...asked.limits, heldInService(procedure, name, unit)].flatMap((held) => held?.limit ?? []);
  const limit = limits.find((one) => kindOfLimit(one) === kind) ?? null;
  const number = decimalValue(value.number);
  if (number.compare(0) < 0 && !signed.has(kind)) return zero(title, value);
  if (limit !== null) {
    const { low } = window(limit);
    if (number.compare(0) <= 0 && low !== null && decimalValue(low.number).compare(0) > 0) return zero(title, value);
    const said = settable.has(kind) ? farFrom(title, value, limit, { low: !asFound }) : null;
    if (said !== null) return said;
  }
  const shown = notShown(procedure, title, value, reading.tool);
  if (shown !== null || reading.watched === null) return shown;
  // The gauge of a leak-down shows the pressure that the time is counted from.
  const from = asked.step?.test.from ?? null;
  const gauge = procedure.shop.assets.find((asset) => asset.name === reading.watched);
  const start = from === null ? null : (window(from).nominal ?? window(from).high);
  if (gauge === undefined || (start === null ? suits(gauge, 'pressure') : shows(gauge, start))) return null;
  return { is: 'wrong tool', name: title, tool: gauge.name, value: start ?? value };
}

function torqueDoubt(procedure: Procedure, unit: Unit, { part, value, tool }: TorqueResult): DoubtReason | null {
  const title = capital(partWords(procedure, part));
  if (decimalValue(value.number).compare(0) <= 0) return zero(title, value);
  const limits = torqueLimits(procedure, unit, part);
  const said = limits.map(({ limit }) => farFrom(title, value, limit, { low: true }));
  const first = said[0] ?? null;
  // A joint that is tightened in steps has several: what is near to one of them is none of the others'.
  if (first !== null && said.every((one) => one !== null)) return first;
  return notShown(procedure, title, value, tool);
}

function shimDoubt(procedure: Procedure, unit: Unit, { part, size, fitted, tool }: ShimResult): DoubtReason | null {
  const title = capital(partWords(procedure, part));
  if (decimalValue(size.number).compare(0) <= 0) return zero(title, size);
  const from = procedure.family.parts.find(({ name }) => name === part)?.chosenFrom ?? null;
  const stock = procedure.shop.stocks.find(({ name }) => name === from) ?? null;
  const [least, most] = [stock?.sizes[0] ?? null, stock?.sizes.at(-1) ?? null];
  if (stock !== null && least !== null && most !== null) {
    const high = stock.stacks ? { ...most, number: exactText(decimalValue(most.number).mul(2)) } : most;
    const said = farFrom(title, size, { form: 'range', low: least, high }, { low: true });
    if (said !== null) return said;
    const own = unit.results.some(
      (other) => other.form === 'shim' && !other.fitted && other.part === part && compare(other.size, size) === 0,
    );
    if (fitted && !own && !isThere(stock, size))
      return { is: 'not in stock', name: title, value: size, stock: stock.title, near: nearestIn(stock, size) };
  }
  const never = choosing(procedure, part)
    .flatMap(({ neverAbove }) => neverAbove ?? [])
    .find((limit) => compare(size, limit) === 1);
  if (fitted && never !== undefined) return { is: 'over most', name: title, value: size, most: never };
  return tool === undefined ? null : notShown(procedure, title, size, tool);
}

function zero(name: string, value: Quantity): DoubtReason {
  return { is: 'zero', name, value };
}

/** A figure that is many times over its limit, or under it, with the one that was meant where the point has slipped. */
function farFrom(name: string, value: Quantity, limit: Limit, { low: under }: { low: boolean }): DoubtReason | null {
  const ends = window(limit);
  const [low, high] = [ends.low ?? ends.nominal ?? ends.high, ends.high ?? ends.nominal ?? ends.low];
  if (low === null || high === null || kindOfUnit(value.unit) !== kindOfUnit(high.unit)) return null;
  const [read, least, most] = [amount(value), amount(low), amount(high)];
  if (least.compare(0) <= 0 || read.compare(0) <= 0) return null;
  const over = read.compare(most.mul(far)) > 0;
  if (!over && !(under && read.mul(far).compare(least) < 0)) return null;
  const meant = [10, 100, 1000]
    .map((times) => new Fraction(over ? 1 : times, over ? times : 1))
    .find((times) => read.mul(times).mul(2).compare(least) >= 0 && read.mul(times).compare(most.mul(2)) <= 0);
  if (meant === undefined) return { is: 'far', name, value, limit };
  // With the digits that the limit is written with.
  const number = exactText(decimalValue(value.number).mul(meant), decimalsOf(high.number));
  return { is: 'slip', name, value, limit, meant: { ...value, number } };
}

/** The tool that is named cannot show it, or none of the shop can. */
function notShown({ shop }: Procedure, name: string, value: Quantity, tool: string | null): DoubtReason | null {
  const asset = tool === null ? null : (shop.assets.find((one) => one.name === tool) ?? null);
  if (asset !== null) return shows(asset, value) ? null : { is: 'wrong tool', name, value, tool: asset.name };
  const kind = kindOfUnit(value.unit);
  const all = shop.assets.filter(({ range }) => range !== null && kindOfUnit(range.high.unit) === kind);
  if (tool !== null || all.length === 0 || all.some((one) => shows(one, value))) return null;
  return { is: 'beyond all tools', name, value };
}

/** Whether a tool can show such a figure at all. */
function shows(asset: Asset, value: Quantity): boolean {
  const { range } = asset;
  return (
    suits(asset, kindOfUnit(value.unit)) &&
    (range === null || (compare(value, range.low) !== -1 && compare(value, range.high) !== 1))
  );
}

/** One shim of the drawer, or two where two may lie on each other. How many are left says nothing: this one is fitted. */
function isThere(stock: Stock, size: Quantity): boolean {
  const there = sizesIn(stock);
  const wanted = tenths(size);
  if (there.has(wanted) || (stock.stacks && [...there].some((one) => there.has(wanted - one)))) return true;
  // In another unit no figure is the size itself.
  const near = stock.sizes.every(({ unit }) => unit === size.unit) ? 0 : halfDigit(size);
  return near > 0 && [...there].some((one) => Math.abs(one - wanted) <= near);
}

/** Thicknesses in tenths of a nanometre: whole numbers, and finer than anything that is measured. */
function sizesIn(stock: Stock): ReadonlySet<number> {
  const known = sizesByStock.get(stock) ?? new Set(stock.sizes.map(tenths));
  sizesByStock.set(stock, known);
  return known;
}

/** A drawer of thousands is gone through once, not for each shim of each job. */
const sizesByStock = new WeakMap<Stock, ReadonlySet<number>>();

/** As far off as the last digit that is written lets it be, in tenths of a nanometre: 0.0591 in is 1.50 mm. */
function halfDigit({ number, unit }: Quantity): number {
  return tenths({ number: exactText(tenTo(-decimalsOf(number)).div(2)), unit });
}

function tenths(size: Quantity): number {
  return Math.round(amount(size).mul(10_000_000_000).valueOf());
}

function nearestIn({ sizes }: Stock, size: Quantity): Quantity[] {
  const wanted = amount(size);
  const under = sizes.findLast((one) => amount(one).compare(wanted) < 0);
  const over = sizes.find((one) => amount(one).compare(wanted) > 0);
  return [under, over].filter((one) => one !== undefined);
}
