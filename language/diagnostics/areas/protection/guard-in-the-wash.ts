import { guard } from '../../../analysis/locations.ts';
import { capital, faceWords, partWords } from '../../../analysis/prose.ts';
import { say } from '../../../say/say.ts';
import { on, type Rule } from '../../rule.ts';
import { fixStep, missingBefore, type StepFix } from '../../step-fixes.ts';

/** A part is washed with the guard still on its face: nothing under the guard is washed. */
export const guardInTheWash: Rule<StepFix> = {
  code: 'guard-in-the-wash',
  severity: 'error',
  since: '0.2.0',
  title: 'A part is washed while a guard is on its lapped face.',
  flow: ({ graph, layout, relations }, report) => ({
    looksAround: true,
    step: on(['wash', 'soak', 'rinse'], ({ step, block, before, path }) => {
      // The last rinse of all counts as a wash: the dirt that it leaves is built in.
      const rinsesAll = step.verb === 'rinse' && step.all;
      if (step.verb === 'rinse' && !rinsesAll) return;
      const { procedure } = graph;
      for (const object of step.objects) {
        const face = relations.faces(object.name).find((one) => before.may(layout.faces.get(one.id)!.guard, guard.on));
        if (face === undefined) continue;
        // A rough wash with the guard on does no harm if the stage washes the part again.
        const again = block.steps.slice(block.steps.indexOf(step) + 1);
        if (again.some((later) => later.verb === step.verb && later.objects.some(({ name }) => name === object.name)))
          continue;
        const since = before.since(layout.faces.get(face.id)!.guard);
        const guardWords = face.guardedBy === null ? say`guard` : partWords(procedure, face.guardedBy);
        report({
          at: step,
          source: object.source,
          path,
          since,
          rootCause: `guard-on:${face.id}:${since}`,
          message: say`${capital(faceWords(procedure, face.id))} still has the ${guardWords} on as its guard when the ${partWords(procedure, object.name)} is ${rinsesAll ? say`rinsed` : say`washed`}.`,
          why: say`the dirt stays under the guard.`,
          help: say`Write “remove ${face.guardedBy ?? say`the guard`}” before this step.`,
          data: face.guardedBy === null ? undefined : missingBefore(step, `remove ${face.guardedBy}`),
        });
      }
    }),
  }),
  fix: fixStep,
};
