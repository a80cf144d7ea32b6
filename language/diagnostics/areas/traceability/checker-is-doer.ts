import { say } from '../../../say/say.ts';
import type { Rule } from '../../rule.ts';

/** A stage is held for somebody to inspect it, and the same name signs for the work. */
export const checkerIsDoer: Rule = {
  code: 'checker-is-doer',
  severity: 'warning',
  since: '0.2.0',
  title: 'A stage is held for the same person who signs for it.',
  procedure(procedure, report) {
    for (const stage of procedure.stages) {
      const signers = stage.steps.flatMap((step) => (step.verb === 'sign-off' ? [nameOf(step.text)] : []));
      for (const step of stage.steps) {
        if (step.verb !== 'hold-for' || step.text === null || !signers.includes(nameOf(step.text))) continue;
        report({
          at: step,
          message: say`The work is held for ${step.text}, who also signs for it.`,
          why: say`a hold is for a second pair of eyes, and people overlook their own mistakes.`,
          help: say`Name somebody else here or at the sign-off, or delete the hold.`,
        });
      }
    }
  },
};

function nameOf(text: string | null): string {
  return (text ?? '').trim().toLowerCase();
}
