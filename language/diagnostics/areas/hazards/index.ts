import type { AnyRule } from '../../rule.ts';
import { airPressureTooHigh } from './air-pressure-too-high.ts';
import { bathOverFlashPoint } from './bath-over-flash-point.ts';
import { dangerUnsaid } from './danger-unsaid.ts';
import { hazardAfterStep } from './hazard-after-step.ts';
import { signalWordTooWeak } from './signal-word-too-weak.ts';

/** In the order of causes: where two rules speak of one cause, the earlier one is heard. */
export const hazards: readonly AnyRule[] = [
  airPressureTooHigh,
  bathOverFlashPoint,
  hazardAfterStep,
  signalWordTooWeak,
  dangerUnsaid,
];
