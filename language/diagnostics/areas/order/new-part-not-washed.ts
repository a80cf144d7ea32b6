import { dirt, place, unclean } from '../../../analysis/locations.ts';
import { partsWords } from '../../../analysis/prose.ts';
import { restsOn } from '../../../analysis/relations.ts';
import type { Source } from '../../../model/source.ts';
import { closesUp, namedIn, own } from '../../../model/steps.ts';
import { say } from '../../../say/say.ts';
import { stepBefore } from '../../edits.ts';
import { on, type Rule } from '../../rule.ts';

/** A new part is fitted straight from its bag or the drawer, in preservative. */
export const newPartNotWashed: Rule<{ rinse: string; source: Source }> = {
  code: 'new-part-not-washed',
  severity: 'error',
  since: '0.2.0',
  title: 'A new part is fitted with its preservative still on it.',
  flow: ({ graph, relations }, report) => ({
    step: on(['fit', 'run-down'], ({ step, before, path }) => {
      if (!closesUp(step)) return;
      const { procedure } = graph;
      /** New parts by the step that made them new: one cause, one finding. */
      const bySince = new Map<number, { names: string[]; source: Source }>();
      for (const object of namedIn(step)) {
        if (before.mustBeIn(object.name)) continue;
        const onto = restsOn(relations.part(object.name)).filter((name) => before.mayBeIn(name));
        for (const name of [object.name, ...onto]) {
          const cells = before.part(name);
          // A part that may also be dirty is reported as dirty. A new one from the kit comes clean in its bag.
          if (!before.may(cells.dirt, dirt.preserved) || before.may(cells.dirt, unclean)) continue;
          if (own(step, 'readyToFit') === true || relations.part(name).readyToFit) continue;
          if (before.must(cells.place, place.gone) && relations.part(name).renewed) continue;
          const since = before.since(cells.dirt);
          const known = bySince.get(since);
          if (known === undefined) bySince.set(since, { names: [name], source: object.source });
          else if (!known.names.includes(name)) known.names.push(name);
        }
      }
      for (const [since, { names, source }] of bySince) {
        const bases = [...new Set(names.map((name) => relations.part(name).base))].join(', ');
        const oil = procedure.shop.fluids.find((fluid) => fluid.kind === 'test-oil');
        report({
          at: step,
          source,
          path,
          since,
          rootCause: `dirty:${since}`,
          message: say`The new ${partsWords(procedure, names)} ${names.length > 1 ? say`go` : say`goes`} in with the preservative still on.`,
          why: say`it gums up lapped fits and holds grit.`,
          help: say`Write “rinse ${bases}${oil === undefined ? '' : say` in ${oil.name}`}” before this step, or “ready to fit” if ${names.length > 1 ? say`they come` : say`it comes`} clean in a bag.`,
          data:
            step.call === null && oil !== undefined
              ? { rinse: `rinse ${bases} in ${oil.name}`, source: step.source }
              : undefined,
        });
      }
    }),
  }),
  fix({ rinse, source }) {
    return { title: say`Rinse it first`, safe: false, edits: [stepBefore(source, rinse)] };
  },
};
