import { problemRule } from '../../problem-rule.ts';

export const impossibleFigure = problemRule({
  code: 'impossible-figure',
  title: 'A figure is not possible: zero, below zero, or far beyond what there is.',
});
