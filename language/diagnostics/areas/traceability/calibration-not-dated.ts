import { say } from '../../../say/say.ts';
import { isTested, judgedRule } from '../../judged-rule.ts';

export const calibrationNotDated = judgedRule({
  code: 'calibration-not-dated',
  severity: 'hint',
  title: 'A unit is signed, and the shop does not say from when to when a tool that it was read with is calibrated.',
  why: say`the certificate is not made out on the word of a tool that nobody vouches for.`,
  isDue: (unit, job) => unit === null || isTested(unit, job),
});
