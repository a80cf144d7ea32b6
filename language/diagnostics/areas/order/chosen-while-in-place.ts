import { inPlaceCause } from '../../../analysis/assembly.ts';
import { joint } from '../../../analysis/locations.ts';
import { capital, faceWords, partWords } from '../../../analysis/prose.ts';
import type { AbstractState } from '../../../analysis/state.ts';
import type { Step, StepObject } from '../../../model/procedure.ts';
import { say } from '../../../say/say.ts';
import { on, type Rule } from '../../rule.ts';

/** A part is chosen, measured or lapped, or its holes are cleaned, while it is in place and a joint is closed over it. */
export const chosenWhileInPlace: Rule = {
  code: 'chosen-while-in-place',
  severity: 'error',
  since: '0.2.0',
  title: 'A part is chosen, measured or lapped, or its holes are cleaned, while a joint is closed over it.',
  flow: ({ graph, layout, relations }, report) => {
    const { procedure } = graph;
    /** The joint over a part, where the part may be in place and the joint on. A joint that is only put on still lifts off. */
    const closedOver = (part: string, state: AbstractState) =>
      !state.mayBeIn(part)
        ? undefined
        : relations
            .closedBy(part)
            .find((one) => state.mayBeIn(one.part) && state.may(layout.joints.get(one.part)!, ~joint.apart));
    const overIt = (step: Step, object: StepObject, state: AbstractState) => {
      if (object.kind === 'face') {
        const face = relations.face(object.name);
        const met = face.meets === null ? undefined : closedOver(relations.face(face.meets).part, state);
        return closedOver(face.part, state) ?? met;
      }
      // Lift, end play and the like are measured with the part in place; the size of a shim is not.
      if (step.verb === 'measure' && relations.part(object.name).chosenFrom === null) return undefined;
      return closedOver(object.name, state);
    };
    return {
      step: on(['choose', 'measure', 'lap', 'clean-holes'], ({ step, block, before, path }) => {
        // Written in the list of a check: the check itself is reported as impossible there.
        if ('inline' in block && block.inline) return;
        for (const object of step.objects) {
          const over = overIt(step, object, before);
          if (over === undefined) continue;
          const since = before.since(layout.joints.get(over.part)!);
          report({
            at: step,
            source: object.source,
            path,
            since,
            rootCause: inPlaceCause(relations, before, over.part),
            message: say`${object.kind === 'face' ? capital(faceWords(procedure, object.name)) : say`The ${partWords(procedure, object.name)}`} is shut in under the ${partWords(procedure, over.part)}.`,
            why: say`nobody can reach it${step.verb === 'clean-holes' ? say`, and what the wire pushes in stays in` : ''}.`,
            help: say`Slacken and remove ${over.part}, and whatever is in between, before this step.`,
          });
        }
      }),
    };
  },
};
