import type { Rule } from '../../rule.ts';

/** A caution that stands behind the step it belongs to. */
export const hazardAfterStep: Rule = {
  code: 'hazard-after-step',
  severity: 'error',
  since: '0.1.0',
  unsafe: true,
  title: 'A hazard stands after the step that it warns of.',
  problems(problems, report) {
    for (const problem of problems) {
      if (problem.kind !== 'hazard-after-step') continue;
      report({
        at: problem.source,
        message:
          problem.step === null
            ? 'No step follows this hazard in its stage: it would be read when the harm is done. Put it before the step that it warns of.'
            : `This hazard stands after the step that it warns of (${problem.step}): it would be read when the harm is done. Put it before the step.`,
      });
    }
  },
};
