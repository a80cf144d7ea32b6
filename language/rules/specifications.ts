import type { AnyRule } from './rule.ts';
import { acceptMissing } from './specifications/accept-missing.ts';
import { checkForWhat } from './specifications/check-for-what.ts';
import { chooseForWhat } from './specifications/choose-for-what.ts';
import { fixtureMissing } from './specifications/fixture-missing.ts';
import { fluidMissing } from './specifications/fluid-missing.ts';
import { holdHowLong } from './specifications/hold-how-long.ts';
import { holdNotBelowOpening } from './specifications/hold-not-below-opening.ts';
import { inServiceMissing } from './specifications/in-service-missing.ts';
import { limitEmpty } from './specifications/limit-empty.ts';
import { limitMissing } from './specifications/limit-missing.ts';
import { noTolerance } from './specifications/no-tolerance.ts';
import { numberMissingSpec } from './specifications/number-missing-spec.ts';
import { pressureMissing } from './specifications/pressure-missing.ts';
import { primeHow } from './specifications/prime-how.ts';
import { rateMissing } from './specifications/rate-missing.ts';
import { setByWhat } from './specifications/set-by-what.ts';
import { sourceMissing } from './specifications/source-missing.ts';
import { specUnused } from './specifications/spec-unused.ts';
import { targetOutsideLimit } from './specifications/target-outside-limit.ts';
import { torqueMissing } from './specifications/torque-missing.ts';
import { unitPairDisagrees } from './specifications/unit-pair-disagrees.ts';
import { wrongKindOfUnit } from './specifications/wrong-kind-of-unit.ts';

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
];
