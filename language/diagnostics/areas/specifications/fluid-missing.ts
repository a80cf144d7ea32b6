import { allSteps } from '../../../analysis/locations.ts';
import { either } from '../../../analysis/prose.ts';
import { writtenAt } from '../../../analysis/written-at.ts';
import type { Procedure, Step } from '../../../model/procedure.ts';
import { own } from '../../../model/steps.ts';
import type { Verb } from '../../../model/verbs.ts';
import { type Said, say } from '../../../say/say.ts';
import { blank } from '../../edits.ts';
import type { Rule } from '../../rule.ts';
import { fixStep, missingClause, type StepFix } from '../../step-fixes.ts';

const done: Partial<Record<Verb, Said>> = {
  wash: say`washed`,
  rinse: say`rinsed`,
  soak: say`soaked`,
  oil: say`oiled`,
};

/** Washed, rinsed, soaked or oiled, and nothing says in what. */
export const fluidMissing: Rule<StepFix> = {
  code: 'fluid-missing',
  severity: 'error',
  since: '0.2.0',
  ofAbsence: true,
  title: 'Something is washed, rinsed, soaked or oiled, but nothing says in what.',
  procedure(procedure, report) {
    const fluids = procedure.shop.fluids.map((fluid) => fluid.name);
    const such = fluids.length === 0 ? '' : say`: ${either(fluids)}`;
    for (const step of allSteps(procedure)) {
      const what = done[step.verb];
      if (what === undefined || own(step, 'fluid') != null || saysFluid(procedure, step)) continue;
      report({
        at: step,
        rootCause: `fluid:${writtenAt(step)}`,
        message: say`Nothing says in what this is ${what}.`,
        why: say`solvent left on a lapped fit strips its oil film, detergent rusts it, and oil removes no dirt.`,
        help: say`Write “${step.verb === 'oil' ? 'with' : 'in'}” and a fluid of the shop${such}.`,
        data: missingClause(step, `${step.verb === 'oil' ? 'with' : 'in'} ${fluids.length === 1 ? fluids[0] : blank}`),
      });
    }
  },
  fix: fixStep,
};

/** The author's own text may name it. */
function saysFluid({ shop }: Procedure, { text, note }: Step): boolean {
  const said = `${text ?? ''} ${note ?? ''}`;
  return (
    shop.fluids.some(({ name, title }) => said.includes(name) || said.includes(title)) ||
    /\b(solvent|fluid|oil|water|detergent|suds|soap|paraffin|kerosene|diesel|fuel|spirit|alcohol|caustic|grease|sealant|parts washer|programme)\b/iu.test(
      said,
    )
  );
}
