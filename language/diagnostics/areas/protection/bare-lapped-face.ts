import type { Way } from '../../../analysis/flow-analysis.ts';
import { bareFaces } from '../../../analysis/openings.ts';
import { capital, faceWords, partWords, stationWords } from '../../../analysis/prose.ts';
import type { State } from '../../../analysis/state.ts';
import type { Step } from '../../../model/procedure.ts';
import type { Source } from '../../../model/source.ts';
import type { Rule } from '../../rule.ts';

/** A lapped or ground face is bare when the unit leaves a station, waits, is abraded, or the procedure ends. */
export const bareLappedFace: Rule = {
  code: 'bare-lapped-face',
  severity: 'error',
  since: '0.1.0',
  title: 'A lapped face is bare when the unit leaves a station, waits, is abraded or is finished.',
  replay: (replay, report) => {
    const { procedure } = replay.program;
    const tell = (at: Step | Source, state: State, way: Way, when: string) => {
      for (const { face, since, cause } of bareFaces(replay, state)) {
        const { guardedBy } = face;
        report({
          at,
          way,
          since,
          cause,
          message: `${capital(faceWords(procedure, face.id))} is bare ${when}.`,
          why: 'one knock or one grain of grit scores it, and it leaks.',
          help:
            guardedBy === null
              ? 'Cover it first, and declare in the family what guards it.'
              : `The ${partWords(procedure, guardedBy)} guards it: write “guard ${face.id} with ${guardedBy}” before this.`,
        });
      }
    };
    return {
      step({ step, before, way }) {
        if (step.verb === 'wait') tell(step, before, way, 'while the unit waits');
        if (step.verb === 'buff' || step.verb === 'blast')
          tell(step, before, way, `while the unit is ${step.verb === 'buff' ? 'buffed' : 'blasted'}`);
      },
      leave({ last, block, state, way }) {
        tell(last ?? block.source, state, way, `when the unit leaves ${stationWords(procedure, block.station)}`);
      },
      end({ state, way, last, block }) {
        // A packed unit is in its own box or bag.
        if (block.steps.some(({ verb }) => verb === 'pack')) return;
        tell(last ?? block.source, state, way, 'when the procedure ends');
      },
    };
  },
};
