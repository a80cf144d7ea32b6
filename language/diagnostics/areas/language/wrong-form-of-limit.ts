import { problemRule } from '../../problem-rule.ts';

export const wrongFormOfLimit = problemRule({
  code: 'wrong-form-of-limit',
  title: 'A limit has not the ends or sides that it needs here.',
});
