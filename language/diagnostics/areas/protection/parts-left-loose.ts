import type { Way } from '../../../analysis/flow-analysis.ts';
import { looseParts } from '../../../analysis/loose.ts';
import { partsWords, stationWords } from '../../../analysis/prose.ts';
import type { State } from '../../../analysis/state.ts';
import type { Step } from '../../../model/procedure.ts';
import type { Source } from '../../../model/source.ts';
import type { Rule } from '../../rule.ts';

/** Parts are off, and not put down anywhere, when the unit leaves the station or waits. */
export const partsLeftLoose: Rule = {
  code: 'parts-left-loose',
  severity: 'error',
  since: '0.1.0',
  title: 'Parts are off and kept nowhere when the unit leaves a station or waits.',
  replay: (replay, report) => {
    const { procedure } = replay.program;
    const tell = (at: Step | Source, state: State, way: Way, when: string) => {
      const loose = looseParts(replay, state);
      if (loose === null) return;
      const { since, cause } = loose;
      const names = loose.parts.map((part) => part.name);
      report({
        at,
        way,
        since,
        cause,
        message: `The ${partsWords(procedure, names)} ${names.length > 1 ? 'lie' : 'lies'} loose ${when}.`,
        why: 'parts of several units get mixed.',
        help: `Write “keep ${names.join(', ')} at” and a station before this.`,
      });
    };
    return {
      step({ step, before, way }) {
        if (step.verb === 'wait') tell(step, before, way, 'while the unit waits');
      },
      leave({ last, block, state, way }) {
        tell(last ?? block.source, state, way, `when the unit leaves ${stationWords(procedure, block.station)}`);
      },
    };
  },
};
