import { correctingRule } from '../../problem-rule.ts';

export const unknownWord = correctingRule({
  code: 'unknown-word',
  title: 'A line begins with no word of the language, or a word is misspelled.',
});
