import { problemRule } from '../../problem-rule.ts';

export const outOfPlace = problemRule({
  code: 'out-of-place',
  title: 'A word or sign does not belong where it is written.',
});
