import { allowWithoutEffect } from './hygiene/allow-without-effect.ts';
import { allowWithoutReason } from './hygiene/allow-without-reason.ts';
import { circularFit } from './hygiene/circular-fit.ts';
import { duplicateName } from './hygiene/duplicate-name.ts';
import { faceWithoutFinish } from './hygiene/face-without-finish.ts';
import { facesDoNotMeet } from './hygiene/faces-do-not-meet.ts';
import { jointHoldsNothing } from './hygiene/joint-holds-nothing.ts';
import { locatedWithoutFeature } from './hygiene/located-without-feature.ts';
import { locksNothing } from './hygiene/locks-nothing.ts';
import { noMarksToLineUp } from './hygiene/no-marks-to-line-up.ts';
import { notAJoint } from './hygiene/not-a-joint.ts';
import { notItsGuard } from './hygiene/not-its-guard.ts';
import { nothingToChooseFrom } from './hygiene/nothing-to-choose-from.ts';
import { oiledThreadUnsaid } from './hygiene/oiled-thread-unsaid.ts';
import { pairUnsaid } from './hygiene/pair-unsaid.ts';
import { partUnused } from './hygiene/part-unused.ts';
import { restsOnNothing } from './hygiene/rests-on-nothing.ts';
import { setAndNotProven } from './hygiene/set-and-not-proven.ts';
import { springHeldByNothing } from './hygiene/spring-held-by-nothing.ts';
import { stepUnreachable } from './hygiene/step-unreachable.ts';
import { syntax } from './hygiene/syntax.ts';
import { unknownName } from './hygiene/unknown-name.ts';
import type { AnyRule } from './rule.ts';

/** In order of precedence: if two rules report the same cause, the earlier one wins. */
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
