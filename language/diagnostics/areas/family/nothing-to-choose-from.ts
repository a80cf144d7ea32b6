import { allSteps } from '../../../analysis/locations.ts';
import { either, lower } from '../../../analysis/prose.ts';
import { say } from '../../../say/say.ts';
import { blank } from '../../edits.ts';
import type { Rule } from '../../rule.ts';
import { declared, fixStep, type StepFix } from '../../step-fixes.ts';

/** A part is chosen, and the family names no stock for it, or a stock that this shop does not have. */
export const nothingToChooseFrom: Rule<StepFix> = {
  code: 'nothing-to-choose-from',
  severity: 'warning',
  since: '0.2.0',
  ofAbsence: true,
  title: 'A part is chosen from no stock, or from one that the shop does not have.',
  procedure(procedure, report) {
    const { stocks } = procedure.shop;
    const written = stocks.length === 0 ? '' : say`, such as ${either(stocks.map((stock) => stock.name))}`;
    for (const step of allSteps(procedure)) {
      if (step.verb !== 'choose') continue;
      for (const object of step.objects) {
        const part = procedure.family.parts.find((other) => other.name === object.name);
        if (part === undefined || stocks.some((stock) => stock.name === part.chosenFrom)) continue;
        // The author's own text may say which drawer.
        if (part.chosenFrom === null && step.text !== null) continue;
        report({
          at: step,
          source: object.source,
          rootCause: `no-stock:${part.base}`,
          allow: part.allow,
          related: [{ message: say`${part.base} is declared here.`, source: part.source }],
          ...(part.chosenFrom === null
            ? {
                message: say`The ${lower(part.title)} is chosen here, but the family does not say from which stock.`,
                why: say`the next size cannot be worked out, and the bench hand takes whatever is at hand.`,
                help: say`Write “chosen from” and a stock of the shop${written}, at part ${part.base}.`,
                data: declared(part.source, `chosen from ${stocks.length === 1 ? stocks[0]!.name : blank}`),
              }
            : {
                message: say`The ${lower(part.title)} is chosen from ${part.chosenFrom}, but the shop has no stock of that name.`,
                why: say`nobody knows which sizes there are.`,
                help: say`Write “stock ${part.chosenFrom}” in the shop, or name a stock that it has${written}.`,
              }),
        });
      }
    }
  },
  fix: fixStep,
};
