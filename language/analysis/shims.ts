import equal from 'fast-deep-equal';
import Fraction from 'fraction.js';
import { shimRate, stackedSizes } from '../engineering/shim-stock.ts';
import type { Family, Part } from '../model/family.ts';
import type { Unit } from '../model/job.ts';
import type { Choice, LimitUse, Procedure, Step, StepOf } from '../model/procedure.ts';
import type { Stock } from '../model/shop.ts';
import { specFor } from '../model/spec-for.ts';
import { exactText } from '../quantities/decimal.ts';
import {
  amount,
  between,
  compare,
  kindOfLimit,
  kindOfUnit,
  type UnitName,
  unitOf,
  window,
} from '../quantities/index.ts';
import { oncePer } from '../quantities/memo.ts';
import type { Difference, Kind, Limit, Quantity } from '../quantities/types.ts';
import { renewedIn } from './held.ts';
import { type JudgedLimit, judgedLimits, type Which } from './limits.ts';
import { limitOfReading } from './readings.ts';
import { restsOn } from './relations.ts';
import { aimOf } from './tools.ts';

/** A part, or a stack of several, chosen from the drawer to bring a reading into its limit. */
export interface ShimChoice {
  readonly step: StepOf<'choose'>;
  readonly choose: Choice;
  /** The parts that are chosen together and stacked: of copies by position, the first ones. */
  readonly parts: readonly Part[];
  readonly stocks: readonly Stock[];
  /** The most that the stack may add up to: `never above`, or where a spring binds; null if neither is stated. */
  readonly most: Quantity | null;
  /** All thicknesses that the stock can make, in meters, up to `most`; null if there are too many. */
  readonly sizes: readonly Fraction[] | null;
  /** The reading that it adjusts: the name of a test. */
  readonly test: string;
  readonly cases: readonly ChoiceCase[];
}

/** What is required for one part number. */
export interface ChoiceCase {
  /** Null for all. */
  readonly number: string | null;
  /** The change for one meter more of shim, in the base unit of the reading; null if no rate is given. */
  readonly rate: Fraction | null;
  /** The tolerance of the rate, or half of its band, taken as its standard error; null if none is written. */
  readonly rateError: Fraction | null;
  /** The limit of the reading. */
  readonly limit: Limit | null;
  readonly inService: Limit | null;
  /** The target: the written figure, or the middle of a window. */
  readonly target: Quantity | null;
}

/** What is required for a part number: its own case, or the one for all. */
export function caseFor({ cases }: ShimChoice, number: string | null): ChoiceCase | undefined {
  return cases.find((one) => one.number === number) ?? cases.find((one) => one.number === null);
}

/** Every choice of a part that is `chosen from` a stock of the shop. Rules, sheet and advice all need them. */
export const shimChoices = oncePer((procedure: Procedure): readonly ShimChoice[] =>
  drawersOf(procedure).flatMap((drawer) => {
    const { step } = drawer;
    const { family, shop, specs, numbers } = procedure;
    if (step.choose === null) return [];
    const of = [family, shop, specs, numbers, limitOfReading(procedure, step.choose.test)];
    const known = choicesKept.get(step);
    if (known !== undefined && equal(known.of, of)) return [known.choice];
    const choice = buildChoice(procedure, drawer, step.choose);
    choicesKept.set(step, { of, choice });
    return [choice];
  }),
);

/** By their steps, which an edit of others leaves as they are; with what they were made of. */
const choicesKept = new WeakMap<Step, { readonly of: readonly unknown[]; readonly choice: ShimChoice }>();

function buildChoice(
  procedure: Procedure,
  { step, parts, stocks }: Pick<ShimChoice, 'step' | 'parts' | 'stocks'>,
  choose: Choice,
): ShimChoice {
  const { neverAbove } = step;
  const most = thicknessLimit(procedure.family, parts, neverAbove);
  const end = most === null ? null : amount(most);
  const [stock] = stocks;
  const sizes = stocks.length === 1 ? sizesIn(stock!) : stackedSizes(stocks);
  return {
    step,
    choose,
    parts,
    stocks,
    most,
    sizes: sizes?.filter((size) => end === null || size.compare(end) <= 0) ?? null,
    test: choose.test,
    cases: casesOf(procedure, step, choose),
  };
}

