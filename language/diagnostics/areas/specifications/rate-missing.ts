import { allSteps } from '../../../analysis/locations.ts';
import { partsWords } from '../../../analysis/prose.ts';
import { writtenAt } from '../../../analysis/written-at.ts';
import type { Choice, Procedure } from '../../../model/procedure.ts';
import { kindOfLimit } from '../../../quantities/index.ts';
import { say } from '../../../say/say.ts';
import { blank } from '../../edits.ts';
import type { Rule } from '../../rule.ts';
import { fixStep, missingClause, type StepFix } from '../../step-fixes.ts';

/** A shim is chosen to bring a pressure to its target, and nothing says how far a thickness moves it. */
export const rateMissing: Rule<StepFix> = {
  code: 'rate-missing',
  severity: 'warning',
  since: '0.2.0',
  ofAbsence: true,
  title: 'A shim is chosen, but no rate is given to work it out from.',
  procedure(procedure, report) {
    for (const step of allSteps(procedure)) {
      if (step.verb !== 'choose') continue;
      const { choose } = step;
      if (choose === null || step.rate !== null) continue;
      if (step.wordsAfter.includes('by') || isOneForOne(choose, procedure)) continue;
      const rates = procedure.specs.filter(({ per }) => per !== null);
      report({
        at: step,
        rootCause: `rate:${writtenAt(step)}`,
        message: say`Nothing says how far a thicker ${partsWords(
          procedure,
          step.objects.map((object) => object.name),
        )} moves ${choose.test}.`,
        why: say`the next size cannot be worked out, and each try opens the unit again.`,
        help: say`Write “by” and a rate, such as spec shim-rate rate 3 bar per 0.001 in, or in quotes how the size is found.`,
        data: missingClause(step, `by ${rates.length === 1 ? rates[0]!.name : blank}`),
      });
    }
  },
  fix: fixStep,
};

/** A length brought to a length: more shim is as much more lift or play. */
function isOneForOne({ test, target }: Choice, procedure: Procedure): boolean {
  return (
    (target?.form === 'limit' && kindOfLimit(target.limit) === 'length') ||
    procedure.specs.some(
      (spec) =>
        (spec.name === test || (target?.form === 'spec' && spec.name === target.spec)) && spec.kind === 'length',
    )
  );
}
