import type { Step } from '../../model/procedure.ts';
import type { Source } from '../../model/source.ts';
import { kept, place } from '../../replay/cells.ts';
import type { Way } from '../../replay/replay.ts';
import type { State } from '../../replay/state.ts';
import type { Rule } from '../rule.ts';
import { partsWords, stationWords } from '../words.ts';

/** Parts are off, and not put down anywhere, when the unit leaves the station or waits. */
export const partsLeftLoose: Rule = {
  code: 'parts-left-loose',
  severity: 'error',
  title: 'Parts are off and kept nowhere when the unit leaves a station or waits.',
  replay: ({ program }, report) => {
    const { procedure } = program;
    const tell = (at: Step | Source, state: State, way: Way, when: string) => {
      const loose = procedure.family.parts.filter((part) => {
        const cells = state.part(part.name);
        return state.may(cells.kept, kept.loose) && state.may(cells.place, place.off | place.sub);
      });
      if (loose.length === 0) return;
      const since = state.since[state.part(loose[0]!.name).place];
      report({
        at,
        way,
        since,
        cause: `loose:${since}`,
        message: `The ${partsWords(
          procedure,
          loose.map((part) => part.name),
        )} ${loose.length > 1 ? 'lie' : 'lies'} loose ${when}: parts of several units get mixed. Write keep ${loose.map((part) => part.name).join(', ')} at their place before.`,
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
