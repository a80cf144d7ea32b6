import type { Verb } from '../../model/verbs.ts';
import type { Rule } from '../rule.ts';

/** Verbs after which a unit can come out of a test otherwise than before. */
const changing: readonly Verb[] = [
  'choose',
  'set',
  'renew',
  'lap',
  'wash',
  'soak',
  'clean-holes',
  'wipe',
  'blow-dry',
  'blast',
  'buff',
  'press',
  'line-up',
  'do',
  'send-out',
];

/** A repair opens the unit and closes it again, and does nothing in between. */
export const repairChangesNothing: Rule = {
  code: 'repair-changes-nothing',
  severity: 'error',
  title: 'A repair changes nothing: the same unit goes back to the same test.',
  procedure(procedure, report) {
    for (const repair of procedure.repairs) {
      const retightens =
        repair.steps.some((step) => step.verb === 'torque') &&
        !repair.steps.some((step) => step.verb === 'remove' || step.verb === 'slacken');
      if (retightens || repair.steps.some((step) => changing.includes(step.verb))) continue;
      const fresh =
        repair.steps.some((step) => step.verb === 'discard') && repair.steps.some((step) => step.verb === 'fit');
      if (fresh) continue;
      report({
        at: repair.source,
        allow: repair.allow,
        message: `Repair ${repair.name} changes nothing: the unit would fail the same test again. Write what is cleaned, lapped, set or renewed in it.`,
      });
    }
  },
};
