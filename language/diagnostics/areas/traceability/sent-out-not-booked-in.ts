import { stageSteps } from '../../../analysis/stages.ts';
import { say } from '../../../say/say.ts';
import type { Rule } from '../../rule.ts';
import { fixStep, missingAfter, type StepFix } from '../../step-fixes.ts';

/** A unit is sent to somebody else, and tested or signed off with no line saying that it came back. */
export const sentOutNotBookedIn: Rule<StepFix> = {
  code: 'sent-out-not-booked-in',
  severity: 'warning',
  since: '0.2.0',
  title: 'A unit is sent out, and is tested or signed off without being booked in.',
  flow({ graph }, report) {
    const steps = stageSteps(graph);
    for (const [index, { step }] of steps.entries()) {
      if (step.verb !== 'send-out') continue;
      const next = steps.slice(index).find((later) => ['book-in', 'test', 'set', 'sign-off'].includes(later.step.verb));
      if (next === undefined || next.step.verb === 'book-in') continue;
      report({
        at: step,
        message: say`The unit is sent out here, and nothing books it in before it is tested or signed off.`,
        why: say`nobody inspects what came back, and the sheet does not say whose work it was.`,
        help: say`Write “book-in” where it comes back.`,
        data: missingAfter(step, 'book-in'),
      });
    }
    return {};
  },
  fix: fixStep,
};
