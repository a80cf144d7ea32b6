import { say } from '../../../say/say.ts';
import { isSigned, judgedRule } from '../../judged-rule.ts';

export const signedAndFails = judgedRule({
  code: 'signed-and-fails',
  of: ['result-fails', 'result-in-guard-band', 'spread-too-wide'],
  severity: 'warning',
  title: 'A unit is signed, and its last result fails: it is outside its limit, or the set lies too far apart.',
  why: say`whoever reads the signature takes the unit for a good one, and it cannot be certified.`,
  isDue: isSigned,
});
