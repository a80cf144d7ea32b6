import { problemRule } from '../../problem-rule.ts';

export const impossibleFigure = problemRule({
  code: 'impossible-figure',
  title: 'A figure that cannot be.',
});
