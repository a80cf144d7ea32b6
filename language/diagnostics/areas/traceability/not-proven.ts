import { say } from '../../../say/say.ts';
import { isTested, judgedRule } from '../../judged-rule.ts';

export const notProven = judgedRule({
  code: 'not-proven',
  severity: 'hint',
  title: 'A unit is signed, its tests have begun, and something that its certificate needs is missing.',
  why: say`the certificate is not made out without it.`,
  // A unit that was taken apart is signed on that day too.
  isDue: (unit, job) =>
    unit === null ||
    isTested(unit, job) ||
    // It is forgotten when all others are done.
    (unit.unit.results.length === 0 &&
      job.units.length > 1 &&
      job.units.every((one) => one === unit || isTested(one, job))),
});
