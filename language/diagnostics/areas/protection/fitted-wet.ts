import { place, wet } from '../../../analysis/locations.ts';
import { partsWords, partsWritten } from '../../../analysis/prose.ts';
import { restsOn } from '../../../analysis/relations.ts';
import type { Source } from '../../../model/source.ts';
import { closesUp, namedIn } from '../../../model/steps.ts';
import { say } from '../../../say/say.ts';
import { on, type Rule } from '../../rule.ts';
import { fixStep, missingBefore, onlyTestOil, type StepFix } from '../../step-fixes.ts';

/** Solvent, detergent or water is still on a part, or on the part under it, when it is fitted. */
export const fittedWet: Rule<StepFix> = {
  code: 'fitted-wet',
  severity: 'error',
  since: '0.1.0',
  title: 'A part is fitted with solvent, detergent or water still on it.',
  flow: ({ graph, relations }, report) => ({
    step: on(['fit', 'run-down'], ({ step, before, path }) => {
      if (!closesUp(step)) return;
      const oil = onlyTestOil(graph.procedure.shop);
      /** Wet parts by the step that made them wet: one cause, one finding. */
      const bySince = new Map<number, { names: string[]; source: Source; water: boolean }>();
      for (const object of namedIn(step)) {
        if (before.mustBeIn(object.name)) continue;
        const onto = restsOn(relations.part(object.name)).filter((name) => before.mayBeIn(name));
        for (const name of [object.name, ...onto]) {
          const cells = before.part(name);
          if (before.must(cells.place, place.gone) || !before.may(cells.wet, wet.solvent | wet.water)) continue;
          const since = before.since(cells.wet);
          const known = bySince.get(since);
          if (known === undefined)
            bySince.set(since, { names: [name], source: object.source, water: before.may(cells.wet, wet.water) });
          else if (!known.names.includes(name)) known.names.push(name);
        }
      }
      // What else the same step left wet is fitted later.
      const allWet = (since: number) =>
        graph.procedure.family.parts.flatMap(({ name }) => {
          const { wet: cell, place: where } = before.part(name);
          const isWet = before.since(cell) === since && before.may(cell, wet.solvent | wet.water);
          return isWet && !before.must(where, place.gone) ? [name] : [];
        });
      for (const [since, { names, source, water }] of bySince) {
        const [are, it] = names.length > 1 ? [say`are`, say`them`] : [say`is`, say`it`];
        report({
          at: step,
          source,
          path,
          since,
          rootCause: `wet:${since}`,
          message: say`The ${partsWords(graph.procedure, names)} ${are} still wet with ${water ? say`water or detergent` : say`solvent`} when ${names.length > 1 ? say`they go` : say`it goes`} together.`,
          why: water ? say`they rust inside.` : say`it strips the oil film inside.`,
          help: say`Blow ${it} dry or rinse ${it} in test oil first.`,
          data:
            oil === null
              ? undefined
              : missingBefore(step, `rinse ${partsWritten(graph.procedure, allWet(since))} in ${oil}`),
        });
      }
    }),
  }),
  fix: fixStep,
};
