import { problemRule } from '../../problem-rule.ts';

export const blankLeft = problemRule({
  code: 'blank-left',
  title: 'A blank has not been filled in.',
});
