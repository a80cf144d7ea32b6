import { flag } from '../../../analysis/locations.ts';
import { say } from '../../../say/say.ts';
import { blank } from '../../edits.ts';
import type { Rule } from '../../rule.ts';
import { fixStep, missingBefore, type StepFix } from '../../step-fixes.ts';
import { carrierOf } from '../family/rests-on-nothing.ts';

/** The unit leaves without a mark that leads back to its job. */
export const notMarked: Rule<StepFix> = {
  code: 'not-marked',
  severity: 'error',
  since: '0.1.0',
  title: 'The unit leaves without being marked.',
  flow: ({ graph, layout }, report) => ({
    end({ state, path }) {
      if (!state.may(layout.unit.marked, flag.no)) return;
      const { procedure } = graph;
      const wash = procedure.stages.flatMap(({ steps }) => steps).find(({ verb }) => verb === 'wash');
      const body = carrierOf(procedure.family);
      const numbers = procedure.numbers.length > 0;
      report({
        at: graph.procedure.source,
        path,
        rootCause: 'not-marked',
        message: say`No step marks the unit.`,
        why: say`when it comes back, nobody can say what was done to it.`,
        data:
          wash === undefined || body === null
            ? undefined
            : missingBefore(wash, `mark ${body.base} with ${numbers ? 'number, ' : ''}serial ${blank}`),
        help: say`Before the last wash, write “mark” and a part, “with number, serial”.`,
      });
    },
  }),
  fix: fixStep,
};
