import type { AnyRule } from '../../rule.ts';
import { acceptMissing } from './accept-missing.ts';
import { ceilingUnderTheWindow } from './ceiling-under-the-window.ts';
import { checkForWhat } from './check-for-what.ts';
import { chooseForWhat } from './choose-for-what.ts';
import { conditionsMissing } from './conditions-missing.ts';
import { fallThatRises } from './fall-that-rises.ts';
import { figureOfAnotherPart } from './figure-of-another-part.ts';
import { figuresFarApart } from './figures-far-apart.ts';
import { fixtureMissing } from './fixture-missing.ts';
import { fluidMissing } from './fluid-missing.ts';
import { holdHowLong } from './hold-how-long.ts';
import { holdNotBelowOpening } from './hold-not-below-opening.ts';
import { inServiceMissing } from './in-service-missing.ts';
import { limitEmpty } from './limit-empty.ts';
import { limitMissing } from './limit-missing.ts';
import { limitOfAnotherTest } from './limit-of-another-test.ts';
import { noTolerance } from './no-tolerance.ts';
import { numberMissingSpec } from './number-missing-spec.ts';
import { oneJointTwoFigures } from './one-joint-two-figures.ts';
import { openToTheUnsafeSide } from './open-to-the-unsafe-side.ts';
import { planContradictsItself } from './plan-contradicts-itself.ts';
import { pressureMissing } from './pressure-missing.ts';
import { primeHow } from './prime-how.ts';
import { rateMissing } from './rate-missing.ts';
import { setByWhat } from './set-by-what.ts';
import { sourceMissing } from './source-missing.ts';
import { specUnused } from './spec-unused.ts';
import { spreadNeverFails } from './spread-never-fails.ts';
import { targetOutsideLimit } from './target-outside-limit.ts';
import { torqueMissing } from './torque-missing.ts';
import { unitPairDisagrees } from './unit-pair-disagrees.ts';
import { wordsAgainstFigure } from './words-against-figure.ts';
import { wrongKindOfUnit } from './wrong-kind-of-unit.ts';

/** In order of precedence: if two rules report the same cause, the earlier one wins. */
export const specifications: readonly AnyRule[] = [
  acceptMissing,
  checkForWhat,
  chooseForWhat,
  fixtureMissing,
  fluidMissing,
  holdHowLong,
  holdNotBelowOpening,
  inServiceMissing,
  limitEmpty,
  limitMissing,
  noTolerance,
  numberMissingSpec,
  pressureMissing,
  primeHow,
  rateMissing,
  setByWhat,
  sourceMissing,
  specUnused,
  targetOutsideLimit,
  torqueMissing,
  unitPairDisagrees,
  wrongKindOfUnit,
  conditionsMissing,
  planContradictsItself,
  figuresFarApart,
  oneJointTwoFigures,
  openToTheUnsafeSide,
  ceilingUnderTheWindow,
  fallThatRises,
  limitOfAnotherTest,
  spreadNeverFails,
  figureOfAnotherPart,
  wordsAgainstFigure,
];
