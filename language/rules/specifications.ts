import type { Rule } from './rule.ts';
import { noTolerance } from './specifications/no-tolerance.ts';
import { numberMissingSpec } from './specifications/number-missing-spec.ts';
import { pressureMissing } from './specifications/pressure-missing.ts';
import { torqueMissing } from './specifications/torque-missing.ts';
import { unitPairDisagrees } from './specifications/unit-pair-disagrees.ts';
import { wrongKindOfUnit } from './specifications/wrong-kind-of-unit.ts';

/** In the order of causes: where two rules speak of one cause, the earlier one is heard. */
export const specifications: readonly Rule[] = [
  noTolerance,
  numberMissingSpec,
  pressureMissing,
  torqueMissing,
  unitPairDisagrees,
  wrongKindOfUnit,
];
