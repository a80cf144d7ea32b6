import { allSteps } from '../../../analysis/locations.ts';
import { lower } from '../../../analysis/prose.ts';
import { namedIn } from '../../../model/steps.ts';
import type { Rule } from '../../rule.ts';

/** `fit spacer located`, and neither the family nor the step says by what. */
export const locatedWithoutFeature: Rule = {
  code: 'located-without-feature',
  severity: 'warning',
  since: '0.2.0',
  title: 'A part is fitted “located”, and nothing says what locates it.',
  procedure(procedure, report) {
    for (const step of allSteps(procedure)) {
      for (const object of namedIn(step)) {
        const part = procedure.family.parts.find((other) => other.name === object.name);
        if (part === undefined || object.located !== '') continue;
        report({
          at: step,
          source: object.source,
          // One fact is missing, however many steps speak of it.
          cause: `no-feature:${part.base}`,
          allow: part.allow,
          related: [{ message: `${part.base} is declared here.`, source: part.source }],
          message: `The ${lower(part.title)} is to be located, and nothing says by what.`,
          why: 'the bench hand looks for a dowel that he cannot name, and a step that forgets it is not seen.',
          help: 'Write “located by "…"” in the family, or here.',
        });
      }
    }
  },
};
