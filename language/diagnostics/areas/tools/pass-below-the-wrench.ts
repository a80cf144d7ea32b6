import { toolWords, workedOut } from '../../../analysis/tool-words.ts';
import { workAt } from '../../../analysis/tool-work.ts';
import { aimOf, atHand, isAt, namedTools } from '../../../analysis/tools.ts';
import type { StepOf } from '../../../model/procedure.ts';
import { decimalValue, exactText } from '../../../quantities/decimal.ts';
import { compare } from '../../../quantities/index.ts';
import type { Quantity } from '../../../quantities/types.ts';
import { listed, say } from '../../../say/say.ts';
import type { Rule } from '../../rule.ts';

/** The first passes of a joint are below the scale of the wrench that its full torque is set on. */
export const passBelowTheWrench: Rule = {
  code: 'pass-below-the-wrench',
  severity: 'warning',
  since: '0.2.0',
  title: 'A pass of a joint is below the scale of its wrench.',
  eachStep(step, setting, report) {
    if (step.verb !== 'torque' || step.passes.length === 0) return;
    for (const work of workAt(setting, step)) {
      if (work.does !== 'set') continue;
      const named = namedTools(setting, work).filter((asset) => isAt(work.station, asset));
      const wrenches = named.length > 0 ? named : step.tools.length > 0 ? [] : atHand(setting, work);
      const pass = work.limits
        .flatMap(({ limit }) => passesOf(step, aimOf(limit)))
        .find(
          (one) =>
            wrenches.length > 0 && wrenches.every(({ range }) => range !== null && compare(one, range.low) === -1),
        );
      if (pass === undefined) continue;
      return report({
        at: step,
        message: say`A pass of ${workedOut(pass)} is below the scale of ${listed(wrenches.map(toolWords))}.`,
        why: say`the wrench never clicks there, and the first bolt takes all that the others should share.`,
        help: say`Name a smaller wrench for the first passes as well, begin higher, or do them “by hand” in words.`,
      });
    }
  },
};

function passesOf({ passes }: StepOf<'torque'>, full: Quantity | null): Quantity[] {
  return passes.flatMap((pass) => {
    if (pass.unit !== '%') return pass;
    if (full === null) return [];
    return { number: exactText(decimalValue(full.number).mul(decimalValue(pass.number)).div(100)), unit: full.unit };
  });
}
