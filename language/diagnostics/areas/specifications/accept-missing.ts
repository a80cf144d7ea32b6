import { writtenAt } from '../../../analysis/written-at.ts';
import { say } from '../../../say/say.ts';
import { blank } from '../../edits.ts';
import type { Rule } from '../../rule.ts';
import { fixStep, missingClause, type StepFix } from '../../step-fixes.ts';

/** A test that reads nothing and does not say what is good. */
export const acceptMissing: Rule<StepFix> = {
  code: 'accept-missing',
  severity: 'error',
  since: '0.2.0',
  ofAbsence: true,
  title: 'A test reads nothing and does not say what to accept.',
  eachStep(step, _, report) {
    if (step.verb !== 'test') return;
    const { test } = step;
    // A reading or a fall needs a limit; words beside the test may be about anything.
    if (test.reads !== null || step.limit !== null || test.from !== null || test.inTime !== null) return;
    if (step.accept !== null || step.reject !== null) return;
    report({
      at: step,
      rootCause: `accept:${writtenAt(step)}`,
      message: say`Test ${step.gate.test} says neither what is read nor what is good.`,
      why: say`one person passes a drop on the tip, and the next does not.`,
      help:
        step.text === null
          ? say`Write “accept "…"”, or “read … within …”.`
          : say`Write “accept” before the words that say what is good, or “read … within …”.`,
      data: step.text === null ? missingClause(step, `accept ${blank}`) : undefined,
    });
  },
  fix: fixStep,
};
