import { flag, port } from '../../../analysis/locations.ts';
import { partsWords } from '../../../analysis/prose.ts';
import type { Block, Step, StepOf } from '../../../model/procedure.ts';
import { say } from '../../../say/say.ts';
import { blank } from '../../edits.ts';
import { on, type Rule } from '../../rule.ts';
import { fixSteps, missingBefore, missingClause, type StepFix } from '../../step-fixes.ts';

/** Broken loose or torqued with nothing holding the unit: no clamp, fixture or wrench. */
export const notClamped: Rule<readonly StepFix[]> = {
  code: 'not-clamped',
  severity: 'error',
  since: '0.1.0',
  unsafe: true,
  title: 'A joint is broken loose or torqued with nothing holding the unit.',
  flow: ({ graph, layout }, report) => ({
    step: on(['slacken', 'torque', 'lock'], ({ step, block, before, path }) => {
      if (step.holder !== null) return;
      if (!before.may(layout.unit.clamped, flag.no)) return;
      // On the tester the unit is held by its line and holder.
      if (graph.procedure.family.ports.some((one) => before.must(layout.ports.get(one.name)!, port.connected))) return;
      const since = before.since(layout.unit.clamped);
      report({
        at: step,
        path,
        since,
        rootCause: `not-clamped:${since}`,
        message: say`Nothing holds the unit while the ${partsWords(
          graph.procedure,
          step.objects.map((object) => object.name),
        )} is ${step.verb === 'slacken' ? say`broken loose` : say`tightened`}.`,
        why: say`${step.verb === 'slacken' ? say`it turns in the hand, and the wrench slips` : say`it turns in the hand, and the torque is not what the wrench shows`}.`,
        help: say`Clamp it first, or write “held by "…"” in this step.`,
        data: fixOf(step, block),
      });
    }),
  }),
  fix: (steps) => fixSteps(steps),
};

/** What is let go later was to be held; else each step says by what it is held, since one clamp would have held for all. */
function fixOf(step: Step, { steps }: Block): readonly StepFix[] {
  const later = steps.slice(steps.indexOf(step));
  const released = later.find(({ verb }) => verb === 'unclamp')?.objects[0];
  const fixes =
    released === undefined
      ? later.map((one) => (needsHold(one) && one.holder === null ? missingClause(one, `held by ${blank}`) : undefined))
      : [missingBefore(step, `clamp ${released.name}`)];
  return step.call === null ? fixes.flatMap((one) => one ?? []) : [];
}

function needsHold(step: Step): step is StepOf<'slacken' | 'torque' | 'lock'> {
  return step.verb === 'slacken' || step.verb === 'torque' || step.verb === 'lock';
}
