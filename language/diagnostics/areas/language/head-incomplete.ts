import { problemRule } from '../../problem-rule.ts';

export const headIncomplete = problemRule({
  code: 'head-incomplete',
  title: 'The head of a procedure or job does not say what is needed to check it.',
});
