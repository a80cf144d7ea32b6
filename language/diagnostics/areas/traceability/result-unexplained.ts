import { say } from '../../../say/say.ts';
import { judgedRule } from '../../judged-rule.ts';

export const resultUnexplained = judgedRule({
  code: 'result-unexplained',
  severity: 'warning',
  title: 'Two results of a unit contradict each other, and nothing is written down that explains it.',
  why: say`one of the two is wrong, or work is missing from the paper.`,
});
