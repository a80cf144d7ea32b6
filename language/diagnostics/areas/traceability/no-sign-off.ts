import { flag } from '../../../analysis/locations.ts';
import { say } from '../../../say/say.ts';
import { blank } from '../../edits.ts';
import type { Rule } from '../../rule.ts';
import { fixStep, missingAfter, type StepFix } from '../../step-fixes.ts';

/** Nobody signs the unit off. */
export const noSignOff: Rule<StepFix> = {
  code: 'no-sign-off',
  severity: 'error',
  since: '0.1.0',
  title: 'Nobody signs the unit off at the end.',
  flow: ({ graph, layout }, report) => ({
    end({ state, path, last }) {
      if (!state.may(layout.unit.signed, flag.no)) return;
      report({
        at: graph.procedure.source,
        path,
        rootCause: 'no-sign-off',
        message: say`Nobody signs the unit off.`,
        why: say`without a signature the sheet is not a record.`,
        help: say`Write “sign-off by "…"” as the last step.`,
        data: last === null || last.verb === 'send-out' ? undefined : missingAfter(last, `sign-off by ${blank}`),
      });
    },
  }),
  fix: fixStep,
};
