import { correctingRule } from '../../problem-rule.ts';

export const numberUnreadable = correctingRule({
  code: 'number-unreadable',
  title: 'A number can be read in several ways, or in none.',
});
