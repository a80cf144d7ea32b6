import { guardedOn } from '../../engineering/guarded.ts';
import type { LimitUse, Step } from '../../model/procedure.ts';
import type { DecisionRule } from '../../model/shop.ts';
import { specFor } from '../../model/spec-for.ts';
import { fewDigits, type Limit, type Quantity, roundTo, type Window } from '../../quantities/index.ts';
import { numbersOf, type PrintContext } from '../print-context.ts';
import { type LimitFigure, limitFigure } from './limit-figure.ts';
import type { Where } from './scales.ts';

export type Which = 'rebuilt' | 'inService' | 'whenNew';

/** What a step is held to for one part number. */
export interface HeldFigure {
  readonly which: Which;
  /** Null: the sheet has no part numbers, or the limit is written in the step and is for all. */
  readonly number: string | null;
  /** What the spec says for the number; null: the limit is written in the step, or there is no such spec. */
  readonly value: ReturnType<typeof specFor>;
  /** Null: no limit is given, or none is required. */
  readonly figure: LimitFigure | null;
  /** What the tool may show where the limit is guarded; null: the limit itself, or nobody knows how far the tool is off. */
  readonly mayRead: MayRead | null;
}

/** The window that is left on the tool by a guarded decision rule. */
export interface MayRead extends Pick<Window, 'low' | 'high'> {
  /** Its number; null: a kind of tool. */
  readonly tool: string | null;
  /** Nothing is left between its ends. */
  readonly shut: boolean;
}

const everyWhich: readonly Which[] = ['rebuilt', 'inService', 'whenNew'];

/** Verbs that read a figure off a tool. */
const reads: ReadonlySet<string> = new Set(['test', 'read', 'measure', 'check', 'set']);

type Figures = Pick<HeldFigure, 'figure' | 'mayRead'>;

/** Every limit of a use, for each part number of the sheet. */
export function heldFigures(setting: PrintContext, step: Step, where: Where, use: LimitUse | null): HeldFigure[] {
  if (use === null) return [];
  const { procedure } = setting;
  // Numbers that have no limit of their own share that of the spec.
  const known = new Map<string, Map<Limit, Figures>>();
  const figuresOf = (limit: Limit, rule: DecisionRule): Figures => {
    const byLimit = known.get(rule) ?? new Map<Limit, Figures>();
    known.set(rule, byLimit);
    const before = byLimit.get(limit);
    if (before !== undefined) return before;
    const figure = limitFigure(setting, step, where, limit);
    const made = { figure, mayRead: reads.has(step.verb) ? mayRead(figure, rule) : null };
    byLimit.set(limit, made);
    return made;
  };
  const ofShop = procedure.shop.acceptance.rule;
  if (use.form === 'limit') return [{ which: 'rebuilt', number: null, value: null, ...figuresOf(use.limit, ofShop) }];
  return numbersOf(setting).flatMap((number) => {
    const value = specFor(procedure, use.spec, number);
    return everyWhich.map((which): HeldFigure => {
      const limit = value?.[which] ?? null;
      const figures = limit === null ? { figure: null, mayRead: null } : figuresOf(limit, value?.acceptance ?? ofShop);
      return { which, number, value, ...figures };
    });
  });
}

function mayRead(figure: LimitFigure, rule: DecisionRule): MayRead | null {
  if (rule === 'simple' || figure.scale === null) return null;
  const { name = null, within = null, accuracyClass = null, range, graduated } = figure.scale;
  const made = guardedOn({ within, accuracyClass, range, graduated }, figure.whole, rule);
  if (made === null) return null;
  const { low, high } = made.shut || graduated !== null ? made.window : legible(made.window);
  return { tool: name, shut: made.shut, low, high };
}

/** Figures that are worked out end in no digits that a hand could read: without marks they are drawn in to a few. */
function legible({ low, high }: Window): Pick<Window, 'low' | 'high'> {
  if (low !== null && high !== null) return fewDigits({ low, high }, low.unit) ?? { low, high };
  return { low: oneEnd(low, 'up'), high: oneEnd(high, 'down') };
}

/** Four figures of it. */
function oneEnd(end: Quantity | null, inwards: 'up' | 'down'): Quantity | null {
  const size = end === null ? 0 : Math.abs(Number(end.number));
  if (end === null || size === 0) return end;
  return roundTo(end, end.unit, 3 - Math.floor(Math.log10(size)), inwards);
}
