import { flag } from '../../../analysis/locations.ts';
import { say } from '../../../say/say.ts';
import type { Rule } from '../../rule.ts';

/** The unit leaves without a mark that leads back to its job. */
export const notMarked: Rule = {
  code: 'not-marked',
  severity: 'error',
  since: '0.1.0',
  title: 'The unit leaves without being marked.',
  flow: ({ graph, layout }, report) => ({
    end({ state, path }) {
      if (!state.may(layout.unit.marked, flag.no)) return;
      report({
        at: graph.procedure.source,
        path,
        rootCause: 'not-marked',
        message: say`No step marks the unit.`,
        why: say`when it comes back, nobody can say what was done to it.`,
        help: say`Before the last wash, write “mark” and a part, “with number, serial”.`,
      });
    },
  }),
};