const sizesIn = oncePer((stock: Stock) => stackedSizes([stock]));

/** Every step that chooses parts out of stocks of the shop, by a reading or as its own words say. */
export function drawersOf({
  stages,
  repairs,
  family,
  shop,
}: Procedure): Pick<ShimChoice, 'step' | 'parts' | 'stocks'>[] {
  return [...stages, ...repairs].flatMap(({ steps }) =>
    steps.flatMap((step) => {
      if (step.verb !== 'choose') return [];
      const all = step.objects.flatMap(({ name }) => family.parts.find((part) => part.name === name) ?? []);
      const parts = all.filter(({ position }) => position === all[0]!.position);
      const stocks = parts.flatMap((part) => shop.stocks.find(({ name }) => name === part.chosenFrom) ?? []);
      return stocks.length === 0 || stocks.length < parts.length ? [] : [{ step, parts, stocks }];
    }),
  );
}

function casesOf(procedure: Procedure, step: StepOf<'choose'>, { test, target: aimed }: Choice): ChoiceCase[] {
  const { rate } = step;
  const use = limitOfReading(procedure, test);
  const limits = (of: LimitUse | null, which: Which = 'rebuilt') =>
    of === null ? [] : judgedLimits(procedure, step, of, [which]);
  const [rebuilt, inService] = [limits(use), use?.form === 'spec' ? limits(use, 'inService') : []];
  const targets = aimed?.form === 'spec' ? limits(aimed) : [];
  const rates = rate === null ? [] : limits(specUse(rate, step));
  const numbers = new Set([...rebuilt, ...inService, ...targets, ...rates].map(({ number }) => number));
  return [...numbers].map((number) => {
    const limit = of(rebuilt, number);
    const aim = aimed?.form === 'limit' ? aimed.limit : of(targets, number);
    const kind = limit === null ? null : kindOfLimit(limit);
    return {
      number,
      rate: rateOf(procedure, rate, of(rates, number), kind),
      rateError: rateErrorOf(procedure, rate, of(rates, number)),
      limit,
      inService: of(inService, number),
      target: aim === null ? null : middleOf(aim, limit),
    };
  });
}

/** Never the edge of a window, as its nominal may be: the middle of what the target and the reading's limit allow. */
export function middleOf(target: Limit, limit: Limit | null): Quantity | null {
  const [{ low, high, nominal }, own] = [window(target), limit === null ? null : window(limit)];
  if (low === null || high === null) return nominal ?? low ?? high;
  const from = own?.low != null && compare(own.low, low) === 1 ? own.low : low;
  const to = own?.high != null && compare(own.high, high) === -1 ? own.high : high;
  return aimOf(compare(from, to) === 1 ? { form: 'range', low, high } : { form: 'range', low: from, high: to });
}

/** The limit of a part number: its own, or that of all. */
function of(limits: readonly JudgedLimit[], number: string | null): Limit | null {
  return (limits.find((one) => one.number === number) ?? limits.find((one) => one.number === null))?.limit ?? null;
}

function specUse(spec: string, { source }: Step): LimitUse {
  return { form: 'spec', spec, source };
}

/** With no rate a shim that sets a length does so one for one. */
function rateOf(procedure: Procedure, name: string | null, limit: Limit | null, kind: Kind | null): Fraction | null {
  if (name === null) return kind === 'length' ? new Fraction(1) : null;
  const per = procedure.specs.find((spec) => spec.name === name)?.per ?? null;
  const { nominal, low, high } = limit === null ? noWindow : window(limit);
  const figure = nominal ?? (low === null || high === null ? null : aimOf({ form: 'range', low, high }));
  if (figure === null || kind !== (per === null ? 'pressure' : kindOfUnit(figure.unit))) return null;
  const rate = shimRate(figure, per);
  return rate === null || rate.compare(0) <= 0 ? null : rate;
}

