import type { Rule } from '../rule.ts';
import { partsWords } from '../words.ts';

/** Torque with no figure. */
export const torqueMissing: Rule = {
  code: 'torque-missing',
  severity: 'error',
  unsafe: true,
  title: 'A torque step has no torque.',
  procedure(procedure, report) {
    for (const block of [...procedure.stages, ...procedure.repairs]) {
      for (const step of block.steps) {
        if (step.verb !== 'torque' || step.limit !== null || step.stretch !== null || step.objects.length === 0)
          continue;
        report({
          at: step,
          message: `No torque is given for the ${partsWords(
            procedure,
            step.objects.map((object) => object.name),
          )}: the bench hand would guess. Write “to” and a spec, or the figure with its source.`,
        });
      }
    }
  },
};
