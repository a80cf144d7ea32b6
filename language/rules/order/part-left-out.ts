import { place } from '../../replay/cells.ts';
import type { Rule } from '../rule.ts';
import { variantParts } from '../variant-parts.ts';
import { partsWords, partWords } from '../words.ts';

/** Missing at the end, or when a joint that closes over it is run down. */
export const partLeftOut: Rule = {
  code: 'part-left-out',
  severity: 'error',
  unsafe: true,
  title: 'A part is missing when a joint closes over its place, or at the end.',
  replay: (replay, report) => {
    const { program, relations } = replay;
    const { procedure } = program;
    const mine = variantParts(replay);
    const out = place.off | place.gone | place.sub | place.guard;
    return {
      step({ step, before, way }) {
        if (step.verb !== 'run-down') return;
        for (const object of step.objects) {
          const missing = [...relations.closure(object.name)].filter(
            (part) => mine(part) && before.may(before.part(part).place, out) && !relations.part(part).suppliedLoose,
          );
          if (missing.length === 0) continue;
          report({
            at: step,
            source: object.source,
            way,
            cause: `missing:${missing[0]}:${before.since[before.part(missing[0]!).place]}`,
            since: before.since[before.part(missing[0]!).place],
            message: `The ${partsWords(procedure, missing)} ${missing.length > 1 ? 'are' : 'is'} not in place when the ${partWords(procedure, object.name)} closes over ${missing.length > 1 ? 'them' : 'it'}: the unit would be built without ${missing.length > 1 ? 'them' : 'it'}. Fit ${missing.length > 1 ? 'them' : 'it'} before this step.`,
          });
        }
      },
      end({ state, way, last, block }) {
        for (const part of procedure.family.parts) {
          const cell = state.part(part.name).place;
          if (part.suppliedLoose || !mine(part.name) || !state.may(cell, out | place.trial)) continue;
          report({
            at: last ?? block.source,
            way,
            allow: part.allow,
            cause: `missing:${part.name}:${state.since[cell]}`,
            since: state.since[cell],
            message: `At the end the ${partWords(procedure, part.name)} ${state.may(cell, place.trial) ? 'is in place for trial only' : state.may(cell, place.guard) ? 'is on as a guard only' : 'is not in place'}: the unit would leave without it. Fit it, or say in the family that it is supplied loose.`,
          });
        }
      },
    };
  },
};
