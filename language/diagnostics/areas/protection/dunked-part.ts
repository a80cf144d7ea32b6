import { shutInBy } from '../../../analysis/assembly.ts';
import { place } from '../../../analysis/locations.ts';
import { partsWords, partWords } from '../../../analysis/prose.ts';
import { say } from '../../../say/say.ts';
import { on, type Rule } from '../../rule.ts';

/** A part is cleaned where neither bath nor rag reaches it: shut in by a joint. */
export const dunkedPart: Rule = {
  code: 'dunked-part',
  severity: 'error',
  since: '0.2.0',
  title: 'A part is washed, soaked, rinsed or wiped while it is shut in.',
  flow: (flow, report) => {
    const { procedure } = flow.graph;
    return {
      step: on(['wash', 'soak', 'rinse', 'wipe'], ({ step, before, path }) => {
        const isOpen = procedure.family.parts.some((part) => before.may(before.part(part.name).place, place.off));
        const shutIn = step.objects.flatMap((object) => {
          // A face of it is wiped where it can be reached: whether it lies bare is looked at elsewhere.
          if (object.kind !== 'part') return [];
          const joint = shutInBy(flow, before, object.name);
          // `all` of an open unit means the parts that are out of it: what nobody has opened stays shut.
          if (joint === null || (step.all && isOpen && before.since(before.part(joint).place) === -1)) return [];
          return [{ object, joint }];
        });
        const [first] = shutIn;
        if (first !== undefined) {
          const since = before.since(before.part(first.joint).place);
          report({
            at: step,
            source: first.object.source,
            path,
            since,
            rootCause: `shut-in:${first.joint}:${since}`,
            message: say`The ${partsWords(
              procedure,
              shutIn.map(({ object }) => object.name),
            )} ${shutIn.length > 1 ? say`are` : say`is`} cleaned while the ${partWords(procedure, first.joint)} shuts ${shutIn.length > 1 ? say`them` : say`it`} in.`,
            why: say`neither bath nor rag reaches ${shutIn.length > 1 ? say`them` : say`it`}, and fluid that runs in does not run out.`,
            help: say`Take ${shutIn.length > 1 ? say`them` : say`it`} out first, or clean only the outside.`,
          });
        }
      }),
    };
  },
};
