import type { Departure } from '../../../analysis/flow-analysis.ts';
import { flag } from '../../../analysis/locations.ts';
import { stationWords } from '../../../analysis/prose.ts';
import type { Statement } from '../../../model/diagnostic.ts';
import { say } from '../../../say/say.ts';
import { on, type Rule } from '../../rule.ts';
import { fixStep, missingAfter, missingBefore, type StepFix } from '../../step-fixes.ts';

/** The unit leaves a station, or is clamped again, or the procedure ends, while it is clamped. */
export const stillClamped: Rule<StepFix> = {
  code: 'still-clamped',
  severity: 'error',
  since: '0.1.0',
  title: 'The unit leaves a station, or is clamped again, while it is still clamped.',
  flow: ({ graph, layout }, report) => {
    /** What was clamped. */
    const objectsOf = (since: number) => {
      const node = graph.nodes[since];
      return node?.kind === 'step' ? node.step.objects.map(({ name }) => name).join(', ') : '';
    };
    // After a repair it is the repair that is at fault, and not the stage.
    const left = ({ last, block, state, path }: Departure, said: Statement) => {
      const since = state.since(layout.unit.clamped);
      if (!state.may(layout.unit.clamped, flag.yes)) return;
      const clamped = objectsOf(since);
      report({
        at: last ?? block.source,
        path,
        since,
        rootCause: `clamped:${since}`,
        ...said,
        data:
          last === null || clamped === '' || path.repair !== null || state.may(layout.unit.clamped, flag.no)
            ? undefined
            : missingAfter(last, `unclamp ${clamped}`),
      });
    };
    return {
      step: on(['clamp', 'unclamp'], ({ step, before, path }) => {
        const since = before.since(layout.unit.clamped);
        if (step.verb === 'clamp' && before.may(layout.unit.clamped, flag.yes)) {
          report({
            at: step,
            path,
            since,
            rootCause: `clamped:${since}`,
            message: say`The unit is already clamped.`,
            why: say`the bench hand has to guess whether to clamp it another way.`,
            help: say`Unclamp it first, or delete this.`,
            data:
              objectsOf(since) === '' || before.may(layout.unit.clamped, flag.no)
                ? undefined
                : missingBefore(step, `unclamp ${objectsOf(since)}`),
          });
        }
        if (step.verb === 'unclamp' && before.may(layout.unit.clamped, flag.no)) {
          report({
            at: step,
            path,
            since,
            rootCause: `not-clamped:${since}`,
            message: say`The unit is not clamped here, so there is nothing to unclamp.`,
            why: say`a step that needed the clamp may have been done without it.`,
            help: say`Delete this, or add the missing clamp step before it.`,
          });
        }
      }),
      leave(leaving) {
        const words = stationWords(graph.procedure, leaving.block.station);
        left(leaving, {
          message: say`The unit leaves ${words} while it is still clamped.`,
          why: say`the sheet sends the unit on while the vise still holds it.`,
          help: say`Unclamp it at the end of this stage.`,
        });
      },
      end(ending) {
        left(ending, {
          message: say`The procedure ends with the unit still clamped.`,
          why: say`the sheet ends while the vise still holds the unit.`,
          help: say`Unclamp it.`,
        });
      },
    };
  },
  fix: fixStep,
};
