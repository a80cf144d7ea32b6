import { either } from '../../../analysis/prose.ts';
import { doWords, toolCalled, toolWords } from '../../../analysis/tool-words.ts';
import { workAt } from '../../../analysis/tool-work.ts';
import { atHand } from '../../../analysis/tools.ts';
import { writtenAt } from '../../../analysis/written-at.ts';
import { own } from '../../../model/steps.ts';
import { say } from '../../../say/say.ts';
import { blank } from '../../edits.ts';
import type { Rule } from '../../rule.ts';
import { fixStep, missingClause, type StepFix } from '../../step-fixes.ts';

/** The shop has tools for the work, and the step names none. A gauge that is fixed at the station need not be named. */
export const toolNotNamed: Rule<StepFix> = {
  code: 'tool-not-named',
  severity: 'hint',
  since: '0.2.0',
  ofAbsence: true,
  title: 'Something is set or measured, but the step names none of the tools that the shop has for it.',
  eachStep(step, setting, report) {
    for (const work of workAt(setting, step)) {
      const { step, station, kind, does } = work;
      // A plain reading is recorded with its tool; what is set or judged is held to a limit.
      if (
        step.verb === 'read' ||
        does === 'difference' ||
        step.tools.length > 0 ||
        (own(step, 'conditions') ?? []).length > 0
      )
        continue;
      const tools = atHand(setting, work);
      if (tools.length === 0 || tools.some((asset) => asset.at !== null && asset.at === station)) continue;
      report({
        at: step,
        rootCause: `tool-not-named:${writtenAt(step)}`,
        message: say`No ${toolCalled(kind)} is named to ${doWords(work)} this, but the shop has ${either(tools.map(toolWords))}.`,
        why: say`two people use two different ones, and the record does not say which.`,
        help: say`Write “with ${tools[0]!.name}”, or the kind of tool.`,
        data: missingClause(step, `with ${blank}`),
      });
    }
  },
  fix: fixStep,
};
