import { partsWords } from '../../../analysis/prose.ts';
import { writtenAt } from '../../../analysis/written-at.ts';
import type { Procedure, Step } from '../../../model/procedure.ts';
import { say } from '../../../say/say.ts';
import { blank } from '../../edits.ts';
import type { Rule } from '../../rule.ts';
import { fixStep, missingClause, type StepFix } from '../../step-fixes.ts';

/** A torque step with no figure; or a lock nut that is tightened with a torque wrench, with no figure for it. */
export const torqueMissing: Rule<StepFix> = {
  code: 'torque-missing',
  severity: 'error',
  since: '0.1.0',
  ofAbsence: true,
  title: 'A torque step has no torque.',
  eachStep(step, setting, report) {
    if (!lacksTorque(step, setting)) return;
    report({
      at: step,
      rootCause: `torque:${writtenAt(step)}`,
      message: say`No torque is given for the ${partsWords(
        setting,
        step.objects.map((object) => object.name),
      )}.`,
      why: say`the bench hand would have to guess.`,
      help: say`Write “to” and a spec, or the figure with its source.`,
      data: missingClause(step, `to ${blank}`),
    });
  },
  fix: fixStep,
};

/** A lock nut may be tightened by feel, with a plain wrench. */
export function lacksTorque(step: Step, { shop }: Pick<Procedure, 'shop'>): boolean {
  if (step.verb !== 'torque' && step.verb !== 'lock') return false;
  if (step.limit !== null || (step.verb === 'torque' && step.stretch !== null) || step.objects.length === 0)
    return false;
  const withWrench = step.tools.some(
    (tool) =>
      (tool.form === 'kind' && tool.kind === 'wrench') ||
      (tool.form === 'asset' && shop.assets.some(({ name, kind }) => name === tool.name && kind === 'wrench')),
  );
  return step.verb === 'torque' || withWrench;
}
