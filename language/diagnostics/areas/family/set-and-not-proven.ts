import { allSteps } from '../../../analysis/locations.ts';
import type { Step } from '../../../model/procedure.ts';
import { own } from '../../../model/steps.ts';
import type { Rule } from '../../rule.ts';

/** What is tested, set or compared here is not among what proves the family: another procedure could leave it out. */
export const setAndNotProven: Rule = {
  code: 'set-and-not-proven',
  severity: 'hint',
  since: '0.2.0',
  title: 'What is tested, set or compared across the set is not among what proves the family.',
  procedure(procedure, report) {
    const { family } = procedure;
    const steps = allSteps(procedure);
    const tests = steps.filter((step) => step.verb === 'test');
    const tell = (step: Step, cause: string, message: string) =>
      report({
        at: step,
        cause: `not-proven:${cause}`,
        related: [{ message: 'The family is declared here.', source: family.source }],
        message: `${message} A procedure that forgets it would check clean.`,
      });
    if (family.provenBy.length === 0) {
      const [first] = tests;
      if (first !== undefined)
        tell(
          first,
          'none',
          `${first.gate.test} is tested, and the family does not say what proves it. Write “proven by” and the tests that every unit must pass.`,
        );
      return;
    }
    for (const step of steps) {
      const set = step.verb === 'set' ? step.reading : (own(step, 'choose')?.test ?? null);
      const tested = tests.some((test) => test.gate.test === set);
      if (set !== null && tested && !family.provenBy.some((proof) => proof.name === set))
        tell(step, set, `${set} is set and tested, and is not among what proves the family. Write it at “proven by”.`);
      const across = step.verb === 'across' ? step.gate.test : null;
      if (across !== null && !family.provenAcrossSet.some((proof) => proof.name === across))
        tell(
          step,
          `across ${across}`,
          `${across} is compared across the set, and the family does not ask for it. Write “proven across the set by ${across}”.`,
        );
    }
  },
};
