import { inPlaceCause, shutInBy } from '../../../analysis/assembly.ts';
import { flag, guard, place } from '../../../analysis/locations.ts';
import { capital, faceWords, partWords } from '../../../analysis/prose.ts';
import { say } from '../../../say/say.ts';
import { on, type Rule } from '../../rule.ts';
import { fixStep, missingBefore, type StepFix } from '../../step-fixes.ts';

/** What a check looks at is covered: by the part it closes against, by its guard, or shut in by a joint. */
export const cannotSee: Rule<StepFix> = {
  code: 'cannot-see',
  severity: 'error',
  since: '0.2.0',
  title: 'A face or part is checked by eye while it is covered or shut in.',
  flow: (flow, report) => ({
    step: on(['check'], ({ step, before, path }) => {
      // Movement is felt from outside, and a sweat under pressure shows outside.
      if (step.moves !== null || step.all) return;
      const { layout, relations } = flow;
      const { procedure } = flow.graph;
      if (before.may(layout.unit.pressure, flag.yes)) return;
      for (const object of step.objects) {
        const covered =
          object.kind === 'face' ? coverOf(object.name) : object.kind === 'part' ? jointOver(object.name) : null;
        if (covered === null) continue;
        report({
          at: step,
          source: object.source,
          path,
          since: covered.since,
          rootCause: covered.cause,
          message: say`${capital(covered.words)} when it is checked.`,
          why: say`nobody can see it, and the tick on the sheet means nothing.`,
          help: say`${covered.help}.`,
          data: covered.guard === null ? undefined : missingBefore(step, `remove ${covered.guard}`),
        });
        return;
      }

      function coverOf(id: string) {
        const face = relations.face(id);
        const cell = layout.faces.get(id)!.guard;
        if (face.guardedBy !== null && before.may(cell, guard.on))
          return {
            words: say`${faceWords(procedure, id)} is under its guard`,
            help: say`Write “remove ${face.guardedBy}” before this step`,
            guard: face.guardedBy,
            since: before.since(cell),
            cause: `guard-on:${id}:${before.since(cell)}`,
          };
        if (face.meets === null) return null;
        const other = relations.face(face.meets).part;
        if (![face.part, other].every((part) => before.may(before.part(part).place, place.in))) return null;
        const since = before.since(before.part(other).place);
        return {
          words: say`${faceWords(procedure, id)} is shut by the ${partWords(procedure, other)}`,
          help: say`Check it with the ${partWords(procedure, other)} off`,
          guard: null,
          since,
          cause: inPlaceCause(relations, before, other),
        };
      }

      function jointOver(part: string) {
        const joint = shutInBy(flow, before, part);
        if (joint === null) return null;
        const since = before.since(before.part(joint).place);
        return {
          words: say`the ${partWords(procedure, part)} is shut in under the ${partWords(procedure, joint)}`,
          help: say`Check it before it goes in, or while it is out`,
          guard: null,
          since,
          cause: inPlaceCause(relations, before, joint),
        };
      }
    }),
  }),
  fix: fixStep,
};
