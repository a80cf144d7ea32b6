import { place } from '../../../analysis/locations.ts';
import { partsWords } from '../../../analysis/prose.ts';
import type { Step } from '../../../model/procedure.ts';
import { isOfAll, namedIn } from '../../../model/steps.ts';
import { say } from '../../../say/say.ts';
import { blank } from '../../edits.ts';
import { on, type Rule } from '../../rule.ts';
import { fixStep, missingClause, type StepFix } from '../../step-fixes.ts';

/** Loose parts of the whole set go into one bath, and the text does not say how the units are kept apart. */
export const unitsMixedInTheBath: Rule<StepFix> = {
  code: 'units-mixed-in-the-bath',
  severity: 'warning',
  since: '0.2.0',
  title: 'Loose parts of the set are washed together, and the text does not say how the units are kept apart.',
  flow: ({ graph }, report) => {
    const steps = graph.procedure.stages.flatMap((stage) => stage.steps);
    /** Put down before in a basket of its own, as the text says, it is washed in that; a guard stays with its unit. */
    const ownPlace = (part: string, at: Step) =>
      steps
        .slice(0, steps.indexOf(at))
        .filter(({ verb, text }) => verb === 'guard' || (verb === 'keep' && text !== null))
        .some((step) => namedIn(step).some(({ name }) => name === part));
    return {
      looksAround: true,
      step: on(['wash', 'soak', 'rinse'], ({ step, block, before, path }) => {
        if (!('together' in block) || !block.together) return;
        if (step.text !== null) return;
        const { procedure } = graph;
        const loose = step.objects.filter(
          ({ name }) => before.may(before.part(name).place, place.off | place.sub) && !ownPlace(name, step),
        );
        if (loose.length === 0) return;
        report({
          at: step,
          source: isOfAll(step) ? step.source : loose[0]!.source,
          path,
          rootCause: `mixed:${block.name}`,
          message: say`The ${partsWords(
            procedure,
            loose.map(({ name }) => name),
          )} of the whole set go into one bath.`,
          why: say`a needle comes out with another unit’s nozzle.`,
          help: say`Write how the units are kept apart, such as "Own basket, own number", or do the stage one unit at a time.`,
          data: missingClause(step, blank),
        });
      }),
    };
  },
  fix: fixStep,
};
