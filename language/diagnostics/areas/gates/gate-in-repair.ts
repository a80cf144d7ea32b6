import { capital } from '../../../analysis/prose.ts';
import { isGate, isTest } from '../../../model/steps.ts';
import type { Rule } from '../../rule.ts';

/** A test stands in a repair. After a repair the unit goes back to the tests of the stages by itself. */
export const gateInRepair: Rule = {
  code: 'gate-in-repair',
  severity: 'error',
  since: '0.2.0',
  title: 'A test stands in a repair.',
  procedure(procedure, report) {
    const inStages = procedure.stages.flatMap((stage) => stage.steps.filter(isGate).map(({ gate }) => gate.id));
    for (const repair of procedure.repairs) {
      for (const step of repair.steps) {
        if (!isTest(step)) continue;
        const { id, test } = step.gate;
        const across = step.verb === 'across';
        report({
          at: step,
          // In no stage the family has no such test either: that is the same slip.
          ...(inStages.includes(id) ? {} : { cause: `gate-missing:${test}:${across ? ' across the set' : ''}` }),
          allow: repair.allow,
          message: `${capital(test)} is tested${across ? ' across the set' : ''} inside repair ${repair.name}.`,
          help: 'After a repair the unit goes back to the earliest test that is not passed, and is tested there, with a box for it; a test in here would be run twice or recorded nowhere. Put it into a stage and take it out here.',
        });
      }
    }
  },
};
