import { findSettling, springsOf } from '../../analysis/shims.ts';
import type { Part } from '../../model/family.ts';
import type { Step } from '../../model/procedure.ts';
import { namedIn, own } from '../../model/steps.ts';
import type { Difference } from '../../quantities/types.ts';
import { numbersOf, type PrintContext } from '../print-context.ts';
import { type ForNumbers, forNumbers } from './by-number.ts';

/** A spring that went in new, and what it will lose of the reading that its shim is chosen for. */
export interface SettlingFigure {
  readonly spring: Part;
  readonly amount: Difference;
}

/**
 * Where a shim is chosen under a spring that was renewed earlier in the same block and the spec of the reading says what a
 * new one loses; one for each part number that differs.
 */
export function settlingFigures(
  setting: PrintContext,
  step: Step,
  place: { readonly steps: readonly Step[] },
): ForNumbers<SettlingFigure>[] {
  const choose = own(step, 'choose');
  if (choose == null) return [];
  const { procedure } = setting;
  const earlier = place.steps.slice(
    0,
    place.steps.findIndex(({ key }) => key === step.key),
  );
  const springs = springsOf(procedure, step);
  return forNumbers(numbersOf(setting), (number) => {
    const amount = findSettling(procedure, choose, number);
    const spring = springs.find((part) => earlier.some((one) => isRenewed(part, one, number)));
    return amount === null || spring === undefined ? null : { spring, amount };
  });
}

/** By the step itself, or because it is fitted and always renewed. */
function isRenewed(part: Part, step: Step, number: string | null): boolean {
  const { verb, only } = step;
  if (only !== null && number !== null && !only.includes(number)) return false;
  if (verb !== 'renew' && !(verb === 'fit' && part.renewed)) return false;
  return namedIn(step).some(({ kind, name }) => kind === 'part' && name === part.name);
}
