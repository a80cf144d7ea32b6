import type { Face } from '../../model/family.ts';
import type { Step } from '../../model/procedure.ts';
import type { Source } from '../../model/source.ts';
import { guard, place } from '../../replay/cells.ts';
import type { Way } from '../../replay/replay.ts';
import type { State } from '../../replay/state.ts';
import type { Rule } from '../rule.ts';
import { faceWords, partWords, stationWords } from '../words.ts';

/**
 * A lapped or ground face is bare when the unit leaves a station, waits, is abraded, or the procedure ends. Faces of
 * parts that are off are safe in their tray, or reported as loose.
 */
export const bareLappedFace: Rule = {
  code: 'bare-lapped-face',
  severity: 'error',
  title: 'A lapped face is bare when the unit leaves a station, waits, is abraded or is done.',
  replay: ({ program, layout }, report) => {
    const { procedure } = program;
    const bare = (face: Face, state: State): boolean => {
      if (face.finish === null || !state.may(state.part(face.part).place, place.in | place.trial)) return false;
      if (!state.may(layout.faces.get(face.id)!.guard, guard.off)) return false;
      const other = procedure.family.faces.find((one) => one.id === face.meets);
      return other === undefined || !state.mustBeIn(other.part);
    };
    const tell = (at: Step | Source, state: State, way: Way, when: string) => {
      for (const face of procedure.family.faces) {
        if (!bare(face, state)) continue;
        const other = procedure.family.faces.find((one) => one.id === face.meets);
        const cell = layout.faces.get(face.id)!.guard;
        const since = Math.max(
          state.since[cell]!,
          other === undefined ? -1 : state.since[state.part(other.part).place]!,
        );
        const mend =
          face.guardedBy === null
            ? 'Cover it before, and say in the family what guards it'
            : `Write “guard ${face.id} with ${face.guardedBy}” before`;
        report({
          at,
          way,
          since,
          cause: `bare:${face.id}:${since}`,
          message: `${faceWords(procedure, face.id).replace(/^t/u, 'T')} is bare ${when}: one knock or one grain scores it, and it leaks.${face.guardedBy === null ? '' : ` The ${partWords(procedure, face.guardedBy)} guards it.`} ${mend}.`,
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
        tell(last ?? block.source, state, way, 'when the procedure ends');
      },
    };
  },
};
