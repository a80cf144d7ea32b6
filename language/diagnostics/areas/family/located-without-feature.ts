import { lower } from '../../../analysis/prose.ts';
import { namedIn } from '../../../model/steps.ts';
import { say } from '../../../say/say.ts';
import { blank } from '../../edits.ts';
import type { Rule } from '../../rule.ts';
import { declared, fixStep, type StepFix } from '../../step-fixes.ts';

/** `fit spacer located`, but neither the family nor the step says by what. */
export const locatedWithoutFeature: Rule<StepFix> = {
  code: 'located-without-feature',
  severity: 'warning',
  since: '0.2.0',
  title: 'A part is fitted “located”, but nothing says what locates it.',
  eachStep(step, setting, report) {
    for (const object of namedIn(step)) {
      if (object.located !== '') continue;
      const part = setting.family.parts.find((other) => other.name === object.name);
      if (part === undefined) continue;
      report({
        at: step,
        source: object.source,
        // One fact is missing, however many steps need it.
        rootCause: `no-feature:${part.base}`,
        allow: part.allow,
        related: [{ message: say`${part.base} is declared here.`, source: part.source }],
        message: say`The ${lower(part.title)} has to be located, but nothing says by what.`,
        why: say`the bench hand does not know what to look for, and a step that forgets to locate it goes unnoticed.`,
        help: say`Write “located by "…"” in the family, or here.`,
        data: declared(part.source, `located by ${blank}`),
      });
    }
  },
  fix: fixStep,
};
