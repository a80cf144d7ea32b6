import { allSteps } from '../../../analysis/locations.ts';
import { capital } from '../../../analysis/prose.ts';
import type { Step } from '../../../model/procedure.ts';
import type { NameUse } from '../../../model/source.ts';
import { own } from '../../../model/steps.ts';
import { type Said, say } from '../../../say/say.ts';
import type { Rule } from '../../rule.ts';
import { fixStep, type StepFix } from '../../step-fixes.ts';

/** What is tested, set or compared here does not prove the family: another procedure could leave it out. */
export const setAndNotProven: Rule<StepFix> = {
  code: 'set-and-not-proven',
  severity: 'hint',
  since: '0.2.0',
  title: 'A reading is tested, set or compared across the set, but the family does not require it.',
  procedure(procedure, report) {
    const { family } = procedure;
    const steps = allSteps(procedure);
    const tests = steps.filter((step) => step.verb === 'test');
    /** The list in the family, with a name more. */
    const added = (list: readonly NameUse[], name: string): StepFix | undefined => {
      const last = list.at(-1);
      return last === undefined ? undefined : { source: last.source, text: `${last.name}, ${name}`, where: 'instead' };
    };
    const tell = (step: Step, cause: string, message: Said, help: Said, data?: StepFix) =>
      report({
        at: step,
        rootCause: `not-proven:${cause}`,
        related: [{ message: say`The family is declared here.`, source: family.source }],
        message,
        why: say`another procedure that forgets it would check clean.`,
        help,
        data,
      });
    if (family.provenBy.length === 0) {
      const [first] = tests;
      if (first !== undefined)
        tell(
          first,
          'none',
          say`${capital(first.gate.test)} is tested, but the family does not say what proves a unit.`,
          say`Write “proven by” and the tests that every unit must pass in the family.`,
        );
      return;
    }
    for (const step of steps) {
      const set = step.verb === 'set' ? step.reading : (own(step, 'choose')?.test ?? null);
      const tested = tests.some((test) => test.gate.test === set);
      if (set !== null && tested && !family.provenBy.some((proof) => proof.name === set))
        tell(
          step,
          set,
          say`${capital(set)} is set and tested, but is not among the tests that prove the family.`,
          say`Add ${set} to “proven by” in the family.`,
          added(family.provenBy, set),
        );
      const across = step.verb === 'across' ? step.gate.test : null;
      if (across !== null && !family.provenAcrossSet.some((proof) => proof.name === across))
        tell(
          step,
          `across ${across}`,
          say`${capital(across)} is compared across the set, but the family does not require that.`,
          say`Write “proven across the set by ${across}” in the family.`,
          added(family.provenAcrossSet, across),
        );
    }
  },
  fix: fixStep,
};
