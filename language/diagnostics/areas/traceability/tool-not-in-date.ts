import { say } from '../../../say/say.ts';
import { judgedRule } from '../../judged-rule.ts';

export const toolNotInDate = judgedRule({
  code: 'tool-not-in-date',
  severity: 'warning',
  title: 'A result was read with a tool whose calibration was not in force on that day.',
  why: say`nothing shows that the tool was right.`,
});
