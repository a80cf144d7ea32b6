import { writtenAt } from '../../../analysis/written-at.ts';
import { say } from '../../../say/say.ts';
import { blank } from '../../edits.ts';
import type { Rule } from '../../rule.ts';
import { fixStep, missingClause, type StepFix } from '../../step-fixes.ts';

/** A pressure is held, and nothing says for how long. */
export const holdHowLong: Rule<StepFix> = {
  code: 'hold-how-long',
  severity: 'error',
  since: '0.2.0',
  ofAbsence: true,
  title: 'A pressure is held, but nothing says for how long.',
  eachStep(step, _, report) {
    if (step.verb !== 'test') return;
    const { test, conditions } = step;
    if (test.hold === null || test.forTime !== null || test.inTime !== null) return;
    const words = [step.text, step.accept, step.reject, step.note, ...conditions].join(' ');
    if (test.reads === 'time' || /\d ?(s|sec|seconds?|min|minutes?)\b/u.test(words)) return;
    report({
      at: step,
      rootCause: `hold-time:${writtenAt(step)}`,
      message: say`Test ${step.gate.test} holds a pressure, but does not say for how long.`,
      why: say`a slow leak shows no drop in the two seconds that somebody in a hurry waits.`,
      help: say`Write “for” and a time, such as for 10 s.`,
      data: missingClause(step, `for ${blank} s`),
    });
  },
  fix: fixStep,
};
