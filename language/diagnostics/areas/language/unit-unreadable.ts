import { correctingRule } from '../../problem-rule.ts';

export const unitUnreadable = correctingRule({
  code: 'unit-unreadable',
  title: 'A unit is missing, or can be read in several ways.',
});
