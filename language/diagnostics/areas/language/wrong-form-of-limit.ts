import { problemRule } from '../../problem-rule.ts';

export const wrongFormOfLimit = problemRule({
  code: 'wrong-form-of-limit',
  title: 'A limit lacks an end or a side, or has a form that does not belong here.',
});
