import { limitsOfUse } from '../../../analysis/limits.ts';
import { writtenAt } from '../../../analysis/written-at.ts';
import type { LimitUse } from '../../../model/procedure.ts';
import { limitUses, own } from '../../../model/steps.ts';
import { amount, compare, formatLimit, formatQuantity, window } from '../../../quantities/index.ts';
import { quantitiesIn } from '../../../quantities/quantities-in.ts';
import type { Limit, Quantity } from '../../../quantities/types.ts';
import { say } from '../../../say/say.ts';
import type { Rule } from '../../rule.ts';
import { comparesBefore } from '../../suspect-words.ts';

/** A figure in the author's words that is near the figure of the same step or spec, and not inside it. */
export const wordsAgainstFigure: Rule = {
  code: 'words-against-figure',
  severity: 'warning',
  since: '0.2.0',
  title: 'Words name a figure, and the figure beside them is another.',
  procedure(procedure, report) {
    for (const spec of procedure.specs) {
      const use: LimitUse = { form: 'spec', spec: spec.name, source: spec.source };
      const limits = limitsOfUse(procedure, use).map(({ limit }) => limit);
      const other = contradicting(spec.title, limits);
      if (other === null) continue;
      report({
        at: spec.source,
        message: say`The title of ${spec.name} says ${formatQuantity(other)}, and its figure is ${formatLimit(limits[0]!)}.`,
        why: say`both are printed, and the bench hand picks one.`,
        help: say`Correct the one that is wrong, or leave the figure out of the title.`,
        allow: spec.allow,
      });
    }
  },
  eachStep(step, setting, report) {
    const limits = limitUses(step).flatMap((use) => limitsOfUse(setting, use).map(({ limit }) => limit));
    if (limits.length === 0) return;
    const words = [step.text, step.note, own(step, 'accept')].filter((text) => text != null);
    const other = words.map((text) => contradicting(text, limits)).find((found) => found !== null);
    if (other === undefined || other === null) return;
    report({
      at: step,
      rootCause: `words:${writtenAt(step)}`,
      message: say`The words of this step say ${formatQuantity(other)}, and its figure is ${formatLimit(limits[0]!)}.`,
      why: say`both are printed, and the bench hand picks one.`,
      help: say`Correct the one that is wrong, or leave the figure out of the words.`,
    });
  },
};

/**
 * How near a figure has to be to be meant as the same one: a quarter. A first pass, a pressure to hold or a ceiling lies further
 * off (common practice, no source).
 */
const near = { low: 0.75, high: 1.25 };

function contradicting(text: string, limits: readonly Limit[]): Quantity | null {
  if (limits.length === 0) return null;
  for (const { quantity, before } of quantitiesIn(text)) {
    const alike = limits.map(window).filter((one) => middle(one) !== null && isNear(quantity, middle(one)!));
    if (alike.length === 0 || comparesBefore(before)) continue;
    if (!limits.some((limit) => isInside(quantity, limit))) return quantity;
  }
  return null;
}

const middle = ({ nominal, low, high }: ReturnType<typeof window>): Quantity | null => nominal ?? low ?? high;

function isNear(quantity: Quantity, other: Quantity): boolean {
  if (compare(quantity, other) === null || amount(other).compare(0) === 0) return false;
  const ratio = amount(quantity).div(amount(other)).valueOf();
  return ratio >= near.low && ratio <= near.high;
}

function isInside(quantity: Quantity, limit: Limit): boolean {
  const { low, high, nominal } = window(limit);
  if (low === null && high === null) return nominal !== null && compare(quantity, nominal) === 0;
  return (low === null || compare(quantity, low) !== -1) && (high === null || compare(quantity, high) !== 1);
}
