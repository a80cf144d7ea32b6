import { writtenAt } from '../../../analysis/written-at.ts';
import { say } from '../../../say/say.ts';
import { blank } from '../../edits.ts';
import type { Rule } from '../../rule.ts';
import { fixStep, missingClause, type StepFix } from '../../step-fixes.ts';

/** A check that does not say what to look for. */
export const checkForWhat: Rule<StepFix> = {
  code: 'check-for-what',
  severity: 'warning',
  since: '0.2.0',
  ofAbsence: true,
  title: 'A check does not say what to look for.',
  eachStep(step, _, report) {
    if (step.verb !== 'check' || step.limit !== null) return;
    if ([step.text, step.accept, step.note].some((words) => words !== null)) return;
    if (step.verdicts.length > 0 || step.tools.length > 0) return;
    report({
      at: step,
      rootCause: `check-for:${writtenAt(step)}`,
      message: say`This check does not say what to look for.`,
      why: say`it gets ticked, and a blued tip or a stained face goes in.`,
      help: say`Write what to look for in quotes, or “reuse if "…"  reject if "…"”.`,
      data: missingClause(step, blank),
    });
  },
  fix: fixStep,
};
