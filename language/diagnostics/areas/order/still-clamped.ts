import type { Departure } from '../../../analysis/flow-analysis.ts';
import { flag } from '../../../analysis/locations.ts';
import { stationWords } from '../../../analysis/prose.ts';
import type { Statement } from '../../../model/diagnostic.ts';
import type { Rule } from '../../rule.ts';

/** The unit leaves a station, or is clamped again, or the procedure ends, while it is clamped. */
export const stillClamped: Rule = {
  code: 'still-clamped',
  severity: 'error',
  since: '0.1.0',
  title: 'The unit leaves a station, or is clamped again, while it is still clamped.',
  replay: ({ program, layout }, report) => {
    const left = ({ last, block, state, way }: Departure, said: Statement) => {
      const since = state.since[layout.unit.clamped];
      if (!state.may(layout.unit.clamped, flag.yes)) return;
      report({ at: last ?? block.source, way, since, cause: `clamped:${since}`, ...said });
    };
    return {
      step({ step, before, way }) {
        const since = before.since[layout.unit.clamped];
        if (step.verb === 'clamp' && before.may(layout.unit.clamped, flag.yes)) {
          report({
            at: step,
            way,
            since,
            cause: `clamped:${since}`,
            message: 'The unit is clamped already.',
            help: 'Unclamp it before, or take this out.',
          });
        }
        if (step.verb === 'unclamp' && before.may(layout.unit.clamped, flag.no)) {
          report({
            at: step,
            way,
            since,
            cause: `not-clamped:${since}`,
            message: 'The unit is not clamped here, so there is nothing to undo.',
            help: 'Take this out, or put in the clamp that is missing before.',
          });
        }
      },
      leave(leaving) {
        const words = stationWords(program.procedure, leaving.block.station);
        left(leaving, {
          message: `The unit leaves ${words} while it is still clamped.`,
          help: 'Unclamp it at the end of this stage.',
        });
      },
      end(ending) {
        left(ending, { message: 'The procedure ends with the unit still clamped.', help: 'Unclamp it.' });
      },
    };
  },
};
