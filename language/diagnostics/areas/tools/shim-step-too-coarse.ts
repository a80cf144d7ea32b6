import Fraction from 'fraction.js';
import { partsWords } from '../../../analysis/prose.ts';
import { acrossSet } from '../../../analysis/readings.ts';
import { type ChoiceCase, inUnits, lowestFound, type ShimChoice, shimChoices } from '../../../analysis/shims.ts';
import { workedOut } from '../../../analysis/tool-words.ts';
import { widthOf } from '../../../analysis/tools.ts';
import { thickest, widestStep } from '../../../engineering/shim-stock.ts';
import type { Statement } from '../../../model/diagnostic.ts';
import type { Procedure } from '../../../model/procedure.ts';
import { decimalsOf } from '../../../quantities/decimal.ts';
import { amount, formatQuantity, kindOfLimit, roundTo, sizeOf } from '../../../quantities/index.ts';
import { oncePer } from '../../../quantities/memo.ts';
import type { Quantity } from '../../../quantities/types.ts';
import { say } from '../../../say/say.ts';
import type { Rule } from '../../rule.ts';

/** From one shim in the drawer to the next, the reading jumps over its limit or over the spread of the set. */
export const shimStepTooCoarse: Rule = {
  code: 'shim-step-too-coarse',
  severity: 'warning',
  since: '0.2.0',
  title: 'From one shim in stock to the next, the reading jumps over its limit.',
  procedure(procedure, report) {
    for (const choice of shimChoices(procedure)) {
      const statement = choice.cases.map((one) => jump(procedure, choice, one)).find((words) => words !== null);
      if (statement == null) continue;
      report({ at: choice.step, rootCause: `shim-step:${choice.stocks[0]!.name}:${choice.test}`, ...statement });
    }
  },
};

/** By case, the widest step between the sizes that a unit may need. */
const widestSteps = oncePer((choice: ShimChoice) => {
  const { sizes, cases } = choice;
  return new Map(cases.map((one) => [one, sizes === null ? null : widestStep(asked(sizes, choice, one))]));
});

function jump(procedure: Procedure, choice: ShimChoice, one: ChoiceCase): Statement | null {
  const { number, rate, limit } = one;
  const step = widestSteps(choice).get(one) ?? null;
  if (step === null || rate === null || limit === null) return null;
  const change = rate.mul(step.to.sub(step.from));
  const own = widthOf(limit);
  const across = acrossSet(procedure, choice.test, kindOfLimit(limit));
  const rooms = [
    own?.twoEnds ? { width: own.width, words: say`the limit is only`, after: say` wide` } : null,
    across === null ? null : { width: across.width, words: say`the set may spread by only`, after: '' },
  ];
  const room = rooms.find((one) => one !== null && change.compare(sizeOf(one.width)) > 0) ?? null;
  if (room === null) return null;
  const { width, words, after } = room;
  const size = choice.stocks[0]!.sizes[0]!;
  const asWritten = (quantity: Quantity, rounding: 'nearest' | 'down') =>
    roundTo(quantity, size.unit, decimalsOf(size.number), rounding)!;
  const [from, to] = [step.from, step.to].map((one) => formatQuantity(asWritten(inUnits(one, size.unit), 'nearest')));
  const finest = asWritten(inUnits(sizeOf(width).div(rate), size.unit), 'down');
  const parts = partsWords(
    procedure,
    choice.parts.map(({ name }) => name),
  );
  return {
    message: say`The stock has no ${parts} between ${from!} and ${to!}${choice.stocks.some(({ stacks }) => stacks) ? say`, nor two that add up to one` : ''}. That step changes ${choice.test}${number === null ? '' : say` of ${number}`} by ${workedOut(inUnits(change, width.unit))}, but ${words} ${formatQuantity(width)}${after}.`,
    why: say`some units cannot be brought into the limit, whatever is fitted.`,
    help: say`Stock finer steps${Number(finest.number) > 0 ? say`, ${formatQuantity(finest)} at most` : ''}.`,
  };
}

/**
 * The thicknesses that a unit may need. Stacks of two may begin far above the thickest single shim: that gap does not
 * count where a worn unit never needs so much.
 */
function asked(sizes: readonly Fraction[], { stocks }: ShimChoice, one: ChoiceCase): readonly Fraction[] {
  const low = lowestFound(one);
  const { rate, target } = one;
  const alone = stocks.reduce((sum, stock) => sum.add(thickest({ ...stock, stacks: false }) ?? 0), new Fraction(0));
  const worn =
    sizes[0] === undefined || low === null || target === null || rate === null
      ? alone
      : amount(target).sub(amount(low)).div(rate).add(sizes[0]);
  const most = worn.compare(alone) > 0 ? worn : alone;
  return sizes.filter((_, index) => index === 0 || sizes[index - 1]!.compare(most) < 0);
}
