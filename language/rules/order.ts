import { jointNotSlackened } from './order/joint-not-slackened.ts';
import { leftHandTight } from './order/left-hand-tight.ts';
import { notClamped } from './order/not-clamped.ts';
import { nothingToFitOn } from './order/nothing-to-fit-on.ts';
import { oldPartRefitted } from './order/old-part-refitted.ts';
import { partHandledTwice } from './order/part-handled-twice.ts';
import { partLeftOut } from './order/part-left-out.ts';
import { partNotLocated } from './order/part-not-located.ts';
import { partStillHeld } from './order/part-still-held.ts';
import { stillClamped } from './order/still-clamped.ts';
import { torqueOutOfOrder } from './order/torque-out-of-order.ts';
import { wayNotClear } from './order/way-not-clear.ts';
import type { Rule } from './rule.ts';

/** In the order of causes: where two rules speak of one cause, the earlier one is heard. */
export const order: readonly Rule[] = [
  jointNotSlackened,
  leftHandTight,
  notClamped,
  nothingToFitOn,
  oldPartRefitted,
  partHandledTwice,
  partLeftOut,
  partNotLocated,
  partStillHeld,
  stillClamped,
  torqueOutOfOrder,
  wayNotClear,
];
