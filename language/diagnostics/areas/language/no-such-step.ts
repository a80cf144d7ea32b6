import { problemRule } from '../../problem-rule.ts';

export const noSuchStep = problemRule({
  code: 'no-such-step',
  title: 'A step is named, and there is none of that name, or several.',
});
