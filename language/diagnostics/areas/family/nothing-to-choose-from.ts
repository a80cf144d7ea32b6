import { allSteps } from '../../../analysis/locations.ts';
import { either, lower } from '../../../analysis/prose.ts';
import type { Rule } from '../../rule.ts';

/** A part is chosen, and the family names no stock for it, or one that this shop has not. */
export const nothingToChooseFrom: Rule = {
  code: 'nothing-to-choose-from',
  severity: 'warning',
  since: '0.2.0',
  ofAbsence: true,
  title: 'A part is chosen from no stock, or from one that the shop does not have.',
  procedure(procedure, report) {
    const { stocks } = procedure.shop;
    const written = stocks.length === 0 ? '' : `, such as ${either(stocks.map((stock) => stock.name))}`;
    for (const step of allSteps(procedure)) {
      if (step.verb !== 'choose') continue;
      for (const object of step.objects) {
        const part = procedure.family.parts.find((other) => other.name === object.name);
        if (part === undefined || stocks.some((stock) => stock.name === part.chosenFrom)) continue;
        // The author's own words may say which drawer.
        if (part.chosenFrom === null && step.text !== null) continue;
        report({
          at: step,
          source: object.source,
          cause: `no-stock:${part.base}`,
          allow: part.allow,
          related: [{ message: `${part.base} is declared here.`, source: part.source }],
          message:
            part.chosenFrom === null
              ? `The ${lower(part.title)} is chosen here, and the family does not say from what: the next one cannot be worked out, and the bench hand takes what lies nearest. Write “chosen from” and a stock of the shop${written}, at ${part.base}.`
              : `The ${lower(part.title)} is chosen from ${part.chosenFrom}, and the shop has no stock of that name: nobody knows which thicknesses there are. Write “stock ${part.chosenFrom}” in the shop, or name one that it has${written}.`,
        });
      }
    }
  },
};
