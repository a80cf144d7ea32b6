import { problemRule } from '../../problem-rule.ts';

export const resultUnreadable = problemRule({
  code: 'result-unreadable',
  title: 'A result or serial of a job cannot be read.',
});
