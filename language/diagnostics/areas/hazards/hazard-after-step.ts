import { say } from '../../../say/say.ts';
import type { Rule } from '../../rule.ts';

/** A hazard that is written after the step it belongs to. */
export const hazardAfterStep: Rule = {
  code: 'hazard-after-step',
  severity: 'error',
  since: '0.1.0',
  unsafe: true,
  title: 'A hazard is written after the step that it warns about.',
  problems(problems, report) {
    for (const problem of problems) {
      if (problem.kind !== 'hazard-after-step') continue;
      report({
        at: problem.source,
        message:
          problem.step === null
            ? say`No step follows this hazard in its stage.`
            : say`This hazard comes after the step that it warns about (${problem.step}).`,
        why: say`it would be read after the harm is done.`,
        help: problem.step === null ? say`Put it before the step that it warns about.` : say`Put it before the step.`,
      });
    }
  },
};
