import { wrongFilm as filmsNotFor } from '../../../analysis/films.ts';
import { dirt, noFilm, wet } from '../../../analysis/locations.ts';
import { partsWords } from '../../../analysis/prose.ts';
import { closesUp, namedIn, own } from '../../../model/steps.ts';
import { say } from '../../../say/say.ts';
import { on, type Rule } from '../../rule.ts';

/** A part goes in dry that is to be oiled, or oiled that is to be dry, or with another fluid. */
export const wrongFilm: Rule = {
  code: 'wrong-film',
  severity: 'error',
  since: '0.2.0',
  title: 'A part goes in dry that is to be oiled, oiled that is to be dry, or with the wrong fluid on it.',
  flow: ({ graph, relations }, report) => ({
    step: on(['fit', 'run-down'], ({ step, before, path }) => {
      if (!closesUp(step)) return;
      const { procedure } = graph;
      const fluid = procedure.shop.fluids.find(({ name }) => name === own(step, 'fluid'))?.kind ?? null;
      /** Parts by what is wrong and since which step: one cause, one finding. */
      const slips = new Map<string, string[]>();
      const wrong = namedIn(step).filter(({ name }) => {
        const part = relations.part(name);
        const cells = before.part(name);
        const bad = filmsNotFor(part);
        if (before.mustBeIn(name)) return false;
        // A lapped pair has a rule of its own.
        if (part.film === null && relations.matches(name).length > 0) return false;
        // What the step itself puts on it, and what a new part comes in, which is reported as such.
        if (
          fluid !== null &&
          (fluid === part.film || (part.film === 'oiled' && (fluid === 'oil' || fluid === 'test-oil')))
        )
          return false;
        return before.may(cells.wet, bad) && !before.may(cells.dirt, dirt.preserved);
      });
      for (const { name } of wrong) {
        const key = `${relations.part(name).film}:${before.since(before.part(name).wet)}`;
        slips.set(key, [...(slips.get(key) ?? []), name]);
      }
      for (const names of slips.values()) {
        const [first] = wrong.filter((object) => names.includes(object.name));
        const { film } = relations.part(names[0]!);
        const cell = before.part(names[0]!).wet;
        const since = before.since(cell);
        const [is, it] = names.length > 1 ? [say`are`, say`them`] : [say`is`, say`it`];
        const now = before.may(cell, noFilm)
          ? say`dry`
          : before.may(cell, wet.preserving)
            ? say`in preserving oil`
            : before.may(cell, wet.oil)
              ? say`in test oil`
              : say`in assembly oil`;
        const wanted = film === 'dry' ? 'dry' : film === 'oiled' ? 'oiled' : `with ${film}`;
        const bases = [...new Set(names.map((name) => relations.part(name).base))].join(', ');
        report({
          at: step,
          source: first!.source,
          path,
          since,
          rootCause: `film:${names[0]}:${since}`,
          message: say`The ${partsWords(procedure, names)} ${is} fitted ${now}${film === null ? '' : say`, and the family says “fitted ${wanted}”`}.`,
          why:
            film === 'dry'
              ? say`oil there keeps it from gripping or sealing, or feeds a false reading.`
              : film === null
                ? say`it is thick, gums fine fits and holds grit: it is for what is put away.`
                : say`it is scuffed, twisted or stuck before the first fluid reaches it.`,
          help:
            film === 'dry'
              ? say`Blow-dry or wipe ${bases} before this step, or leave ${it} out of the rinse.`
              : film === null
                ? say`Rinse ${bases} in clean oil instead, or write “fitted with preservative” in the family.`
                : say`Write “oil ${bases} with” and the right fluid before this step.`,
        });
      }
    }),
  }),
};
