import { chosenWhileInPlace } from './order/chosen-while-in-place.ts';
import { discardedAndNotRenewed } from './order/discarded-and-not-renewed.ts';
import { guardStillInPlace } from './order/guard-still-in-place.ts';
import { jointNotSlackened } from './order/joint-not-slackened.ts';
import { jointSlackenedThenLeft } from './order/joint-slackened-then-left.ts';
import { leftHandTight } from './order/left-hand-tight.ts';
import { marksNotLinedUp } from './order/marks-not-lined-up.ts';
import { needleNotLoaded } from './order/needle-not-loaded.ts';
import { newPartNotWashed } from './order/new-part-not-washed.ts';
import { noTighteningPattern } from './order/no-tightening-pattern.ts';
import { notCheckedFree } from './order/not-checked-free.ts';
import { notClamped } from './order/not-clamped.ts';
import { nothingToFitOn } from './order/nothing-to-fit-on.ts';
import { oldPartRefitted } from './order/old-part-refitted.ts';
import { partHandledTwice } from './order/part-handled-twice.ts';
import { partLeftBehind } from './order/part-left-behind.ts';
import { partLeftOut } from './order/part-left-out.ts';
import { partNotLocated } from './order/part-not-located.ts';
import { partStillHeld } from './order/part-still-held.ts';
import { readingBeforeLock } from './order/reading-before-lock.ts';
import { setWhileLocked } from './order/set-while-locked.ts';
import { settingNotLocked } from './order/setting-not-locked.ts';
import { springNotBackedOff } from './order/spring-not-backed-off.ts';
import { stillClamped } from './order/still-clamped.ts';
import { torqueOutOfOrder } from './order/torque-out-of-order.ts';
import { unionLeftHandTight } from './order/union-left-hand-tight.ts';
import { wayNotClear } from './order/way-not-clear.ts';
import type { AnyRule } from './rule.ts';

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
];
