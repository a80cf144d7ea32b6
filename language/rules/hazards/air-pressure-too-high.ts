import type { Step } from '../../model/procedure.ts';
import { amount, formatQuantity, kindOfUnit, window } from '../../quantities/index.ts';
import type { Quantity } from '../../quantities/types.ts';
import type { Rule } from '../rule.ts';

/** 29 CFR 1910.242(b): compressed air for cleaning "reduced to less than 30 psi". */
const lawful: Quantity = { number: '30', unit: 'psi' };

/** Hand-held blowing at or above the shop's limit, or with none given. */
export const airPressureTooHigh: Rule = {
  code: 'air-pressure-too-high',
  severity: 'error',
  unsafe: true,
  title: 'A part is blown dry with air at or above the limit, or with no limit given.',
  procedure(procedure, report) {
    const limit = procedure.shop.airBelow ?? lawful;
    const from = procedure.shop.airBelow === null ? '29 CFR 1910.242(b)' : `shop ${procedure.shop.name}`;
    for (const block of [...procedure.stages, ...procedure.repairs]) {
      for (const step of block.steps) {
        if (step.verb !== 'blow-dry' || isGuarded(step)) continue;
        if (step.air === null) {
          report({
            at: step,
            message: `No air pressure is given for blowing dry: the line in the shop may drive chips into eyes and air through skin. Write “with air at most” and a pressure under ${formatQuantity(limit)} (${from}).`,
          });
          continue;
        }
        const { high } = window(step.air);
        if (high === null || kindOfUnit(high.unit) !== 'pressure' || kindOfUnit(limit.unit) !== 'pressure') continue;
        if (amount(high).compare(amount(limit)) < 0) continue;
        report({
          at: step,
          message: `Air at ${formatQuantity(high)} is not under ${formatQuantity(limit)} (${from}): it drives chips into eyes and goes through skin. Lower it.`,
        });
      }
    }
  },
};

/** Not in the open hand: a closed cabinet, or a nozzle that lets the pressure off when it is blocked. */
function isGuarded({ text, note, tools }: Step): boolean {
  const words = [text, note, ...tools.map((tool) => (tool.form === 'words' ? tool.text : ''))].join(' ');
  return /\b(cabinet|relieving|relief nozzle)\b/iu.test(words);
}
