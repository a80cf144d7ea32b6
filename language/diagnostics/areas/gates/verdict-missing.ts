import { failEntries } from '../../../model/steps.ts';
import { say } from '../../../say/say.ts';
import { blank } from '../../edits.ts';
import type { Rule } from '../../rule.ts';
import { fixStep, missingClause, type StepFix } from '../../step-fixes.ts';

/** A check that sorts parts says when to lap or reject one, and not when it is good; or the other way around. */
export const verdictMissing: Rule<StepFix> = {
  code: 'verdict-missing',
  severity: 'warning',
  since: '0.2.0',
  ofAbsence: true,
  title: 'A check says only what is good, or only what is not.',
  procedure(procedure, report) {
    for (const block of [...procedure.stages, ...procedure.repairs]) {
      for (const step of block.steps) {
        if (step.verb !== 'check' || step.verdicts.length === 0) continue;
        const says = (verdict: string) => step.verdicts.some((one) => one.verdict === verdict);
        const onlyRejects = step.verdicts.every(({ verdict }) => verdict === 'reject');
        const sent = failEntries(step).some((entry) => entry.as !== 'verdict');
        if (says('reuse') && (says('reject') || (sent && !says('lap')))) continue;
        // A first look for scrap says no more than that; nor does a check with a text that says what is good.
        if (onlyRejects) continue;
        if (!says('reuse') && step.text !== null) continue;
        report({
          at: step,
          ...(says('reuse')
            ? {
                message: say`This check says what is good, but not what is scrap.`,
                why: say`two people sort the same face two ways.`,
                help: say`Write “reject if "…"”, or “on fail” and what to do.`,
                data: missingClause(step, `reject if ${blank}`),
              }
            : {
                message: say`This check says what to lap and what is scrap, but not what is good as it is.`,
                why: say`faces that need no lapping get lapped.`,
                help: say`Write “reuse if "…"”.`,
                data: missingClause(step, `reuse if ${blank}`),
              }),
        });
      }
    }
  },
  fix: fixStep,
};
