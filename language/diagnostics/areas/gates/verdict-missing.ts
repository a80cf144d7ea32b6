import { failEntries } from '../../../model/steps.ts';
import type { Rule } from '../../rule.ts';

/** A check that sorts parts says when one is lapped or rejected, and not when it is good; or the other way about. */
export const verdictMissing: Rule = {
  code: 'verdict-missing',
  severity: 'warning',
  since: '0.2.0',
  ofAbsence: true,
  title: 'A check says only one side of what is good and what is not.',
  procedure(procedure, report) {
    for (const block of [...procedure.stages, ...procedure.repairs]) {
      for (const step of block.steps) {
        if (step.verb !== 'check' || step.verdicts.length === 0) continue;
        const says = (verdict: string) => step.verdicts.some((one) => one.verdict === verdict);
        const onlyRejects = step.verdicts.every(({ verdict }) => verdict === 'reject');
        const sent = failEntries(step).some((entry) => entry.as !== 'verdict');
        if (says('reuse') && (says('reject') || (sent && !says('lap')))) continue;
        // A first look for what is scrap says no more than that; so does a check with words of what is good.
        if (onlyRejects) continue;
        if (!says('reuse') && step.text !== null) continue;
        report({
          at: step,
          ...(says('reuse')
            ? {
                message: 'This check says what is good, and not what is scrap.',
                why: 'two hands sort the same face two ways.',
                help: 'Write “reject if "…"”, or what is done on fail.',
              }
            : {
                message: 'This check says what is lapped and what is scrap, and not what is good as it is.',
                why: 'faces are lapped that need none.',
                help: 'Write “reuse if "…"”.',
              }),
        });
      }
    }
  },
};
