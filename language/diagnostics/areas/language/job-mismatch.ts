import { correctingRule } from '../../problem-rule.ts';

export const jobMismatch = correctingRule({
  code: 'job-mismatch',
  title: 'A job names another shop or revision than its procedure.',
});
