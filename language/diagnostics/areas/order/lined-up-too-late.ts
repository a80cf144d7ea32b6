import { joint as bits } from '../../../analysis/locations.ts';
import { partsWords, partWords } from '../../../analysis/prose.ts';
import { say } from '../../../say/say.ts';
import { on, type Rule } from '../../rule.ts';

/** Marks or holes are brought in line when what holds the part is tight already. */
export const linedUpTooLate: Rule = {
  code: 'lined-up-too-late',
  severity: 'error',
  since: '0.2.0',
  title: 'A part is lined up when the joint that holds it is tight already.',
  flow: ({ graph, layout, relations }, report) => ({
    step: on(['line-up'], ({ step, before, path }) => {
      for (const object of step.objects) {
        const over = [object.name, ...relations.closedBy(object.name).map(({ part }) => part)];
        const tight = over.filter((joint) => {
          const cell = layout.joints.get(joint);
          return cell !== undefined && before.may(cell, bits.torqued | bits.locked) && before.mayBeIn(joint);
        });
        const [first] = tight;
        if (first === undefined) continue;
        const since = before.since(layout.joints.get(first)!);
        report({
          at: step,
          source: object.source,
          path,
          since,
          rootCause: `lined-up:${object.name}:${since}`,
          message: say`The ${partWords(graph.procedure, object.name)} is lined up when the ${partsWords(graph.procedure, tight)} ${tight.length > 1 ? say`are` : say`is`} tight already.`,
          why: say`it no longer moves, or it is forced and what holds it is loose again.`,
          help: say`Line it up when the joint is hand-tight, before it is torqued.`,
        });
      }
    }),
  }),
};
