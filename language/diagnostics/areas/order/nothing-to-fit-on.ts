import { builtUpsideDown } from '../../../analysis/assembly.ts';
import { missingFor, saidBetween } from '../../../analysis/order.ts';
import { partsWords, partWords } from '../../../analysis/prose.ts';
import { closesUp, namedIn, partsNamedIn } from '../../../model/steps.ts';
import { say } from '../../../say/say.ts';
import { on, type Rule } from '../../rule.ts';
import { saidLine } from '../../said-line.ts';

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
      const together = partsNamedIn(step);
      for (const object of objects) {
        if (before.mustBeIn(object.name)) continue;
        const missing = missingFor(relations, before, object.name, together);
        if (missing.length === 0) continue;
        report({
          at: step,
          source: object.source,
          path,
          rootCause: `missing:${missing[0]}:${before.since(before.part(missing[0]!).place)}`,
          since: before.since(before.part(missing[0]!).place),
          related: saidLine(saidBetween(relations, object.name, missing[0]!)),
          message: say`The ${partWords(graph.procedure, object.name)} goes on the ${partsWords(graph.procedure, missing)}, which ${missing.length > 1 ? say`are` : say`is`} not in place yet.`,
          why: say`there is nothing to fit it on, and the bench hand stops or guesses what is missing.`,
          help: say`Fit ${missing.length > 1 ? say`those` : say`that`} first, or in the same step.`,
        });
      }
    }),
  }),
};
