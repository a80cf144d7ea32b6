import { capital } from '../../../analysis/prose.ts';
import { isGate, isTest } from '../../../model/steps.ts';
import { say } from '../../../say/say.ts';
import type { Rule } from '../../rule.ts';

/** A test inside a repair. After a repair the unit returns to the tests of the stages without being sent. */
export const gateInRepair: Rule = {
  code: 'gate-in-repair',
  severity: 'error',
  since: '0.2.0',
  title: 'A repair contains a test.',
  procedure(procedure, report) {
    const inStages = procedure.stages.flatMap((stage) => stage.steps.filter(isGate).map(({ gate }) => gate.id));
    for (const repair of procedure.repairs) {
      for (const step of repair.steps) {
        if (!isTest(step)) continue;
        const { id, test } = step.gate;
        const across = step.verb === 'across';
        report({
          at: step,
          // If no stage has the test, it is also missing for the family: that is the same mistake.
          ...(inStages.includes(id) ? {} : { rootCause: `gate-missing:${test}:${across ? ' across the set' : ''}` }),
          allow: repair.allow,
          message: say`${capital(test)} is tested${across ? say` across the set` : ''} inside repair ${repair.name}.`,
          why: say`a test inside a repair is run twice or recorded nowhere.`,
          help: say`After a repair the unit goes back to the earliest test that it has not passed, and that test has a box on the sheet. Move this test to a stage.`,
        });
      }
    }
  },
};
