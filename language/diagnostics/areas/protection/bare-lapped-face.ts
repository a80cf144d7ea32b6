import type { PathContext } from '../../../analysis/flow-analysis.ts';
import { bareFaces } from '../../../analysis/openings.ts';
import { capital, faceWords, partWords, stationWords } from '../../../analysis/prose.ts';
import type { AbstractState } from '../../../analysis/state.ts';
import type { Step } from '../../../model/procedure.ts';
import type { Source } from '../../../model/source.ts';
import { type Said, say } from '../../../say/say.ts';
import { on, type Rule } from '../../rule.ts';
import { fixStep, missingAfter, missingBefore, type StepFix } from '../../step-fixes.ts';

/** A lapped or ground face is bare when the unit leaves a station, waits, is abraded, or the procedure ends. */
export const bareLappedFace: Rule<StepFix> = {
  code: 'bare-lapped-face',
  severity: 'error',
  since: '0.1.0',
  title: 'A lapped face is bare when the unit leaves a station, waits, is abraded or is finished.',
  flow: (flow, report) => {
    const { procedure } = flow.graph;
    const tell = (
      at: Step | Source,
      state: AbstractState,
      path: PathContext,
      when: Said,
      guard: (text: string) => StepFix | undefined,
    ) => {
      for (const { face, since, cause } of bareFaces(flow, state)) {
        const { guardedBy } = face;
        report({
          at,
          path,
          since,
          rootCause: cause,
          data: guardedBy === null ? undefined : guard(`guard ${face.id} with ${guardedBy}`),
          message: say`${capital(faceWords(procedure, face.id))} is bare ${when}.`,
          why: say`one knock or one grain of grit scores it, and it leaks.`,
          help:
            guardedBy === null
              ? say`Cover it first, and declare in the family what guards it.`
              : say`The ${partWords(procedure, guardedBy)} guards it: write “guard ${face.id} with ${guardedBy}” before this.`,
        });
      }
    };
    return {
      step: on(['wait', 'buff', 'blast'], ({ step, before, path }) => {
        tell(
          step,
          before,
          path,
          {
            wait: say`while the unit waits`,
            buff: say`while the unit is buffed`,
            blast: say`while the unit is blasted`,
          }[step.verb],
          (text) => missingBefore(step, text),
        );
      }),
      leave({ last, block, state, path }) {
        tell(
          last ?? block.source,
          state,
          path,
          say`when the unit leaves ${stationWords(procedure, block.station)}`,
          (text) => (last === null ? undefined : missingAfter(last, text)),
        );
      },
      end({ state, path, last, block }) {
        // A packed unit is in its own box or bag.
        if (block.steps.some(({ verb }) => verb === 'pack')) return;
        tell(last ?? block.source, state, path, say`when the procedure ends`, (text) =>
          last === null ? undefined : missingAfter(last, text),
        );
      },
    };
  },
  fix: fixStep,
};
