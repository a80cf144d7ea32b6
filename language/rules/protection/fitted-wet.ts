import { place, wet } from '../../replay/cells.ts';
import { restsOn } from '../../replay/relations.ts';
import type { Rule } from '../rule.ts';
import { partWords } from '../words.ts';

/** Solvent, detergent or water is still on a part, or on what it goes on, when it is fitted. */
export const fittedWet: Rule = {
  code: 'fitted-wet',
  severity: 'error',
  title: 'A part is fitted with solvent, detergent or water still on it.',
  replay: ({ program, relations }, report) => ({
    step({ step, before, way }) {
      if (step.verb !== 'fit' && step.verb !== 'run-down') return;
      if (step.forTrial) return;
      const told = new Set<string>();
      for (const object of [...step.objects, ...step.withObjects]) {
        if (before.mustBeIn(object.name)) continue;
        const onto = restsOn(relations.part(object.name)).filter((name) => before.may(before.part(name).place, place.in | place.trial));
        for (const name of [object.name, ...onto]) {
          const cells = before.part(name);
          if (told.has(name) || before.must(cells.place, place.gone) || !before.may(cells.wet, wet.solvent | wet.water)) continue;
          told.add(name);
          const since = before.since[cells.wet];
          const water = before.may(cells.wet, wet.water);
          report({
            at: step,
            source: object.source,
            way,
            since,
            cause: `wet:${since}`,
            message: `The ${partWords(program.procedure, name)} is still wet with ${water ? 'water or detergent' : 'solvent'} when it is ${name === object.name ? 'fitted' : 'built on'}: it ${water ? 'rusts' : 'strips the oil film'} inside. Blow it dry or rinse it in test oil before.`,
          });
        }
      }
    },
  }),
};
