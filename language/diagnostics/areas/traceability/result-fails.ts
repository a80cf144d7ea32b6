import { say } from '../../../say/say.ts';
import { isSigned, judgedRule } from '../../judged-rule.ts';

export const resultFails = judgedRule({
  code: 'result-fails',
  severity: 'hint',
  title: 'The last result of a unit fails: a reading or a torque outside its limit, or a verdict.',
  why: say`the unit cannot go out like this.`,
  // Then it is a warning: signed-and-fails.
  isDue: (unit, job) => !isSigned(unit, job),
});
