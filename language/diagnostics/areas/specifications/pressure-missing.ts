import { writtenAt } from '../../../analysis/written-at.ts';
import { say } from '../../../say/say.ts';
import { blank } from '../../edits.ts';
import type { Rule } from '../../rule.ts';
import { fixStep, missingClause, type StepFix } from '../../step-fixes.ts';

/** A test that holds a pressure or lets it fall gives no pressure. */
export const pressureMissing: Rule<StepFix> = {
  code: 'pressure-missing',
  severity: 'error',
  since: '0.1.0',
  ofAbsence: true,
  title: 'A timed pressure test gives no pressure.',
  eachStep(step, _, report) {
    if (step.verb !== 'test') return;
    const { test } = step;
    if (test.reads !== null || test.hold !== null) return;
    if (test.forTime === null && test.inTime === null && test.to === null && test.from === null) return;
    const start = test.from === null;
    // A pressure fall that is only watched for a time ends where the text says.
    if (!start && (test.to !== null || test.forTime !== null || step.accept !== null)) return;
    report({
      at: step,
      rootCause: `test-pressure:${writtenAt(step)}`,
      ...(start
        ? {
            message: say`Test ${step.gate.test} is timed, but no pressure says where it starts.`,
            why: say`each person pumps to whatever pressure they remember.`,
            help: say`Write “hold” and a pressure, or “from … to …”.`,
            data: missingClause(step, `hold ${blank}`),
          }
        : {
            message: say`Test ${step.gate.test} says where the pressure fall starts, but not where it ends.`,
            why: say`nobody knows when to stop the clock.`,
            help: say`Write “to” and the pressure at the end.`,
            data: missingClause(step, `to ${blank}`),
          }),
    });
  },
  fix: fixStep,
};
