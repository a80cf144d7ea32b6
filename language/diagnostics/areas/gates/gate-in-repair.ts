import { capital } from '../../../analysis/prose.ts';
import type { Rule } from '../../rule.ts';

/** A test stands in a repair. After a repair the unit goes back to the tests of the stages by itself. */
export const gateInRepair: Rule = {
  code: 'gate-in-repair',
  severity: 'error',
  since: '0.2.0',
  title: 'A test stands in a repair.',
  procedure(procedure, report) {
    const inStages = procedure.stages.flatMap((stage) => stage.steps.flatMap((step) => step.gate?.name ?? []));
    for (const repair of procedure.repairs) {
      for (const step of repair.steps) {
        if (step.verb !== 'test' && step.verb !== 'across') continue;
        const { name } = step.gate!;
        const across = step.verb === 'across';
        const test = name.replace(/^across /u, '');
        report({
          at: step,
          // In no stage the family has no such test either: that is the same slip.
          ...(inStages.includes(name) ? {} : { cause: `gate-missing:${test}:${across ? ' across the set' : ''}` }),
          allow: repair.allow,
          message: `${capital(test)} is tested${across ? ' across the set' : ''} inside repair ${repair.name}.`,
          help: 'After a repair the unit goes back to the earliest test that is not passed, and is tested there, with a box for it; a test in here would be run twice or recorded nowhere. Put it into a stage and take it out here.',
        });
      }
    }
  },
};
