import { place } from '../../../analysis/locations.ts';
import { looseParts } from '../../../analysis/loose.ts';
import { partsWords, stationWords } from '../../../analysis/prose.ts';
import { say } from '../../../say/say.ts';
import { on, type Rule } from '../../rule.ts';

/** Small lapped parts are put down at an abrasive station, or go there with the unit. */
export const keptPartsAtTheWheel: Rule = {
  code: 'kept-parts-at-the-wheel',
  severity: 'error',
  since: '0.1.0',
  title: 'Lapped or matched parts are kept at an abrasive station, or go there with the unit.',
  flow: (flow, report) => {
    const { layout, relations } = flow;
    const { procedure } = flow.graph;
    const abrasive = (name: string | null) =>
      procedure.shop.stations.some((station) => station.name === name && station.abrasive);
    return {
      step: on(['keep', 'send'], ({ step, block, path }) => {
        if (!abrasive(step.station ?? block.station)) return;
        const fine = step.objects.filter((object) => relations.isFine(object.name));
        if (fine.length === 0) return;
        report({
          at: step,
          source: fine[0]!.source,
          path,
          message: say`The ${partsWords(
            procedure,
            fine.map((object) => object.name),
          )} ${fine.length > 1 ? say`are` : say`is`} lapped or matched, and ${fine.length > 1 ? say`are` : say`is`} kept at ${stationWords(procedure, step.station ?? block.station)}.`,
          why: say`grit from an abrasive station scores lapped faces and seizes matched fits.`,
          help: say`Keep ${fine.length > 1 ? say`them` : say`it`} at another station.`,
        });
      }),
      leave({ last, block, to, state, path }) {
        if (!abrasive(to.station)) return;
        const along = procedure.family.parts.filter((part) => {
          const cells = state.part(part.name);
          // Bit 0: with the unit.
          return (
            relations.isFine(part.name) &&
            state.may(cells.place, place.off | place.sub) &&
            state.may(cells.where, 1 | layout.stationBit(to.station))
          );
        });
        const [first] = along;
        if (first === undefined) return;
        const loose = looseParts(flow, state);
        const since = state.since(state.part(first.name).place);
        const all = loose?.parts.includes(first) ? loose.parts : along;
        report({
          at: last ?? block.source,
          path,
          since,
          rootCause: all === along ? `along:${since}` : loose!.cause,
          message: say`The ${partsWords(
            procedure,
            along.map((part) => part.name),
          )} ${along.length > 1 ? say`go` : say`goes`} along to ${stationWords(procedure, to.station)}.`,
          why: say`grit from an abrasive station scores lapped faces and seizes matched fits.`,
          help: say`Write “keep ${[...new Set(all.map((part) => part.base))].join(', ')} at” a clean place before this.`,
        });
      },
    };
  },
};
