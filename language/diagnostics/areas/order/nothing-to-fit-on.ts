import { place } from '../../../analysis/locations.ts';
import { partsWords, partWords } from '../../../analysis/prose.ts';
import { restsOn } from '../../../analysis/relations.ts';
import { builtUpsideDown } from '../../../analysis/upside-down.ts';
import { closesUp, namedIn } from '../../../model/steps.ts';
import type { Rule } from '../../rule.ts';

/** Fitted before what it rests on. Within one step parts go together in an order that allows it. */
export const nothingToFitOn: Rule = {
  code: 'nothing-to-fit-on',
  severity: 'error',
  since: '0.1.0',
  title: 'A part is fitted before the part that it rests on.',
  replay: ({ program, relations }, report) => ({
    step({ step, block, before, way }) {
      if (!closesUp(step)) return;
      if (builtUpsideDown(block, step, relations)) return;
      const objects = namedIn(step);
      const together = objects.map((object) => object.name);
      for (const object of objects) {
        const part = relations.part(object.name);
        if (before.mustBeIn(object.name)) continue;
        // A sub-assembly in the hand: what it goes on may be off too, if it goes in together with it later.
        const missing = [...restsOn(part), ...part.holds].filter(
          (under) =>
            !together.includes(under) &&
            before.may(before.part(under).place, ~(place.in | place.trial)) &&
            !assembledInHand(object.name, under),
        );
        if (missing.length === 0) continue;
        report({
          at: step,
          source: object.source,
          way,
          cause: `missing:${missing[0]}:${before.since[before.part(missing[0]!).place]}`,
          since: before.since[before.part(missing[0]!).place],
          message: `The ${partWords(program.procedure, object.name)} goes on the ${partsWords(program.procedure, missing)}, which ${missing.length > 1 ? 'are' : 'is'} not in place yet.`,
          help: `Fit ${missing.length > 1 ? 'those' : 'that'} before, or in the same step.`,
        });
      }

      /**
       * Put into or onto a part that is itself in the hand, as a needle into its nozzle: a sub-assembly. What goes into
       * a bore is no carrier: nothing is put under what is in the bore already.
       */
      function assembledInHand(name: string, under: string): boolean {
        const carrier = relations.part(under);
        return (
          relations.joint(name) === undefined &&
          restsOn(carrier).length > 0 &&
          (relations.part(name).in.includes(under) || (relations.part(name).on.includes(under) && !isInBore(under)))
        );
      }

      /** It lies in a part, or on one that does. */
      function isInBore(name: string): boolean {
        const part = relations.part(name);
        return (
          part.in.length > 0 || part.on.some((lower) => restsOn(relations.part(lower)).length > 0 && isInBore(lower))
        );
      }
    },
  }),
};
