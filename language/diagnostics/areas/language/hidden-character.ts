import { problemRule } from '../../problem-rule.ts';

export const hiddenCharacter = problemRule({
  code: 'hidden-character',
  title: 'A character cannot be seen.',
});
