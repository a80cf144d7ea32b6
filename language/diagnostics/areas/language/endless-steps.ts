import { problemRule } from '../../problem-rule.ts';

export const endlessSteps = problemRule({
  code: 'endless-steps',
  title: 'Steps lead back to themselves, or are more than anybody can follow.',
});
