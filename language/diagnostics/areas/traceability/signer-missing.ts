import { writtenAt } from '../../../analysis/written-at.ts';
import { say } from '../../../say/say.ts';
import { blank } from '../../edits.ts';
import type { Rule } from '../../rule.ts';
import { fixStep, missingClause, type StepFix } from '../../step-fixes.ts';

/** Somebody signs, and nothing says who is allowed to. */
export const signerMissing: Rule<StepFix> = {
  code: 'signer-missing',
  severity: 'warning',
  since: '0.2.0',
  ofAbsence: true,
  title: 'A signature is required, but nothing says whose.',
  eachStep(step, _, report) {
    if ((step.verb !== 'sign-off' && step.verb !== 'hold-for') || step.text !== null) return;
    report({
      at: step,
      rootCause: `signer:${writtenAt(step)}`,
      message: say`Nothing says who signs here.`,
      why: say`anybody may, and nobody answers for it.`,
      help: say`Write “${step.verb === 'sign-off' ? say`sign-off by "…"` : say`hold-for "…"`}” with the job title, such as the bench lead.`,
      data: missingClause(step, step.verb === 'sign-off' ? `by ${blank}` : blank),
    });
  },
  fix: fixStep,
};
