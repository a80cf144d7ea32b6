import { problemRule } from '../../problem-rule.ts';

export const clauseWithoutMeaning = problemRule({
  code: 'clause-without-meaning',
  title: 'A clause, word or object means nothing where it is written.',
});
