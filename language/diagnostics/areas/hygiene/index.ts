import type { AnyRule } from '../../rule.ts';
import { circularFit } from '../family/circular-fit.ts';
import { faceWithoutFinish } from '../family/face-without-finish.ts';
import { facesDoNotMeet } from '../family/faces-do-not-meet.ts';
import { jointHoldsNothing } from '../family/joint-holds-nothing.ts';
import { locatedWithoutFeature } from '../family/located-without-feature.ts';
import { locksNothing } from '../family/locks-nothing.ts';
import { noMarksToLineUp } from '../family/no-marks-to-line-up.ts';
import { notAJoint } from '../family/not-a-joint.ts';
import { notItsGuard } from '../family/not-its-guard.ts';
import { nothingToChooseFrom } from '../family/nothing-to-choose-from.ts';
import { oiledThreadUnsaid } from '../family/oiled-thread-unsaid.ts';
import { pairUnsaid } from '../family/pair-unsaid.ts';
import { partUnused } from '../family/part-unused.ts';
import { restsOnNothing } from '../family/rests-on-nothing.ts';
import { setAndNotProven } from '../family/set-and-not-proven.ts';
import { springHeldByNothing } from '../family/spring-held-by-nothing.ts';
import { allowWithoutEffect } from '../language/allow-without-effect.ts';
import { allowWithoutReason } from '../language/allow-without-reason.ts';
import { duplicateName } from '../language/duplicate-name.ts';
import { stepUnreachable } from '../language/step-unreachable.ts';
import { syntax } from '../language/syntax.ts';
import { unknownName } from '../language/unknown-name.ts';

/** In the order of causes: where two rules speak of one cause, the earlier one is heard. */
export const hygiene: readonly AnyRule[] = [
  allowWithoutEffect,
  allowWithoutReason,
  circularFit,
  duplicateName,
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
  stepUnreachable,
  syntax,
  unknownName,
];
