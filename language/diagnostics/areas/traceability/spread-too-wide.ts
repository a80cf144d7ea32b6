import { say } from '../../../say/say.ts';
import { isSigned, judgedRule } from '../../judged-rule.ts';

export const spreadTooWide = judgedRule({
  code: 'spread-too-wide',
  severity: 'hint',
  title: 'The units of a set, or the places of a unit, lie further apart than the procedure allows.',
  why: say`the engine runs unevenly, although each of them passes.`,
  isDue: (unit, job) => !isSigned(unit, job),
});
