import { place, wet } from '../../../analysis/locations.ts';
import { partsWords } from '../../../analysis/prose.ts';
import { restsOn } from '../../../analysis/relations.ts';
import type { Source } from '../../../model/source.ts';
import { closesUp, namedIn } from '../../../model/steps.ts';
import { say } from '../../../say/say.ts';
import { on, type Rule } from '../../rule.ts';

/** Washed in water, suds or caustic, dried, and fitted with no film of oil. */
export const waterWashedNotOiled: Rule = {
  code: 'water-washed-not-oiled',
  severity: 'warning',
  since: '0.2.0',
  title: 'A part that was washed in water or detergent is dried and fitted without being oiled.',
  flow: ({ graph, relations }, report) => ({
    step: on(['fit', 'run-down'], ({ step, before, path }) => {
      if (!closesUp(step)) return;
      /** Bare parts by the step that left them bare: one cause, one finding. */
      const bySince = new Map<number, { names: string[]; source: Source }>();
      for (const object of namedIn(step)) {
        if (before.mustBeIn(object.name)) continue;
        const onto = restsOn(relations.part(object.name)).filter((name) => before.mayBeIn(name));
        for (const name of [object.name, ...onto]) {
          const cells = before.part(name);
          if (before.must(cells.place, place.gone) || !before.may(cells.wet, wet.bare)) continue;
          const since = before.since(cells.wet);
          const known = bySince.get(since);
          if (known === undefined) bySince.set(since, { names: [name], source: object.source });
          else if (!known.names.includes(name)) known.names.push(name);
        }
      }
      for (const [since, { names, source }] of bySince) {
        const [go, them] = names.length > 1 ? [say`go`, say`them`] : [say`goes`, say`it`];
        report({
          at: step,
          source,
          path,
          since,
          rootCause: `bare-steel:${since}`,
          message: say`The ${partsWords(graph.procedure, names)} ${go} together dry after a wash in water or detergent.`,
          why: say`steel with no oil film rusts inside, where nobody sees it.`,
          help: say`Rinse ${them} in test oil or oil ${them} first.`,
        });
      }
    }),
  }),
};
