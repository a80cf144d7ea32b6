import { inPlaceCause } from '../../../analysis/assembly.ts';
import { place } from '../../../analysis/locations.ts';
import { blockersOf, saidBetween } from '../../../analysis/order.ts';
import { objectWords, partsWords } from '../../../analysis/prose.ts';
import { partsNamedIn } from '../../../model/steps.ts';
import { say } from '../../../say/say.ts';
import { on, type Rule } from '../../rule.ts';
import { saidLine } from '../../said-line.ts';

/** Taken off while something that lies on it or holds it is in place. A list in one step comes apart in any order. */
export const partStillHeld: Rule = {
  code: 'part-still-held',
  severity: 'error',
  since: '0.1.0',
  title: 'A part is taken off while another still lies on it or holds it.',
  flow: ({ graph, relations }, report) => ({
    step: on(['remove', 'discard', 'renew'], ({ step, before, path }) => {
      const together = partsNamedIn(step);
      for (const object of step.objects) {
        const name = object.name;
        if (!before.may(before.part(name).place, place.in | place.trial)) continue;
        const blockers = blockersOf(relations, before, name, together);
        if (blockers.length === 0) continue;
        const { procedure } = graph;
        report({
          at: step,
          source: object.source,
          path,
          rootCause: inPlaceCause(relations, before, blockers[0]!),
          related: saidLine(saidBetween(relations, blockers[0]!, name)),
          since: before.since(before.part(blockers[0]!).place),
          message: say`The ${objectWords(procedure, object)} cannot come off yet.`,
          why: say`the ${partsWords(procedure, blockers)} ${blockers.length > 1 ? say`are` : say`is`} still in place over it.`,
          help: say`Take ${blockers.length > 1 ? say`those` : say`that`} off first, or in the same step.`,
        });
      }
    }),
  }),
};
