import { age, looked, place } from '../../../analysis/locations.ts';
import { capital, faceWords, listed } from '../../../analysis/prose.ts';
import { closesUp, namedIn } from '../../../model/steps.ts';
import { say } from '../../../say/say.ts';
import { blank } from '../../edits.ts';
import { on, type Rule } from '../../rule.ts';
import { fixStep, missingBefore, type StepFix } from '../../step-fixes.ts';

/** A lapped face is closed without having been inspected since the unit came in. A new part counts as inspected. */
export const lappedFaceNotChecked: Rule<StepFix> = {
  code: 'lapped-face-not-checked',
  severity: 'error',
  since: '0.1.0',
  title: 'A lapped face is closed, and nobody has looked at it since the unit came in.',
  flow: ({ graph, layout, relations }, report) => ({
    step: on(['fit', 'run-down'], ({ step, before, path }) => {
      if (!closesUp(step)) return;
      const objects = namedIn(step);
      const names = objects.map((object) => object.name);
      const unseen = graph.procedure.family.faces.filter((face) => {
        if (face.meets === null || face.finish === null) return false;
        const other = relations.face(face.meets);
        const closes =
          [face.part, other.part].every((part) => names.includes(part) || before.mustBeIn(part)) &&
          [face.part, other.part].some((part) => names.includes(part) && !before.mustBeIn(part));
        if (!closes) return false;
        const cell = layout.faces.get(face.id)!.looked;
        if (!before.may(cell, looked.no) || before.must(before.part(face.part).age, age.new)) return false;
        return !before.must(before.part(face.part).place, place.gone);
      });
      const [first] = unseen;
      if (first === undefined) return;
      const touching = [first.part, relations.face(first.meets!).part];
      report({
        at: step,
        source: objects.find((object) => touching.includes(object.name))!.source,
        path,
        rootCause: `looked:${first.id}`,
        message: say`${capital(listed(unseen.map((face) => faceWords(graph.procedure, face.id))))} ${unseen.length > 1 ? say`are` : say`is`} closed here, but no step has looked at ${unseen.length > 1 ? say`them` : say`it`}.`,
        why: say`a scored or stained face leaks, and is found only on the tester.`,
        help: say`Write “check ${unseen.map((face) => face.id).join(', ')} "…"” before this step, with what to look for.`,
        data: missingBefore(step, `check ${unseen.map((face) => face.id).join(', ')} ${blank}`),
      });
    }),
  }),
  fix: fixStep,
};
