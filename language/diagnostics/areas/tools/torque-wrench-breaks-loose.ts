import { partsWords } from '../../../analysis/prose.ts';
import { assetOf } from '../../../analysis/tools.ts';
import { english, say } from '../../../say/say.ts';
import { blank } from '../../edits.ts';
import type { Rule } from '../../rule.ts';
import { fixStep, type StepFix } from '../../step-fixes.ts';

/** A torque wrench is a measuring tool: it is not for breaking a joint loose. */
export const torqueWrenchBreaksLoose: Rule<StepFix> = {
  code: 'torque-wrench-breaks-loose',
  severity: 'warning',
  since: '0.2.0',
  title: 'A joint is broken loose with a torque wrench.',
  procedure(procedure, report) {
    for (const block of [...procedure.stages, ...procedure.repairs]) {
      for (const step of block.steps) {
        if (step.verb !== 'slacken') continue;
        for (const use of step.tools) {
          if (use.form === 'words') continue;
          const kind = use.form === 'kind' ? use.kind : assetOf(procedure.shop, use)?.kind;
          if (kind !== 'wrench') continue;
          const name = use.form === 'asset' ? use.name : say`A torque wrench`;
          report({
            at: step,
            source: use.source,
            rootCause: `breaks-loose:${english(name)}`,
            message: say`${name} is used to break the ${partsWords(
              procedure,
              step.objects.map((object) => object.name),
            )} loose.`,
            why: say`nobody knows what a seized joint takes, and a wrench that was forced once is wrong for every torque after that.`,
            help: say`Use a socket and breaker bar, and name them in quotes.`,
            data: step.call === null ? { source: use.source, text: blank, where: 'instead' } : undefined,
          });
        }
      }
    }
  },
  fix: fixStep,
};
