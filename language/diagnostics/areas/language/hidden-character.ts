import { problemRule } from '../../problem-rule.ts';

export const hiddenCharacter = problemRule({
  code: 'hidden-character',
  title: 'A character that cannot be seen.',
});
