import type { Step } from '../../model/procedure.ts';
import { isGate } from '../../model/steps.ts';

/** Set apart on the page: what a unit must pass, and where it waits for a signature. */
export function isGateStep(step: Step): boolean {
  return isGate(step) || step.verb === 'hold-for' || step.verb === 'sign-off';
}
