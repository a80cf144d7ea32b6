import { partsWords } from '../../../analysis/prose.ts';
import { writtenAt } from '../../../analysis/written-at.ts';
import { namedIn } from '../../../model/steps.ts';
import { say } from '../../../say/say.ts';
import { blank } from '../../edits.ts';
import type { Rule } from '../../rule.ts';
import { fixStep, missingClause, type StepFix } from '../../step-fixes.ts';

/** Parts are put down, and nothing says where or in what. */
export const keptNowhere: Rule<StepFix> = {
  code: 'kept-nowhere',
  severity: 'warning',
  since: '0.2.0',
  ofAbsence: true,
  title: 'Parts are kept, but nothing says where or in what.',
  eachStep(step, setting, report) {
    if (step.verb !== 'keep' || step.station !== null || step.text !== null) return;
    const names = namedIn(step).map(({ name }) => name);
    if (names.length === 0) return;
    report({
      at: step,
      rootCause: `kept:${writtenAt(step)}`,
      message: say`Nothing says where the ${partsWords(setting, names)} ${names.length > 1 ? say`are` : say`is`} kept.`,
      why: say`the next person has to look for ${names.length > 1 ? say`them` : say`it`}, and parts of two units get mixed.`,
      help: say`Write “at” and a station, and in quotes what they are kept in: “Own lidded tray, own number”.`,
      data: missingClause(step, blank),
    });
  },
  fix: fixStep,
};
