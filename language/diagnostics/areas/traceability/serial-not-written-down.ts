import { say } from '../../../say/say.ts';
import { judgedRule } from '../../judged-rule.ts';

export const serialNotWrittenDown = judgedRule({
  code: 'serial-not-written-down',
  severity: 'warning',
  ofAbsence: true,
  title: 'Results are written down of a unit that has no serial.',
  why: say`the serial is all that leads from a unit to its papers.`,
  // Before that it may be that nobody has had it in the hand.
  isDue: (unit) => unit === null || unit.unit.results.length > 0,
});
