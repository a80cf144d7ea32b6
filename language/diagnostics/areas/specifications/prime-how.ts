import { writtenAt } from '../../../analysis/written-at.ts';
import { say } from '../../../say/say.ts';
import { blank } from '../../edits.ts';
import type { Rule } from '../../rule.ts';
import { fixStep, missingClause, type StepFix } from '../../step-fixes.ts';

/** `prime`, with neither strokes nor a time nor words. */
export const primeHow: Rule<StepFix> = {
  code: 'prime-how',
  severity: 'warning',
  since: '0.2.0',
  ofAbsence: true,
  title: 'A unit is primed, but nothing says how much.',
  eachStep(step, _, report) {
    if (step.verb !== 'prime' || step.count !== null || step.wordsAfter.includes('for')) return;
    report({
      at: step,
      rootCause: `prime-how:${writtenAt(step)}`,
      message: say`Nothing says how much the unit is primed.`,
      why: say`after two strokes there is still air in it, and the reading is soft.`,
      help: say`Write the number of strokes, such as prime 6 strokes, or “for” and in quotes how long.`,
      data: missingClause(step, `${blank} strokes`),
    });
  },
  fix: fixStep,
};
