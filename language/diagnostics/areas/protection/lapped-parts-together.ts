import { partsWords } from '../../../analysis/prose.ts';
import { writtenAt } from '../../../analysis/written-at.ts';
import { isOfAll } from '../../../model/steps.ts';
import { say } from '../../../say/say.ts';
import { blank } from '../../edits.ts';
import { on, type Rule } from '../../rule.ts';
import { fixStep, missingClause, type StepFix } from '../../step-fixes.ts';

/** Lapped parts that are not a pair are put down or soaked together, and nothing says how they are kept apart. */
export const lappedPartsTogether: Rule<StepFix> = {
  code: 'lapped-parts-together',
  severity: 'warning',
  since: '0.2.0',
  title: 'Lapped parts are put down or soaked together, and the text does not say how they are kept apart.',
  flow: ({ graph, relations }, report) => ({
    step: on(['keep', 'send', 'soak'], ({ step, path }) => {
      if (step.text !== null) return;
      const fine = step.objects.filter((object) => relations.isFine(object.name));
      // A matched pair stays together; the danger is the next part knocking against it.
      const apart = fine.filter(
        (object) => object !== fine[0] && !relations.matches(fine[0]!.name).includes(object.name),
      );
      if (apart.length === 0) return;
      report({
        at: step,
        source: isOfAll(step) ? step.source : fine[0]!.source,
        path,
        rootCause: `kept:${writtenAt(step)}`,
        message: say`The ${partsWords(
          graph.procedure,
          fine.map((object) => object.name),
        )} are lapped or matched and ${step.verb === 'soak' ? say`soak` : say`are put down`} together.`,
        why: say`faces that knock together are scored before anybody fits them.`,
        help: say`Write how they are kept apart at the end of the step, such as "Own lidded tray, each in its place".`,
        data: missingClause(step, blank),
      });
    }),
  }),
  fix: fixStep,
};
