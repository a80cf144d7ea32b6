import type { AnyRule } from '../../rule.ts';
import { backLeakUnderdetermined } from './back-leak-underdetermined.ts';
import { comesBackDifferent } from './comes-back-different.ts';
import { gateBeforePrime } from './gate-before-prime.ts';
import { gateInRepair } from './gate-in-repair.ts';
import { gateMissing } from './gate-missing.ts';
import { gateOutOfOrder } from './gate-out-of-order.ts';
import { gateStale } from './gate-stale.ts';
import { gateWithoutFailPath } from './gate-without-fail-path.ts';
import { gaugeOpenWhilePulsing } from './gauge-open-while-pulsing.ts';
import { gaugeShutWhileReading } from './gauge-shut-while-reading.ts';
import { leftConnected } from './left-connected.ts';
import { notOnTheTester } from './not-on-the-tester.ts';
import { openedBeforeTested } from './opened-before-tested.ts';
import { openedUnderPressure } from './opened-under-pressure.ts';
import { partNotChecked } from './part-not-checked.ts';
import { readingNotTakenYet } from './reading-not-taken-yet.ts';
import { repairCannotCure } from './repair-cannot-cure.ts';
import { repairChangesNothing } from './repair-changes-nothing.ts';
import { repairNeverReturns } from './repair-never-returns.ts';
import { repairUnbounded } from './repair-unbounded.ts';
import { speedNotStated } from './speed-not-stated.ts';
import { testerNotChecked } from './tester-not-checked.ts';
import { verdictMissing } from './verdict-missing.ts';

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
  repairCannotCure,
];
