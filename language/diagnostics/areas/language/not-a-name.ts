import { problemRule } from '../../problem-rule.ts';

export const notAName = problemRule({
  code: 'not-a-name',
  title: 'A name is missing, in quotes, or a word of the language.',
});
