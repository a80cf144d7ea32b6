import { say } from '../../../say/say.ts';
import { judgedRule } from '../../judged-rule.ts';

export const doneOnWrongDay = judgedRule({
  code: 'done-on-wrong-day',
  severity: 'warning',
  title: 'The days of a job are out of order, or one is missing.',
  why: say`which calibration was in force, and who did it, depends on the day.`,
});
