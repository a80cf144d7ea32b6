import type { PathContext } from '../../../analysis/flow-analysis.ts';
import { dirt, place, unclean } from '../../../analysis/locations.ts';
import { partsWords, partsWritten } from '../../../analysis/prose.ts';
import { restsOn } from '../../../analysis/relations.ts';
import type { Step } from '../../../model/procedure.ts';
import { closesUp, namedIn } from '../../../model/steps.ts';
import { say } from '../../../say/say.ts';
import { on, type Rule } from '../../rule.ts';

/** Fitted dirty, or on a dirty part. */
export const fittedDirty: Rule = {
  code: 'fitted-dirty',
  severity: 'error',
  since: '0.1.0',
  title: 'A part is fitted dirty, or onto a dirty part.',
  flow: ({ graph, relations }, report) => {
    /** One missing wash shows as different dirt on each path: the first path on which a step is reported wins. */
    const told = new Map<Step, PathContext>();
    return {
      looksAround: true,
      step: on(['fit', 'run-down'], ({ step, before, path }) => {
        if (!closesUp(step)) return;
        const { procedure } = graph;
        /** Dirty parts by the step that made them dirty: one cause, one finding. */
        const bySince = new Map<number, { names: string[]; at: (typeof step.objects)[number]; onto: boolean }>();
        for (const object of namedIn(step)) {
          if (before.mustBeIn(object.name)) continue;
          const onto = restsOn(relations.part(object.name)).filter((name) =>
            before.may(before.part(name).place, place.in | place.trial),
          );
          for (const name of [object.name, ...onto]) {
            const cells = before.part(name);
            // A new part from the kit comes clean in its bag.
            if (before.must(cells.place, place.gone) && relations.part(name).renewed) continue;
            if (!before.may(cells.dirt, unclean)) continue;
            const since = before.since(cells.dirt);
            const known = bySince.get(since);
            if (known === undefined) bySince.set(since, { names: [name], at: object, onto: name !== object.name });
            else if (!known.names.includes(name)) known.names.push(name);
          }
        }
        if (bySince.size === 0 || (told.get(step) ?? path) !== path) return;
        told.set(step, path);
        for (const [since, { names, at, onto }] of bySince) {
          const words = partsWords(procedure, names);
          const are = names.length > 1 ? say`are` : say`is`;
          report({
            at: step,
            source: at.source,
            path,
            since,
            rootCause: `dirty:${since}`,
            message: say`The ${words} ${are} ${onto ? say`built on` : say`fitted`} dirty${since < 0 ? say`, as ${names.length > 1 ? say`they` : say`it`} came in` : ''}.`,
            why: say`the dirt is closed up in the unit.`,
            help: names.some((name) => before.may(before.part(name).dirt, dirt.dirty | dirt.paste))
              ? say`Wash ${partsWritten(procedure, names)} before this step: a rinse does not take it off.`
              : say`Wash or rinse ${partsWritten(procedure, names)} before this step.`,
          });
        }
      }),
    };
  },
};
