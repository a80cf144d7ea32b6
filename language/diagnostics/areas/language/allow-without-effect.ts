import type { Rule } from '../../rule.ts';
import { fixStep, type StepFix } from '../../step-fixes.ts';

/** A concession that silences nothing. The engine finds it after all rules have run. */
export const allowWithoutEffect: Rule<StepFix> = {
  code: 'allow-without-effect',
  severity: 'warning',
  since: '0.1.0',
  title: 'A concession silences nothing.',
  fix: fixStep,
};
