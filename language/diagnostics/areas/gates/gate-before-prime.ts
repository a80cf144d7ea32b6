import { isHydraulic, isPneumatic } from '../../../analysis/hydraulic.ts';
import { flag } from '../../../analysis/locations.ts';
import { readingOf } from '../../../model/steps.ts';
import { say } from '../../../say/say.ts';
import { blank } from '../../edits.ts';
import { rootCauseKey, rootCauses } from '../../root-cause.ts';
import { on, type Rule } from '../../rule.ts';
import { fixStep, missingBefore, type StepFix } from '../../step-fixes.ts';

/** A pressure test on a unit that is not primed. A reading as found is taken in the state in which the unit came. */
export const gateBeforePrime: Rule<StepFix> = {
  code: 'gate-before-prime',
  severity: 'error',
  since: '0.1.0',
  title: 'A pressure test is run on a unit that was not primed after it was opened or connected.',
  flow: ({ graph, layout }, report) => {
    const causeOf = rootCauses('prime');
    return {
      looksAround: true,
      step: on(['test', 'set', 'read'], ({ step, before, path }) => {
        if (!isHydraulic(step, graph.procedure) || isPneumatic(step)) return;
        if (step.verb === 'read' && step.asFound) return;
        if (!before.may(layout.unit.primed, flag.no)) return;
        const since = before.since(layout.unit.primed);
        report({
          at: step,
          path,
          since,
          rootCause: causeOf(rootCauseKey(path, since), step),
          message: say`The unit is not primed when ${readingOf(step)!} is ${{ set: say`set`, read: say`read`, test: say`tested` }[step.verb]}.`,
          why: say`air in it makes the reading soft and the spray ragged.`,
          help: say`Write “prime 6 strokes with gauge shut” before this step.`,
          data: path.repair === null ? missingBefore(step, `prime ${blank} strokes with gauge shut`) : undefined,
        });
      }),
    };
  },
  fix: fixStep,
};
