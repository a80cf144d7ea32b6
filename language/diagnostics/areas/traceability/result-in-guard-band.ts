import { say } from '../../../say/say.ts';
import { isSigned, judgedRule } from '../../judged-rule.ts';

export const resultInGuardBand = judgedRule({
  code: 'result-in-guard-band',
  references: ['ISO 14253-1'],
  severity: 'hint',
  title:
    'The last reading is inside its limit, and nearer to its end than the decision rule of the shop allows with that tool.',
  why: say`the unit may be outside although the gauge says it is inside.`,
  isDue: (unit, job) => !isSigned(unit, job),
});
