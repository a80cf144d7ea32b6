import { place } from '../../replay/cells.ts';
import type { Rule } from '../rule.ts';
import { partWords, partsWords } from '../words.ts';

/** Small lapped parts are put down at an abrasive station, or come along to it with the unit. */
export const keptPartsAtTheWheel: Rule = {
  code: 'kept-parts-at-the-wheel',
  severity: 'error',
  title: 'Lapped or matched parts are kept at an abrasive station, or come along to it.',
  replay: ({ program, layout, relations }, report) => {
    const { procedure } = program;
    const abrasive = (name: string | null) => procedure.shop.stations.some((station) => station.name === name && station.abrasive);
    return {
      step({ step, block, way }) {
        if (step.verb !== 'keep' && step.verb !== 'send') return;
        if (!abrasive(step.station ?? block.station)) return;
        const fine = step.objects.filter((object) => relations.isFine(object.name));
        if (fine.length === 0) return;
        report({
          at: step,
          source: fine[0]!.source,
          way,
          message: `The ${partsWords(procedure, fine.map((object) => object.name))} ${fine.length > 1 ? 'are' : 'is'} lapped or matched and would lie in the dust of ${step.station ?? block.station}. Keep ${fine.length > 1 ? 'them' : 'it'} at another station.`,
        });
      },
      leave({ last, block, to, state, way }) {
        if (!abrasive(to.station)) return;
        for (const part of procedure.family.parts) {
          const cells = state.part(part.name);
          if (!relations.isFine(part.name) || !state.may(cells.place, place.off | place.sub)) continue;
          // Bit 0: with the unit.
          if (!state.may(cells.where, 1 | layout.stationBit(to.station))) continue;
          report({
            at: last ?? block.source,
            way,
            since: state.since[cells.place],
            cause: `loose:${state.since[cells.place]}`,
            message: `The ${partWords(procedure, part.name)} goes along to ${to.station}, where the dust spoils lapped parts. Write keep ${part.base} at a clean place before.`,
          });
        }
      },
    };
  },
};
