import { partsWords } from '../../../analysis/prose.ts';
import { writtenAt } from '../../../analysis/written-at.ts';
import { say } from '../../../say/say.ts';
import type { Rule } from '../../rule.ts';

/** A shim is chosen, and nothing says which reading it has to bring to what. */
export const chooseForWhat: Rule = {
  code: 'choose-for-what',
  severity: 'warning',
  since: '0.2.0',
  ofAbsence: true,
  title: 'A part is chosen, but nothing says which reading it has to bring to what.',
  eachStep(step, setting, report) {
    if (step.verb !== 'choose' || step.objects.length === 0) return;
    if (step.choose !== null || step.wordsAfter.includes('by')) return;
    report({
      at: step,
      rootCause: `choose:${writtenAt(step)}`,
      message: say`Nothing says what the ${partsWords(
        setting,
        step.objects.map((object) => object.name),
      )} is chosen for.`,
      why: say`the bench hand guesses a thickness and builds the unit for nothing.`,
      help: say`Write “to bring” and the test, then “to” and its target; or “by” and in quotes how it is chosen.`,
    });
  },
};
