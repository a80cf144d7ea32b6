import { listed, lower } from '../../../analysis/prose.ts';
import { namedIn } from '../../../model/steps.ts';
import { say } from '../../../say/say.ts';
import { blank } from '../../edits.ts';
import type { Rule } from '../../rule.ts';
import { declared, fixStep, type StepFix } from '../../step-fixes.ts';

/** `with marks aligned`, but neither the family nor the step says which marks. */
export const noMarksToLineUp: Rule<StepFix> = {
  code: 'no-marks-to-line-up',
  severity: 'warning',
  since: '0.2.0',
  title: 'Marks have to be lined up, but nothing says which.',
  eachStep(step, setting, report) {
    if (step.text !== null || !step.objects.some((object) => object.marksAligned)) return;
    const parts = namedIn(step).flatMap((object) => setting.family.parts.filter((part) => part.name === object.name));
    const [first] = parts;
    if (first === undefined || parts.some((part) => part.marks !== null)) return;
    report({
      at: step,
      rootCause: `no-marks:${first.base}`,
      allow: parts.flatMap((part) => part.allow),
      related: [{ message: say`${first.base} is declared here.`, source: first.source }],
      message: say`Marks have to be lined up, but the family declares no marks on the ${listed([...new Set(parts.map((part) => part.title))].map(lower))}.`,
      why: say`the bench hand does not know what to line up with what.`,
      help: say`Write “marks "…"” at the part in the family, or describe the marks here in quotes.`,
      data: declared(first.source, `marks ${blank}`),
    });
  },
  fix: fixStep,
};
