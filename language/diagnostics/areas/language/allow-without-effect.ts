import type { Rule } from '../../rule.ts';

/** A concession that silences nothing. The engine finds it, when all rules have spoken. */
export const allowWithoutEffect: Rule = {
  code: 'allow-without-effect',
  severity: 'warning',
  since: '0.1.0',
  title: 'A concession silences nothing.',
};
