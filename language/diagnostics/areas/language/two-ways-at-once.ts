import { problemRule } from '../../problem-rule.ts';

export const twoWaysAtOnce = problemRule({
  code: 'two-ways-at-once',
  title: 'Two things are said that cannot both be true.',
});
