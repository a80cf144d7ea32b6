import { problemRule } from '../../problem-rule.ts';

export const strayCharacter = problemRule({
  code: 'stray-character',
  title: 'A character that the language does not have.',
});
