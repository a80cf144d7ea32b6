import { problemRule } from '../../problem-rule.ts';

export const wrongDate = problemRule({
  code: 'wrong-date',
  title: 'A date is not in the calendar, not written year-month-day, or before what it follows.',
});
