import { say } from '../../../say/say.ts';
import { judgedRule } from '../../judged-rule.ts';

export const nobodyAnswers = judgedRule({
  code: 'nobody-answers',
  severity: 'hint',
  ofAbsence: true,
  title: 'All results of a unit are there, and nobody is named who did it.',
  why: say`nobody answers for it.`,
  // What is still in work is signed later.
  isDue: ({ problems }) => problems.every(({ rule }) => rule === 'nobody-answers' || rule === null),
});
