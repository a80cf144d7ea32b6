import { age, looked, place } from '../../replay/cells.ts';
import type { Rule } from '../rule.ts';
import { faceWords } from '../words.ts';

/** A lapped face is closed without having been looked at since the unit came in. A new part counts as looked at. */
export const lappedFaceNotChecked: Rule = {
  code: 'lapped-face-not-checked',
  severity: 'error',
  title: 'A lapped face is closed and nobody has looked at it since the unit came in.',
  replay: ({ program, layout, relations }, report) => ({
    step({ step, before, way }) {
      if (step.verb !== 'fit' && step.verb !== 'run-down') return;
      if (step.forTrial) return;
      const objects = [...step.objects, ...step.withObjects];
      const names = objects.map((object) => object.name);
      for (const face of program.procedure.family.faces) {
        if (face.meets === null || face.finish === null) continue;
        const other = relations.face(face.meets);
        const closes = [face.part, other.part].every((part) => names.includes(part) || before.mustBeIn(part)) && [face.part, other.part].some((part) => names.includes(part) && !before.mustBeIn(part));
        if (!closes) continue;
        const cell = layout.faces.get(face.id)!.looked;
        if (!before.may(cell, looked.no) || before.must(before.part(face.part).age, age.new)) continue;
        if (before.must(before.part(face.part).place, place.gone)) continue;
        report({
          at: step,
          source: objects.find((object) => object.name === face.part || object.name === other.part)!.source,
          way,
          cause: `looked:${face.id}`,
          message: `${capital(faceWords(program.procedure, face.id))} is closed here, and no step has looked at it: a scored or stained face leaks and is found on the tester. Add check ${face.id} before.`,
        });
      }
    },
  }),
};

function capital(text: string) {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
