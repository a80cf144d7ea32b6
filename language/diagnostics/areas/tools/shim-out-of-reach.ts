import { partsWords } from '../../../analysis/prose.ts';
import { restsOn } from '../../../analysis/relations.ts';
import { inUnits, lowestFound, type ShimChoice, shimChoices } from '../../../analysis/shims.ts';
import { workedOut } from '../../../analysis/tool-words.ts';
import { stackedSizes } from '../../../engineering/shim-stock.ts';
import type { Statement } from '../../../model/diagnostic.ts';
import type { Procedure } from '../../../model/procedure.ts';
import { amount, formatQuantity } from '../../../quantities/index.ts';
import { listed, type Said, say } from '../../../say/say.ts';
import type { Rule } from '../../rule.ts';

/** The drawer does not go far enough to set a worn unit, or has only one size. */
export const shimOutOfReach: Rule = {
  code: 'shim-out-of-reach',
  severity: 'error',
  since: '0.2.0',
  title: 'The shims in stock cannot bring a worn unit to its setting.',
  procedure(procedure, report) {
    for (const choice of shimChoices(procedure)) {
      const statement = nothingToChoose(choice) ?? outOfReach(procedure, choice);
      if (statement === null) continue;
      report({ at: choice.step, rootCause: `shim-reach:${stockWords(choice)}:${choice.test}`, ...statement });
    }
  },
};

/** The drawer is empty, or has only one thickness. */
function nothingToChoose(choice: ShimChoice): Statement | null {
  // As the stock has them, whatever ceiling the step sets.
  const made = stackedSizes(choice.stocks);
  if (made === null || made.length > 1) return null;
  return made.length === 0
    ? {
        message: say`By its counts, stock ${stockWords(choice)} has nothing left that could be fitted.`,
        why: say`the unit is opened, and lies open until somebody finds one.`,
        help: say`Refill the drawer and update the counts.`,
      }
    : {
        message: say`Stock ${stockWords(choice)} has only one size.`,
        why: say`nothing can be chosen, and ${choice.test} stays where it is.`,
        help: say`Add the sizes that the shop has to the stock.`,
      };
}

function outOfReach(procedure: Procedure, choice: ShimChoice): Statement | null {
  const [least, most] = [choice.sizes?.[0], choice.sizes?.at(-1)];
  if (least === undefined || most === undefined || springIsRenewed(procedure, choice)) return null;
  for (const one of choice.cases) {
    const { number, rate, target } = one;
    const low = lowestFound(one);
    if (rate === null || low === null || target === null) continue;
    const reach = rate.mul(most.sub(least));
    if (reach.compare(amount(target).sub(amount(low))) >= 0) continue;
    const never = choice.most;
    const parts = partsWords(
      procedure,
      choice.parts.map(({ name }) => name),
    );
    return {
      message: say`Stock ${stockWords(choice)} cannot bring a unit from ${formatQuantity(low)}, which is still good in service${number === null ? '' : say` for ${number}`}, to ${formatQuantity(target)}.`,
      why: say`from the thinnest ${parts} to the thickest${choice.stocks.some(({ stacks }) => stacks) ? say`, two stacked,` : ''}${never === null ? '' : say` up to ${formatQuantity(never)}`} the shims change it by only ${workedOut(inUnits(reach, target.unit))}.`,
      help: say`Widen the stock, renew the spring, or check the rate.`,
    };
  }
  return null;
}

/** Every unit gets a new spring: how far the old one had settled does not matter. */
function springIsRenewed({ family, stages }: Procedure, { parts }: ShimChoice): boolean {
  const names = parts.map(({ name }) => name);
  const beside = family.parts.filter(
    (part) =>
      restsOn(part).some((under) => names.includes(under)) || parts.some((shim) => restsOn(shim).includes(part.name)),
  );
  const renewed = stages.flatMap(({ steps }) =>
    steps.flatMap((step) => (step.verb === 'renew' ? step.objects.map(({ name }) => name) : [])),
  );
  return beside.some((part) => part.renewed || renewed.includes(part.name));
}

function stockWords({ stocks }: ShimChoice): Said {
  return listed([...new Set(stocks.map(({ name }) => name))]);
}
