import { problemRule } from '../../problem-rule.ts';

export const tooMuchToRead = problemRule({
  code: 'too-much-to-read',
  title: 'A text is longer, or nested deeper, than the checker reads.',
});
