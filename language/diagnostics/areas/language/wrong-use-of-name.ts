import { problemRule } from '../../problem-rule.ts';

export const wrongUseOfName = problemRule({
  code: 'wrong-use-of-name',
  title: 'A name stands for something that cannot be used in this way.',
});
