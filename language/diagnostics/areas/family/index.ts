import type { AnyRule } from '../../rule.ts';
import { circularFit } from './circular-fit.ts';
import { faceWithoutFinish } from './face-without-finish.ts';
import { facesDoNotMeet } from './faces-do-not-meet.ts';
import { jointHoldsNothing } from './joint-holds-nothing.ts';
import { locatedWithoutFeature } from './located-without-feature.ts';
import { locksNothing } from './locks-nothing.ts';
import { noMarksToLineUp } from './no-marks-to-line-up.ts';
import { notAJoint } from './not-a-joint.ts';
import { notItsGuard } from './not-its-guard.ts';
import { nothingToChooseFrom } from './nothing-to-choose-from.ts';
import { oiledThreadUnsaid } from './oiled-thread-unsaid.ts';
import { pairUnsaid } from './pair-unsaid.ts';
import { partUnused } from './part-unused.ts';
import { restsOnNothing } from './rests-on-nothing.ts';
import { setAndNotProven } from './set-and-not-proven.ts';
import { springHeldByNothing } from './spring-held-by-nothing.ts';

/** In the order of root causes: of two rules that report the same cause, the earlier one is reported. */
export const family: readonly AnyRule[] = [
  circularFit,
  faceWithoutFinish,
  facesDoNotMeet,
  jointHoldsNothing,
  locatedWithoutFeature,
  locksNothing,
  noMarksToLineUp,
  notAJoint,
  notItsGuard,
  nothingToChooseFrom,
  oiledThreadUnsaid,
  pairUnsaid,
  partUnused,
  restsOnNothing,
  setAndNotProven,
  springHeldByNothing,
];
