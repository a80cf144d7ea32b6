import { guardedOn } from '../../engineering/guarded.ts';
import type { LimitUse, Step } from '../../model/procedure.ts';
import type { DecisionRule } from '../../model/shop.ts';
import { specFor } from '../../model/spec-for.ts';
import { isAsFound } from '../../model/steps.ts';
import { kindOfUnit, type Limit, type Quantity, roundTo, type Window } from '../../quantities/index.ts';
import type { Words } from '../../i18n/index.ts';
import { byNumber, withNumbers } from './by-number.ts';
import { betweenWords, fewDigits, unitOfLimit, withStanding } from './figures.ts';
import { standingOf, useOf } from './limits.ts';
import type { Fact } from './model.ts';
import type { Setting } from './print-context.ts';
import { type Scale, scaleFor, type Where } from './units.ts';

/** Verbs that read a figure off a tool. */
const reads: ReadonlySet<string> = new Set(['test', 'read', 'measure', 'check', 'set']);

/**
 * What a tool may show where the shop, or the spec, guards its limits: `252 to 256 bar`, one for each part number that
 * differs. None where acceptance is simple: then the limit itself is what is read.
 */
export function gaugeWindows(setting: Setting, step: Step, where: Where): Fact[] {
  const use = reads.has(step.verb) ? useOf(setting, step) : null;
  if (use === null) return [];
  const facts = [...factsOf(setting, step, where, use, 'rebuilt'), ...factsOf(setting, step, where, use, 'whenNew')];
  return facts.map(({ told, whose }) => ({ ...told, text: withNumbers({ told: told.text, whose }) }));
}

/** `whenNew`: with new parts another limit counts. */
function factsOf(setting: Setting, step: Step, where: Where, use: LimitUse, which: 'rebuilt' | 'whenNew') {
  const { words } = setting;
  return byNumber(setting, (number): Fact | null => {
    const judged = judgedBy(setting, step, use, number, which);
    if (judged === null || judged.rule === 'simple') return null;
    const unit = unitOfLimit(judged.limit);
    const scale = unit === null ? null : scaleFor(setting, step, where, kindOfUnit(unit), judged.limit);
    const text = scale === null ? null : windowText(words, judged.limit, judged.rule, scale);
    if (scale === null || text === null) return null;
    const label = words.facts.mayRead({ tool: scale.name ?? words.tools.called.gauge });
    if (which === 'rebuilt') return { label, text };
    const part = setting.procedure.family.parts.find(({ name }) => name === judged.newPart);
    const head =
      part === undefined ? words.limits.whenNew : words.limits.withNew({ part: words.inSentence(part.title) });
    return { label: `${head}: ${label}`, text };
  });
}

/** The limit that a reading is held to, and how it is judged. */
function judgedBy(
  setting: Setting,
  step: Step,
  use: LimitUse,
  number: string | null,
  which: 'rebuilt' | 'whenNew',
): { limit: Limit; rule: DecisionRule; newPart: string | null } | null {
  const { acceptance: ofShop } = setting.procedure.shop;
  const value = use.form === 'spec' ? specFor(setting.procedure, use.spec, number) : null;
  const limit =
    which === 'whenNew'
      ? isAsFound(step)
        ? null
        : (value?.whenNew ?? null)
      : use.form === 'limit'
        ? use.limit
        : ((isAsFound(step) ? value?.inService : null) ?? value?.rebuilt ?? null);
  if (limit === null) return null;
  return {
    limit: withStanding(limit, { standing: standingOf(setting) }).limit,
    rule: value?.acceptance ?? ofShop.rule,
    newPart: value?.whenNewPart ?? null,
  };
}

/** Null: nothing is known of how far the tool may be off, or the limit has no end. */
function windowText(words: Words, limit: Limit, rule: DecisionRule, scale: Scale): string | null {
  const { within = null, accuracyClass = null, range, graduated } = scale;
  const made = guardedOn({ within, accuracyClass, range, graduated }, limit, rule);
  if (made === null) return null;
  if (made.shut) return words.facts.nothingPasses;
  const { low, high } = graduated === null ? legible(made.window) : made.window;
  return betweenWords(words, low, high);
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