/** `96 bar per mm ±4`, as `handtight rate` writes it, or half of `92..100 bar per mm`. Of two sides, the wider one. */
function rateErrorOf({ specs }: Procedure, name: string | null, limit: Limit | null): Fraction | null {
  if (name === null || limit === null) return null;
  const per = specs.find((spec) => spec.name === name)?.per ?? null;
  const { nominal, low, high } = window(limit);
  const middle = nominal ?? (low === null || high === null ? null : aimOf({ form: 'range', low, high }));
  const sides = [
    middle === null || low === null ? null : between(middle, low),
    high === null || middle === null ? null : between(high, middle),
  ];
  const errors = sides.flatMap((side) => {
    const error = side === null ? null : shimRate(side, per);
    return error === null || error.compare(0) <= 0 ? [] : [error];
  });
  return errors.reduce<Fraction | null>((most, side) => (most === null || side.compare(most) > 0 ? side : most), null);
}

const noWindow = { nominal: null, low: null, high: null };

/** The lowest reading at which a unit is still good in service; null if none is stated, or if it is above the target. */
export function lowestFound({ inService, target }: ChoiceCase): Quantity | null {
  const low = inService === null ? null : window(inService).low;
  return low === null ||
    target === null ||
    kindOfUnit(low.unit) !== kindOfUnit(target.unit) ||
    compare(low, target) === 1
    ? null
    : low;
}

/** An exact amount in base units as a quantity in a unit. */
export function inUnits(value: Fraction, unit: UnitName): Quantity {
  return { number: exactText(value.div(unitOf(unit).factor)), unit };
}

export type Binding = Part & { readonly bindsOver: Quantity };

/** Of the springs that a shim loads the one that goes solid first. */
export function firstToBind({ parts }: Family, shim: Part): Binding | null {
  const above = new Set([shim.name]);
  for (let known = 0; known < above.size; ) {
    known = above.size;
    for (const part of parts) if (restsOn(part).some((under) => above.has(under))) above.add(part.name);
  }
  // A shim may also lie on top of its spring.
  for (const under of shim.on) above.add(under);
  const springs = parts.flatMap((part) =>
    part.bindsOver !== null && above.has(part.name) ? [{ ...part, bindsOver: part.bindsOver }] : [],
  );
  return springs.sort((a, b) => compare(a.bindsOver, b.bindsOver) ?? 0)[0] ?? null;
}

/**
 * What the shims of a choice may never pass, all that lie on each other together: `never above` of the step, or the
 * thickness over which a spring binds, whichever is less. Null: nothing is said.
 */
function thicknessLimit(family: Family, shims: readonly Part[], neverAbove: Quantity | null): Quantity | null {
  const bounds = [neverAbove, ...shims.map((shim) => firstToBind(family, shim)?.bindsOver ?? null)];
  return bounds.reduce((least, one) => (least === null || (one !== null && compare(one, least) === -1) ? one : least));
}

/**
 * What a new spring loses of a reading, by the spec that is aimed at or else by that of the reading. Null: nothing, or
 * none is given.
 */
export function findSettling(procedure: Procedure, { test, target }: Choice, number: string | null): Difference | null {
  const use = limitOfReading(procedure, test);
  const specs = [target, use].map((one) => (one?.form === 'spec' ? one.spec : null));
  const [settling] = specs.flatMap((name) => (name === null ? [] : (specFor(procedure, name, number)?.settling ?? [])));
  return settling === undefined || Number(settling.number) === 0 ? null : settling;
}

/**
 * The springs that the chosen shims load: of what lies on a shim or under it those that bind over some shim, or that a
 * spec calls new; where the family and the specs do not tell, any of them.
 */
export function springsOf({ family, specs }: Procedure, { objects }: Step): Part[] {
  const shims = family.parts.filter((part) => objects.some(({ kind, name }) => kind === 'part' && name === part.name));
  const beside = family.parts.filter(
    (part) =>
      !shims.includes(part) &&
      (restsOn(part).some((under) => shims.some(({ name }) => name === under)) ||
        // What a shim is in is no spring.
        shims.some(({ on }) => on.includes(part.name))),
  );
  const known = beside.filter(
    ({ name, bindsOver }) => bindsOver !== null || specs.some(({ whenNewPart }) => whenNewPart === name),
  );
  return known.length > 0 ? known : beside;
}

/** What a reading of a unit will still lose, if one of these springs went in new. Null: nothing, or none is given. */
export function settlingIn(
  procedure: Procedure,
  { number, results }: Unit,
  springs: readonly Part[],
  of: Choice,
): Difference | null {
  const renewed = renewedIn(results);
  return springs.some(({ name }) => renewed.has(name)) ? findSettling(procedure, of, number) : null;
}
