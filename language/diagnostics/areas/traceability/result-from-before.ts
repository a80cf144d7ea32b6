import { say } from '../../../say/say.ts';
import { judgedRule } from '../../judged-rule.ts';

export const resultFromBefore = judgedRule({
  code: 'result-from-before',
  severity: 'warning',
  title: 'A result is from before something was changed that it depends on.',
  why: say`the certificate shows the unit as it goes out.`,
});
