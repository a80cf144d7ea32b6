import type { AnyRule } from '../../rule.ts';
import { cannotReachTheLock } from './cannot-reach-the-lock.ts';
import { chosenWhileInPlace } from './chosen-while-in-place.ts';
import { discardedAndNotRenewed } from './discarded-and-not-renewed.ts';
import { guardStillInPlace } from './guard-still-in-place.ts';
import { jointNotSlackened } from './joint-not-slackened.ts';
import { jointSlackenedThenLeft } from './joint-slackened-then-left.ts';
import { leftHandTight } from './left-hand-tight.ts';
import { linedUpTooLate } from './lined-up-too-late.ts';
import { markWornAway } from './mark-worn-away.ts';
import { marksNotLinedUp } from './marks-not-lined-up.ts';
import { needleNotLoaded } from './needle-not-loaded.ts';
import { newPartNotWashed } from './new-part-not-washed.ts';
import { noTighteningPattern } from './no-tightening-pattern.ts';
import { notCheckedFree } from './not-checked-free.ts';
import { notClamped } from './not-clamped.ts';
import { nothingToFitOn } from './nothing-to-fit-on.ts';
import { oldPartRefitted } from './old-part-refitted.ts';
import { partHandledTwice } from './part-handled-twice.ts';
import { partLeftBehind } from './part-left-behind.ts';
import { partLeftOut } from './part-left-out.ts';
import { partNotLocated } from './part-not-located.ts';
import { partStillHeld } from './part-still-held.ts';
import { readingBeforeLock } from './reading-before-lock.ts';
import { runDry } from './run-dry.ts';
import { setWhileLocked } from './set-while-locked.ts';
import { settingNotLocked } from './setting-not-locked.ts';
import { springLetFly } from './spring-let-fly.ts';
import { springNotBackedOff } from './spring-not-backed-off.ts';
import { stillClamped } from './still-clamped.ts';
import { stretchedBoltReused } from './stretched-bolt-reused.ts';
import { threadsDry } from './threads-dry.ts';
import { torqueOutOfOrder } from './torque-out-of-order.ts';
import { unclampedAnother } from './unclamped-another.ts';
import { unionLeftHandTight } from './union-left-hand-tight.ts';
import { wayNotClear } from './way-not-clear.ts';

/** In order of precedence: if two rules report the same cause, the earlier one wins. */
export const order: readonly AnyRule[] = [
  needleNotLoaded,
  jointNotSlackened,
  readingBeforeLock,
  settingNotLocked,
  // “Slackened” says more than “hand-tight”.
  jointSlackenedThenLeft,
  unionLeftHandTight,
  leftHandTight,
  setWhileLocked,
  springNotBackedOff,
  notClamped,
  // “Discarded” says more than “missing”.
  oldPartRefitted,
  discardedAndNotRenewed,
  nothingToFitOn,
  partHandledTwice,
  partLeftOut,
  partLeftBehind,
  partNotLocated,
  marksNotLinedUp,
  guardStillInPlace,
  partStillHeld,
  chosenWhileInPlace,
  newPartNotWashed,
  stillClamped,
  torqueOutOfOrder,
  noTighteningPattern,
  notCheckedFree,
  wayNotClear,
  threadsDry,
  runDry,
  linedUpTooLate,
  cannotReachTheLock,
  unclampedAnother,
  markWornAway,
  springLetFly,
  stretchedBoltReused,
];
