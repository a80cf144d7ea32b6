import { place, wet } from '../../../analysis/locations.ts';
import { partsWords, stationWords } from '../../../analysis/prose.ts';
import { isLeftToSoak } from '../../../analysis/soaking.ts';
import { say } from '../../../say/say.ts';
import { blank } from '../../edits.ts';
import type { Rule } from '../../rule.ts';
import { fixStep, missingAfter, type StepFix } from '../../step-fixes.ts';

/** Bare steel leaves a wet station wet: parts in the hand, and parts that are sent or kept elsewhere. */
export const leavesWet: Rule<StepFix> = {
  code: 'leaves-wet',
  severity: 'error',
  since: '0.2.0',
  title: 'Parts are still wet with solvent, detergent or water when the unit leaves a wet station.',
  flow: ({ graph, layout }, report) => ({
    leave({ last, block, state, path }) {
      const { procedure } = graph;
      const { station } = layout.unit;
      const from = procedure.shop.stations.find((one) => one.wet && state.may(station, layout.stationBit(one.name)));
      if (from === undefined) return;
      const wetParts = procedure.family.parts.filter((part) => {
        const cells = state.part(part.name);
        return (
          !graph.absent.has(part.name) &&
          !state.must(cells.place, place.gone) &&
          state.may(cells.wet, wet.solvent | wet.water) &&
          !isLeftToSoak(graph, state, part.name)
        );
      });
      const [first] = wetParts;
      if (first === undefined) return;
      const since = state.since(state.part(first.name).wet);
      const water = wetParts.some((part) => state.may(state.part(part.name).wet, wet.water));
      report({
        at: last ?? block.source,
        path,
        since,
        rootCause: `wet:${since}`,
        message: say`The ${partsWords(
          procedure,
          wetParts.map((part) => part.name),
        )} ${wetParts.length > 1 ? say`leave` : say`leaves`} ${stationWords(procedure, from.name)} wet with ${water ? say`water or detergent` : say`solvent`}.`,
        why: water ? say`bare steel rusts within the hour.` : say`it drips on the next bench, and bare steel rusts.`,
        data:
          last === null
            ? undefined
            : missingAfter(last, `blow-dry ${wetParts.map(({ name }) => name).join(', ')} with air at most ${blank}`),
        help: say`Blow ${wetParts.length > 1 ? say`them` : say`it`} dry or rinse ${wetParts.length > 1 ? say`them` : say`it`} in oil at the end of this stage.`,
      });
    },
  }),
  fix: fixStep,
};
