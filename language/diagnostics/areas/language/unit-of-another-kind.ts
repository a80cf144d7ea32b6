import { problemRule } from '../../problem-rule.ts';

export const unitOfAnotherKind = problemRule({
  code: 'unit-of-another-kind',
  title: 'A figure has a unit of another kind than what is written there.',
});
