import { problemRule } from '../../problem-rule.ts';

export const unbalancedBrace = problemRule({
  code: 'unbalanced-brace',
  title: 'A brace is missing, or there is one too many.',
});
