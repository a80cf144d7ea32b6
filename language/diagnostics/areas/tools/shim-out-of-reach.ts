import { partsWords } from '../../../analysis/prose.ts';
import { restsOn } from '../../../analysis/relations.ts';
import { inUnits, lowestFound, type ShimChoice, shimChoices } from '../../../analysis/shims.ts';
import { workedOut } from '../../../analysis/tool-words.ts';
import { stackedSizes } from '../../../engineering/shim-stock.ts';
import type { Procedure } from '../../../model/procedure.ts';
import { amount, formatQuantity } from '../../../quantities/index.ts';
import type { Rule } from '../../rule.ts';

/** The drawer does not go far enough to set a worn unit, or has one size only. */
export const shimOutOfReach: Rule = {
  code: 'shim-out-of-reach',
  severity: 'error',
  since: '0.2.0',
  title: 'The shims of the stock cannot bring a worn unit to where it is set.',
  procedure(procedure, report) {
    for (const choice of shimChoices(procedure)) {
      const message = nothingToChoose(choice) ?? shortWords(procedure, choice);
      if (message === null) continue;
      report({ at: choice.step, cause: `shim-reach:${stockWords(choice)}:${choice.test}`, message });
    }
  },
};

/** The drawer is empty, or has one thickness only. */
function nothingToChoose(choice: ShimChoice): string | null {
  // As the stock has them: a ceiling of the step is its own affair.
  const made = stackedSizes(choice.stocks);
  if (made === null || made.length > 1) return null;
  return made.length === 0
    ? `In ${stockWords(choice)} there is not one that could be fitted, by the counts of its sizes: the unit is opened, and lies open until somebody finds one. Fill the drawer and write the counts anew.`
    : `In ${stockWords(choice)} there is one size only: nothing can be chosen, and ${choice.test} stays where it is. Put the sizes that the shop has into the stock.`;
}

function shortWords(procedure: Procedure, choice: ShimChoice): string | null {
  const [least, most] = [choice.sizes?.[0], choice.sizes?.at(-1)];
  if (least === undefined || most === undefined || springIsRenewed(procedure, choice)) return null;
  for (const one of choice.cases) {
    const { number, rate, target } = one;
    const low = lowestFound(one);
    if (rate === null || low === null || target === null) continue;
    const reach = rate.mul(most.sub(least));
    if (reach.compare(amount(target).sub(amount(low))) >= 0) continue;
    const never = choice.most;
    return `${formatQuantity(low)} is good in service${number === null ? '' : ` for ${number}`}, and is to be brought to ${formatQuantity(target)}; from the thinnest ${partsWords(
      procedure,
      choice.parts.map(({ name }) => name),
    )} of ${stockWords(choice)} to the thickest${choice.stocks.some(({ stacks }) => stacks) ? ', two on each other,' : ''}${never === null ? '' : ` up to ${formatQuantity(never)}`} there are ${workedOut(inUnits(reach, target.unit))} only: a settled unit cannot be set. Widen the stock, renew the spring, or check the rate.`;
  }
  return null;
}

/** A new spring on every unit: what the old one had settled to does not matter. */
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

function stockWords({ stocks }: ShimChoice): string {
  return [...new Set(stocks.map(({ name }) => name))].join(' and ');
}
