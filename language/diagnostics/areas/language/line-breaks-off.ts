import { problemRule } from '../../problem-rule.ts';

export const lineBreaksOff = problemRule({
  code: 'line-breaks-off',
  title: 'A line ends before it is finished.',
});
