import { problemRule } from '../../problem-rule.ts';

export const endlessSteps = problemRule({
  code: 'endless-steps',
  title: 'Steps lead round in a ring, or are more than anybody can follow.',
});
