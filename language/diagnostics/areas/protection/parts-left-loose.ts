import type { PathContext } from '../../../analysis/flow-analysis.ts';
import { looseParts } from '../../../analysis/loose.ts';
import { partsWords, partsWritten, stationWords } from '../../../analysis/prose.ts';
import type { AbstractState } from '../../../analysis/state.ts';
import type { Step } from '../../../model/procedure.ts';
import type { Source } from '../../../model/source.ts';
import { type Said, say } from '../../../say/say.ts';
import { blank } from '../../edits.ts';
import { on, type Rule } from '../../rule.ts';
import { fixStep, missingAfter, missingBefore, type StepFix } from '../../step-fixes.ts';

/** Parts are off, and not put down anywhere, when the unit leaves the station or waits. */
export const partsLeftLoose: Rule<StepFix> = {
  code: 'parts-left-loose',
  severity: 'error',
  since: '0.1.0',
  title: 'Parts are off and kept nowhere when the unit leaves a station or waits.',
  flow: (flow, report) => {
    const { procedure } = flow.graph;
    const tell = (at: Step | Source, state: AbstractState, path: PathContext, when: Said) => {
      const loose = looseParts(flow, state);
      if (loose === null) return;
      const { since, cause } = loose;
      const names = loose.parts.map((part) => part.name);
      report({
        at,
        path,
        since,
        rootCause: cause,
        message: say`The ${partsWords(procedure, names)} ${names.length > 1 ? say`lie` : say`lies`} loose ${when}.`,
        why: say`parts of several units get mixed.`,
        help: say`Write “keep ${partsWritten(procedure, names)} at” and a station before this.`,
        data: !('verb' in at)
          ? undefined
          : at.verb === 'wait'
            ? missingBefore(at, `keep ${partsWritten(procedure, names)} ${blank}`)
            : missingAfter(at, `keep ${partsWritten(procedure, names)} ${blank}`),
      });
    };
    return {
      step: on(['wait'], ({ step, before, path }) => {
        tell(step, before, path, say`while the unit waits`);
      }),
      leave({ last, block, state, path }) {
        tell(last ?? block.source, state, path, say`when the unit leaves ${stationWords(procedure, block.station)}`);
      },
    };
  },
  fix: fixStep,
};
