import { gateBeforePrime } from './gates/gate-before-prime.ts';
import { gateMissing } from './gates/gate-missing.ts';
import { gateStale } from './gates/gate-stale.ts';
import { gateWithoutFailPath } from './gates/gate-without-fail-path.ts';
import { leftConnected } from './gates/left-connected.ts';
import { notOnTheTester } from './gates/not-on-the-tester.ts';
import { openedUnderPressure } from './gates/opened-under-pressure.ts';
import { repairChangesNothing } from './gates/repair-changes-nothing.ts';
import { repairUnbounded } from './gates/repair-unbounded.ts';
import type { Rule } from './rule.ts';

/** In the order of causes: where two rules speak of one cause, the earlier one is heard. */
export const gates: readonly Rule[] = [
  gateBeforePrime,
  gateMissing,
  gateStale,
  gateWithoutFailPath,
  leftConnected,
  notOnTheTester,
  openedUnderPressure,
  repairChangesNothing,
  repairUnbounded,
];
