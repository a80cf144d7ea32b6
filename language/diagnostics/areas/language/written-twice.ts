import { problemRule } from '../../problem-rule.ts';

export const writtenTwice = problemRule({
  code: 'written-twice',
  title: 'The same thing is written twice.',
});
