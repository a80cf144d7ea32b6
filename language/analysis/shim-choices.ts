import Fraction from 'fraction.js';
import { shimRate, stackedSizes } from '../engineering/shim-stock.ts';
import type { Part } from '../model/family.ts';
import type { Choice, LimitUse, Procedure, Step, StepOf } from '../model/procedure.ts';
import type { Stock } from '../model/shop.ts';
import { isTestOf } from '../model/steps.ts';
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
import type { Kind, Limit, Quantity } from '../quantities/types.ts';
import { type Judged, judgedLimits, type Which } from './judged-limits.ts';
import { thicknessLimit } from './limit-of-use.ts';
import { aimOf } from './tool-choice.ts';

/** A part, or a stack of several, chosen out of the drawer to bring a reading where it belongs. */
export interface ShimChoice {
  readonly step: StepOf<'choose'>;
  readonly choose: Choice;
  /** Those that are chosen together and lie one on the other: of copies by position the first ones. */
  readonly parts: readonly Part[];
  readonly stocks: readonly Stock[];
  /** What all that lies on each other may never pass: `never above`, or where a spring binds; null: nothing is said. */
  readonly most: Quantity | null;
  /** All thicknesses that can be made of what is there, in metres, and not over `most`; null: too many. */
  readonly sizes: readonly Fraction[] | null;
  /** The reading that it is to bring: the name of a test. */
  readonly test: string;
  readonly cases: readonly ChoiceCase[];
}

/** What is asked for one part number. */
export interface ChoiceCase {
  /** Null: for all. */
  readonly number: string | null;
  /** What a metre more of shim brings, in the base unit of the reading; null: no rate is given. */
  readonly rate: Fraction | null;
  /** The tolerance that the rate is written with, or half of its band, taken as its standard error; null: none is written. */
  readonly rateError: Fraction | null;
  /** The limit of the reading. */
  readonly limit: Limit | null;
  readonly inService: Limit | null;
  /** What is aimed at: the figure that is written; of a window the middle of it. */
  readonly target: Quantity | null;
}

/** What is asked for a part number: its own case, or the one for all. */
export function caseFor({ cases }: ShimChoice, number: string | null): ChoiceCase | undefined {
  return cases.find((one) => one.number === number) ?? cases.find((one) => one.number === null);
}

/** A procedure never changes, and rules, sheet and advice all ask for its choices. */
const known = new WeakMap<Procedure, readonly ShimChoice[]>();

/** Every choice of a part that is `chosen from` a stock of the shop. */
export function shimChoices(procedure: Procedure): readonly ShimChoice[] {
  const made = known.get(procedure) ?? choicesOf(procedure);
  known.set(procedure, made);
  return made;
}

function choicesOf(procedure: Procedure): ShimChoice[] {
  return drawersOf(procedure).flatMap(({ step, parts, stocks }) => {
    const { choose, neverAbove } = step;
    if (choose === null) return [];
    const most = thicknessLimit(procedure.family, parts, neverAbove);
    const end = most === null ? null : amount(most);
    const sizes = stackedSizes(stocks);
    return [
      {
        step,
        choose,
        parts,
        stocks,
        most,
        sizes: sizes?.filter((size) => end === null || size.compare(end) <= 0) ?? null,
        test: choose.test,
        cases: casesOf(procedure, step, choose),
      },
    ];
  });
}

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

/** Never the edge of a window, as its nominal may be: the middle of what the target and the limit of the reading leave. */
export function middleOf(target: Limit, limit: Limit | null): Quantity | null {
  const [{ low, high, nominal }, own] = [window(target), limit === null ? null : window(limit)];
  if (low === null || high === null) return nominal ?? low ?? high;
  const from = own?.low != null && compare(own.low, low) === 1 ? own.low : low;
  const to = own?.high != null && compare(own.high, high) === -1 ? own.high : high;
  return aimOf(compare(from, to) === 1 ? { form: 'range', low, high } : { form: 'range', low: from, high: to });
}

/** The limit of a part number: its own, or that of all. */
function of(limits: readonly Judged[], number: string | null): Limit | null {
  return (limits.find((one) => one.number === number) ?? limits.find((one) => one.number === null))?.limit ?? null;
}

function specUse(spec: string, { source }: Step): LimitUse {
  return { form: 'spec', spec, source };
}

/** What a test is held to: its own limit, or the spec of its name. */
export function limitOfReading({ stages, specs }: Procedure, name: string): LimitUse | null {
  const tests = stages.flatMap(({ steps }) => steps.filter((step) => isTestOf(step, name)));
  const within = tests.map(({ limit }) => limit).find((use) => use !== null);
  const spec = specs.find((one) => one.name === name);
  return within ?? (spec === undefined ? null : { form: 'spec', spec: spec.name, source: spec.source });
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

/** `96 bar per mm ±4`, as `handtight rate` writes it, or half of `92..100 bar per mm`. Of two sides the wider one. */
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

/** The lowest reading with which a unit is still good in service; null: nobody says, or it is over the target. */
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
