import { joint as jointBits, noFilm, place, wet } from '../../../analysis/locations.ts';
import { partWords } from '../../../analysis/prose.ts';
import { own } from '../../../model/steps.ts';
import { say } from '../../../say/say.ts';
import { on, type Rule } from '../../rule.ts';

/** Threads that are to be oiled are run down dry, or are oiled when they are tight. */
export const threadsDry: Rule = {
  code: 'threads-dry',
  severity: 'warning',
  since: '0.2.0',
  title: 'Threads that are to be oiled are run down dry, or are oiled when they are down already.',
  flow: ({ graph, layout, relations }, report) => ({
    step: on(['run-down', 'torque', 'oil'], ({ step, before, path }) => {
      for (const object of step.objects) {
        const joint = relations.joint(object.name);
        const cell = joint === undefined ? undefined : layout.joints.get(joint.part);
        if (joint?.oiled !== true || cell === undefined || object.kind !== 'part') continue;
        const part = before.part(object.name);
        const isDown = before.must(cell, jointBits.run | jointBits.torqued | jointBits.locked);
        const words = partWords(graph.procedure, object.name);
        if (step.verb === 'oil') {
          if (before.must(part.place, place.guard))
            report({
              at: step,
              source: object.source,
              path,
              since: before.since(part.place),
              rootCause: `thread:${joint.part}:${before.since(part.place)}`,
              message: say`The ${words} is oiled while it is on as a guard.`,
              why: say`no oil gets between the threads there, and the torque goes into friction instead of clamp.`,
              help: say`Write “remove ${relations.part(object.name).base}” before this step.`,
            });
          if (!isDown || before.since(cell) < 0) continue;
          report({
            at: step,
            source: object.source,
            path,
            since: before.since(cell),
            rootCause: `thread:${joint.part}:${before.since(cell)}`,
            message: say`The ${words} is oiled when it is already run down.`,
            why: say`no oil gets between the threads there, and the torque goes into friction instead of clamp.`,
            help: say`Oil it before “run-down ${relations.part(object.name).base}”.`,
          });
          continue;
        }
        // Run down before: that is where it was judged.
        if (isDown || (step.verb === 'torque' && before.must(cell, jointBits.slack | jointBits.found))) continue;
        if (own(step, 'oiled') === true || !before.may(part.wet, noFilm | wet.solvent | wet.water)) continue;
        report({
          at: step,
          source: object.source,
          path,
          since: before.since(part.wet),
          rootCause: `thread:${joint.part}:${before.since(part.wet)}`,
          message: say`The ${words} is run down dry, and the family says “threads oiled”.`,
          why: say`dry, the same torque gives far less clamp, and the threads gall.`,
          help: say`Write “oil ${relations.part(object.name).base} with” and the oil before this step.`,
        });
      }
    }),
  }),
};
