import { backLeakUnderdetermined } from './gates/back-leak-underdetermined.ts';
import { comesBackDifferent } from './gates/comes-back-different.ts';
import { gateBeforePrime } from './gates/gate-before-prime.ts';
import { gateInRepair } from './gates/gate-in-repair.ts';
import { gateMissing } from './gates/gate-missing.ts';
import { gateOutOfOrder } from './gates/gate-out-of-order.ts';
import { gateStale } from './gates/gate-stale.ts';
import { gateWithoutFailPath } from './gates/gate-without-fail-path.ts';
import { gaugeOpenWhilePulsing } from './gates/gauge-open-while-pulsing.ts';
import { gaugeShutWhileReading } from './gates/gauge-shut-while-reading.ts';
import { leftConnected } from './gates/left-connected.ts';
import { notOnTheTester } from './gates/not-on-the-tester.ts';
import { openedBeforeTested } from './gates/opened-before-tested.ts';
import { openedUnderPressure } from './gates/opened-under-pressure.ts';
import { partNotChecked } from './gates/part-not-checked.ts';
import { readingNotTakenYet } from './gates/reading-not-taken-yet.ts';
import { repairChangesNothing } from './gates/repair-changes-nothing.ts';
import { repairNeverReturns } from './gates/repair-never-returns.ts';
import { repairUnbounded } from './gates/repair-unbounded.ts';
import { speedNotStated } from './gates/speed-not-stated.ts';
import { testerNotChecked } from './gates/tester-not-checked.ts';
import { verdictMissing } from './gates/verdict-missing.ts';
import type { AnyRule } from './rule.ts';

/** In order of precedence: if two rules report the same cause, the earlier one wins. */
export const gates: readonly AnyRule[] = [
  gateInRepair,
  comesBackDifferent,
  gateBeforePrime,
  gateMissing,
  readingNotTakenYet,
  gateStale,
  gateOutOfOrder,
  gateWithoutFailPath,
  leftConnected,
  notOnTheTester,
  openedUnderPressure,
  openedBeforeTested,
  repairChangesNothing,
  repairNeverReturns,
  repairUnbounded,
  gaugeOpenWhilePulsing,
  gaugeShutWhileReading,
  speedNotStated,
  backLeakUnderdetermined,
  testerNotChecked,
  partNotChecked,
  verdictMissing,
];
