import { problemRule } from '../../problem-rule.ts';

export const strayCharacter = problemRule({
  code: 'stray-character',
  title: 'A character has no meaning in the language.',
});
