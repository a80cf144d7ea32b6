import { stationWords } from '../../../analysis/prose.ts';
import type { Step } from '../../../model/procedure.ts';
import type { FluidKind, Shop } from '../../../model/shop.ts';
import { own } from '../../../model/steps.ts';
import { type Said, say, term } from '../../../say/say.ts';
import { on, type Rule } from '../../rule.ts';

const dirtyFluids: readonly FluidKind[] = ['solvent', 'detergent', 'caustic'];

/** Marking that removes no metal. */
const softMark = /\b(tag|label|pen|marker|paint|ink|tape)\b/iu;

/** Marking, buffing, blasting, or washing in solvent at a clean station. */
export const dirtyWorkInCleanRoom: Rule = {
  code: 'dirty-work-in-clean-room',
  severity: 'warning',
  since: '0.2.0',
  title: 'Something is engraved, buffed, blasted or washed in solvent at a clean station.',
  flow: ({ graph }, report) => {
    const { procedure } = graph;
    return {
      step: on(['mark', 'buff', 'blast', 'wash', 'soak'], ({ step, block, path }) => {
        const dirty = dirtyWork(step, procedure.shop);
        if (dirty === null) return;
        // A repair that names no station is done in a cup beside the place where the unit was sent from.
        const station = own(step, 'station') ?? block.station;
        const at = procedure.shop.stations.find((one) => one.name === station);
        if (at === undefined || !at.clean || (dirty.needs !== null && at[dirty.needs])) return;
        report({
          at: step,
          path,
          rootCause: `dirty-work:${block.name}`,
          message: say`${dirty.words} at ${stationWords(procedure, station)}, which is clean.`,
          why: say`chips, grit and drips settle on the parts that are built there.`,
          help: say`Do it at another station, before the last wash.`,
        });
      }),
    };
  },
};

/** What makes dirt in a step, and the trait of a station that is meant for it. */
function dirtyWork(step: Step, shop: Shop): { words: Said; needs: 'abrasive' | 'wet' | null } | null {
  switch (step.verb) {
    case 'mark':
      return softMark.test(`${step.text ?? ''} ${step.note ?? ''}`)
        ? null
        : { words: say`The unit is marked`, needs: null };
    case 'buff':
      return { words: say`It is buffed`, needs: 'abrasive' };
    case 'blast':
      return { words: say`It is blasted`, needs: 'abrasive' };
    case 'wash':
    case 'soak': {
      const fluid = shop.fluids.find((one) => one.name === step.fluid);
      if (fluid === undefined || !dirtyFluids.includes(fluid.kind)) return null;
      return { words: say`Parts are washed in ${term(fluid.kind)}`, needs: 'wet' };
    }
    default:
      return null;
  }
}
