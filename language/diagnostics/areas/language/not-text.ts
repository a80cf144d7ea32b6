import { problemRule } from '../../problem-rule.ts';

export const notText = problemRule({
  code: 'not-text',
  title: 'A file is not text in UTF-8.',
});
