import { variantParts } from '../../../analysis/assembly.ts';
import { joint, place } from '../../../analysis/locations.ts';
import { partsWords, partWords } from '../../../analysis/prose.ts';
import { say } from '../../../say/say.ts';
import { on, type Rule } from '../../rule.ts';
import { fixStep, missingBefore, type StepFix } from '../../step-fixes.ts';

/** Torqued before it is run down, or with parts inside missing. */
export const torqueOutOfOrder: Rule<StepFix> = {
  code: 'torque-out-of-order',
  severity: 'error',
  since: '0.1.0',
  title: 'A joint is torqued before it is run down, or with parts inside it missing.',
  flow: (flow, report) => {
    const { graph, layout, relations } = flow;
    const { procedure } = graph;
    const mine = variantParts(flow);
    return {
      step: on(['torque', 'lock'], ({ step, before, path }) => {
        for (const object of step.objects) {
          const cell = layout.joints.get(object.name);
          const name = partWords(procedure, object.name);
          if (cell !== undefined && before.may(cell, joint.apart)) {
            report({
              at: step,
              source: object.source,
              path,
              since: before.since(cell),
              rootCause: `apart:${object.name}:${before.since(cell)}`,
              message: say`The ${name} is torqued before it is run down by hand.`,
              why: say`a crossed thread would go unnoticed.`,
              help: say`Run it down first.`,
              data: missingBefore(step, `run-down ${object.name}`),
            });
            continue;
          }
          const missing = [...relations.closure(object.name)].filter(
            (part) =>
              mine(part) && before.may(before.part(part).place, place.off | place.gone | place.sub | place.guard),
          );
          if (missing.length === 0) continue;
          report({
            at: step,
            source: object.source,
            path,
            since: before.since(before.part(missing[0]!).place),
            rootCause: `missing:${missing[0]}:${before.since(before.part(missing[0]!).place)}`,
            message: say`The ${name} is torqued while the ${partsWords(procedure, missing)} inside ${missing.length > 1 ? say`are` : say`is`} not in place.`,
            why: say`the unit is closed without what belongs inside.`,
            help: say`Fit ${missing.length > 1 ? say`them` : say`it`} first.`,
          });
        }
      }),
    };
  },
  fix: fixStep,
};
