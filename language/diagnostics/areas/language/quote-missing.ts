import { correctingRule } from '../../problem-rule.ts';

export const quoteMissing = correctingRule({
  code: 'quote-missing',
  title: 'Words that need quotes have none, or only the first.',
});
