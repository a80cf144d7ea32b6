import { flag } from '../../../analysis/locations.ts';
import type { Rule } from '../../rule.ts';

/** Nobody signs the unit off. */
export const noSignOff: Rule = {
  code: 'no-sign-off',
  severity: 'error',
  since: '0.1.0',
  title: 'Nobody signs the unit off at the end.',
  replay: ({ program, layout }, report) => ({
    end({ state, way }) {
      if (!state.may(layout.unit.signed, flag.no)) return;
      report({
        at: program.procedure.source,
        way,
        cause: 'no-sign-off',
        message: 'Nobody signs the unit off.',
        why: 'without a signature the sheet is not a record.',
        help: 'Write “sign-off by "…"” as the last step.',
      });
    },
  }),
};
