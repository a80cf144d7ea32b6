import type { Problem } from '../../../judgment/problem.ts';
import { say } from '../../../say/say.ts';
import { judgedRule } from '../../judged-rule.ts';

export const nobodyAnswers = judgedRule({
  code: 'nobody-answers',
  severity: 'hint',
  ofAbsence: true,
  title: 'All results of a unit are there, and nobody is named who did it.',
  why: say`nobody answers for it.`,
  // What is still in work is signed later.
  isDue: (unit) => unit === null || unit.problems.every(({ rule }) => awaited.has(rule)),
});

/** What may be missing in a unit whose work is done. */
const awaited: ReadonlySet<Problem['rule']> = new Set(['nobody-answers', 'calibration-not-dated', null]);
