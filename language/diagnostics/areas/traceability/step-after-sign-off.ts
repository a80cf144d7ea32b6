import { stageSteps } from '../../../analysis/stages.ts';
import type { Verb } from '../../../model/verbs.ts';
import { say } from '../../../say/say.ts';
import { verbsThat } from '../../../syntax/verbs/index.ts';
import type { Rule } from '../../rule.ts';

/** What may be done to a unit after it is signed off: it is closed, packed and sent. */
const afterwards: readonly Verb[] = verbsThat('after sign-off');

/** The unit is worked on after the last signature. An earlier stage may have a signature of its own. */
export const stepAfterSignOff: Rule = {
  code: 'step-after-sign-off',
  severity: 'error',
  since: '0.2.0',
  title: 'The unit is worked on after it was signed off.',
  flow({ graph }, report) {
    const steps = stageSteps(graph);
    const signed = steps.findLast(({ step }) => step.verb === 'sign-off');
    const late = steps.find(
      ({ step, at }) => signed !== undefined && at > signed.at && !afterwards.includes(step.verb),
    );
    if (signed !== undefined && late !== undefined)
      report({
        at: late.step,
        rootCause: `after-sign-off:${signed.step.number}`,
        related: [{ message: say`It is signed off in step ${signed.step.number}.`, source: signed.step.source }],
        message: say`The unit is signed off in step ${signed.step.number} and worked on after that.`,
        why: say`the signature vouches for a unit that was not finished.`,
        help: say`Move the sign-off after the last step that works on the unit.`,
      });
    return {};
  },
};
