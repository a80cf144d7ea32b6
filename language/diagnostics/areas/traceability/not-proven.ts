import { say } from '../../../say/say.ts';
import { judgedRule } from '../../judged-rule.ts';

export const notProven = judgedRule({
  code: 'not-proven',
  severity: 'hint',
  title: 'A unit is signed, its tests have begun, and a test or a record that it needs has no result.',
  why: say`the certificate is not made out without it.`,
  // A unit that was taken apart is signed on that day too.
  isDue: ({ unit, outcomes }) =>
    unit.results.at(-1)?.form === 'done' &&
    outcomes.some(({ reading, verdict }) => reading !== null || verdict !== null),
});
