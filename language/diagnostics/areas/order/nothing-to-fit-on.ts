import { builtUpsideDown } from '../../../analysis/assembly.ts';
import { place } from '../../../analysis/locations.ts';
import { partsWords, partWords } from '../../../analysis/prose.ts';
import { restsOn } from '../../../analysis/relations.ts';
import { closesUp, namedIn } from '../../../model/steps.ts';
import { on, type Rule } from '../../rule.ts';

/** Fitted before the part that it rests on. Within one step parts go together in an order that works. */
export const nothingToFitOn: Rule = {
  code: 'nothing-to-fit-on',
  severity: 'error',
  since: '0.1.0',
  title: 'A part is fitted before the part that it rests on.',
  flow: ({ graph, relations }, report) => ({
    step: on(['fit', 'run-down'], ({ step, block, before, path }) => {
      if (!closesUp(step)) return;
      if (builtUpsideDown(block, step, relations)) return;
      const objects = namedIn(step);
      const together = objects.map((object) => object.name);
      for (const object of objects) {
        const part = relations.part(object.name);
        if (before.mustBeIn(object.name)) continue;
        // A sub-assembly in the hand: the part under it may be off too, if both go in together later.
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
          path,
          rootCause: `missing:${missing[0]}:${before.since(before.part(missing[0]!).place)}`,
          since: before.since(before.part(missing[0]!).place),
          message: `The ${partWords(graph.procedure, object.name)} goes on the ${partsWords(graph.procedure, missing)}, which ${missing.length > 1 ? 'are' : 'is'} not in place yet.`,
          why: 'there is nothing to fit it on, and the bench hand stops or guesses what is missing.',
          help: `Fit ${missing.length > 1 ? 'those' : 'that'} first, or in the same step.`,
        });
      }

      /**
       * Put into or onto a part that is itself in the hand, as a needle into its nozzle: a sub-assembly. A part that
       * goes into a bore carries nothing: nothing can be put under what is already in the bore.
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
    }),
  }),
};
