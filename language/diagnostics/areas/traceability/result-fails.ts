import { judgedRule } from '../../judged-rule.ts';

export const resultFails = judgedRule({
  code: 'result-fails',
  severity: 'hint',
  title: 'The last result of a unit fails: a reading or a torque outside its limit, or a verdict.',
  why: 'the unit cannot go out like this.',
});
