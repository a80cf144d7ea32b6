import { problemRule } from '../../problem-rule.ts';

export const callMismatch = problemRule({
  code: 'call-mismatch',
  title: 'A call and its sequence do not go together.',
});
