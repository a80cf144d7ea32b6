import { gateBeforePrime } from './gates/gate-before-prime.ts';
import { gateMissing } from './gates/gate-missing.ts';
import { gateStale } from './gates/gate-stale.ts';
import { gateWithoutFailPath } from './gates/gate-without-fail-path.ts';
import { leftConnected } from './gates/left-connected.ts';
import { notOnTheTester } from './gates/not-on-the-tester.ts';
import { openedUnderPressure } from './gates/opened-under-pressure.ts';
import { repairChangesNothing } from './gates/repair-changes-nothing.ts';
import { repairUnbounded } from './gates/repair-unbounded.ts';
import { airPressureTooHigh } from './hazards/air-pressure-too-high.ts';
import { hazardAfterStep } from './hazards/hazard-after-step.ts';
import { allowWithoutEffect } from './hygiene/allow-without-effect.ts';
import { circularFit } from './hygiene/circular-fit.ts';
import { duplicateName } from './hygiene/duplicate-name.ts';
import { syntax } from './hygiene/syntax.ts';
import { unknownName } from './hygiene/unknown-name.ts';
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
import { bareLappedFace } from './protection/bare-lapped-face.ts';
import { fittedDirty } from './protection/fitted-dirty.ts';
import { fittedWet } from './protection/fitted-wet.ts';
import { keptPartsAtTheWheel } from './protection/kept-parts-at-the-wheel.ts';
import { lappedFaceNotChecked } from './protection/lapped-face-not-checked.ts';
import { lappedPairFittedDry } from './protection/lapped-pair-fitted-dry.ts';
import { nothingDoneHere } from './protection/nothing-done-here.ts';
import { openPortInDirt } from './protection/open-port-in-dirt.ts';
import { partsLeftLoose } from './protection/parts-left-loose.ts';
import { passageBlocked } from './protection/passage-blocked.ts';
import { noSignOff } from './record/no-sign-off.ts';
import { notMarked } from './record/not-marked.ts';
import type { Area, Rule } from './rule.ts';
import { noTolerance } from './specifications/no-tolerance.ts';
import { numberMissingSpec } from './specifications/number-missing-spec.ts';
import { pressureMissing } from './specifications/pressure-missing.ts';
import { torqueMissing } from './specifications/torque-missing.ts';
import { unitPairDisagrees } from './specifications/unit-pair-disagrees.ts';
import { wrongKindOfUnit } from './specifications/wrong-kind-of-unit.ts';

/**
 * All rules, by area. The order is that of causes: where two rules speak of one cause, the earlier one is heard.
 * rules.test.ts holds this list against the files and the pages.
 */
export const rulesByArea: Readonly<Record<Area, readonly Rule[]>> = {
  hygiene: [allowWithoutEffect, circularFit, duplicateName, syntax, unknownName],
  specifications: [noTolerance, numberMissingSpec, pressureMissing, torqueMissing, unitPairDisagrees, wrongKindOfUnit],
  hazards: [airPressureTooHigh, hazardAfterStep],
  order: [
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
  ],
  protection: [
    bareLappedFace,
    fittedDirty,
    fittedWet,
    keptPartsAtTheWheel,
    lappedFaceNotChecked,
    lappedPairFittedDry,
    nothingDoneHere,
    openPortInDirt,
    partsLeftLoose,
    passageBlocked,
  ],
  gates: [
    gateBeforePrime,
    gateMissing,
    gateStale,
    gateWithoutFailPath,
    leftConnected,
    notOnTheTester,
    openedUnderPressure,
    repairChangesNothing,
    repairUnbounded,
  ],
  record: [noSignOff, notMarked],
};

export const rules: readonly Rule[] = Object.values(rulesByArea).flat();

/** Area of a rule; null for a name that is no rule. */
export function areaOf(code: string): Area | null {
  const found = Object.entries(rulesByArea).find(([, list]) => list.some((rule) => rule.code === code));
  return found === undefined ? null : (found[0] as Area);
}

export type { Area, Rule } from './rule.ts';
