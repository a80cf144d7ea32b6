import { lower } from '../../../analysis/prose.ts';
import { writtenAt } from '../../../analysis/written-at.ts';
import { say } from '../../../say/say.ts';
import type { Rule } from '../../rule.ts';
import { fixStep, missingClause, type StepFix } from '../../step-fixes.ts';

/** A reading is set, its adjuster is in the family, and the step does not name the adjuster. */
export const setByWhat: Rule<StepFix> = {
  code: 'set-by-what',
  severity: 'warning',
  since: '0.2.0',
  ofAbsence: true,
  title: 'A reading is set, but the step does not name its adjuster.',
  eachStep(step, setting, report) {
    if (step.verb !== 'set' || step.objects.length > 0) return;
    const adjuster = setting.family.adjusters.find((other) => other.sets === step.reading);
    if (adjuster === undefined) return;
    report({
      at: step,
      rootCause: `set-by:${writtenAt(step)}`,
      message: say`The ${lower(adjuster.title)} sets ${step.reading}, but this step does not say to turn it.`,
      why: say`a setting that is never locked would go unnoticed.`,
      help: say`Write “by ${adjuster.name}”.`,
      data: missingClause(step, `by ${adjuster.name}`),
    });
  },
  fix: fixStep,
};
