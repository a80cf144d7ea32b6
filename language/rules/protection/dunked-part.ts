import type { Step } from '../../model/procedure.ts';
import { allSteps, guard, place } from '../../replay/cells.ts';
import { shutInBy } from '../closed-in.ts';
import type { Rule } from '../rule.ts';
import { faceWords, partsWords, partWords } from '../words.ts';

/** A part is washed where the bath does not reach it: shut in by a joint, or a face of it under its guard. */
export const dunkedPart: Rule = {
  code: 'dunked-part',
  severity: 'error',
  title: 'A part is washed while it is shut in, or while a face of it is under its guard.',
  replay: (replay, report) => {
    const { program, layout, relations } = replay;
    const { procedure } = program;
    const steps = allSteps(procedure);
    const isWash = (step: Step) => step.verb === 'wash' || step.verb === 'soak';
    return {
      step({ step, before, way }) {
        if (!isWash(step)) return;
        const isOpen = procedure.family.parts.some((part) => before.may(before.part(part.name).place, place.off));
        const shutIn = step.objects.flatMap((object) => {
          const joint = shutInBy(replay, before, object.name);
          // `all` of a unit that is open means what is out of it: what no one has opened stays shut.
          if (joint === null || (step.all && isOpen && before.since[before.part(joint).place] === -1)) return [];
          return [{ object, joint }];
        });
        const [first] = shutIn;
        if (first !== undefined) {
          const since = before.since[before.part(first.joint).place];
          report({
            at: step,
            source: first.object.source,
            way,
            since,
            cause: `shut-in:${first.joint}:${since}`,
            message: `The ${partsWords(
              procedure,
              shutIn.map(({ object }) => object.name),
            )} ${shutIn.length > 1 ? 'are' : 'is'} washed while the ${partWords(procedure, first.joint)} shuts ${shutIn.length > 1 ? 'them' : 'it'} in: the bath does not reach ${shutIn.length > 1 ? 'them' : 'it'}, and what runs in does not run out. Take ${shutIn.length > 1 ? 'them' : 'it'} out before, or clean the outside only.`,
          });
          return;
        }
        for (const object of step.objects) {
          // A first wash with the guard on does no harm where another follows.
          if (steps.slice(steps.indexOf(step) + 1).some((later) => isWash(later) && names(later, object.name)))
            continue;
          const face = relations
            .faces(object.name)
            .find((one) => one.guardedBy !== null && before.must(layout.faces.get(one.id)!.guard, guard.on));
          if (face === undefined) continue;
          const since = before.since[layout.faces.get(face.id)!.guard];
          report({
            at: step,
            source: object.source,
            way,
            since,
            cause: `guard-on:${face.id}:${since}`,
            message: `The ${partWords(procedure, object.name)} is washed with the guard on ${faceWords(procedure, face.id)}: a guard covers a face and does not clean it. Write “remove ${face.guardedBy}” before.`,
          });
          return;
        }
      },
    };
  },
};

function names(step: Step, part: string): boolean {
  return step.objects.some((object) => object.name === part);
}
