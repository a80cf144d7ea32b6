import { judgedLimits } from '../../../analysis/limits.ts';
import { age, allSteps } from '../../../analysis/locations.ts';
import { partWords } from '../../../analysis/prose.ts';
import { say } from '../../../say/say.ts';
import { on, type Rule } from '../../rule.ts';

/** A solid bolt that is turned by an angle goes back in, and nobody measures whether it has stretched. */
export const stretchedBoltReused: Rule = {
  code: 'stretched-bolt-reused',
  severity: 'warning',
  since: '0.2.0',
  title: 'A bolt that is turned by an angle goes back in unmeasured.',
  flow: ({ graph, relations }, report) => {
    const { procedure } = graph;
    const measured = new Set(
      allSteps(procedure).flatMap((step) => (step.verb === 'measure' ? step.objects.map(({ name }) => name) : [])),
    );
    return {
      looksAround: true,
      step: on(['torque'], ({ step, before, path }) => {
        if (
          step.limit === null ||
          !judgedLimits(procedure, step, step.limit).some(({ limit }) => limit.form === 'then')
        )
          return;
        for (const object of step.objects) {
          const { solid, allow } = {
            solid: null,
            ...relations.joint(object.name),
            allow: relations.part(object.name).allow,
          };
          const { base, renewed } = relations.part(object.name);
          if (solid === null || renewed || measured.has(object.name)) continue;
          if (!before.may(before.part(object.name).age, age.found)) continue;
          report({
            at: step,
            source: object.source,
            path,
            allow,
            rootCause: `stretched:${base}`,
            message: say`The ${partWords(procedure, object.name)} is turned by an angle, which stretches it, and the old one goes back in unmeasured.`,
            why: say`a bolt that has yielded once necks at the second turn, and holds less or breaks.`,
            help: say`Write “renewed” at ${base} in the family, or measure its length against a limit before it goes in.`,
          });
        }
      }),
    };
  },
};
