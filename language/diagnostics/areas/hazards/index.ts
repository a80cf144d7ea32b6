import type { AnyRule } from '../../rule.ts';
import { airPressureTooHigh } from './air-pressure-too-high.ts';
import { bathOverFlashPoint } from './bath-over-flash-point.ts';
import { dangerUnsaid } from './danger-unsaid.ts';
import { hazardAfterStep } from './hazard-after-step.ts';
import { signalWordTooWeak } from './signal-word-too-weak.ts';

/** In order of precedence: if two rules report the same cause, the earlier one wins. */
export const hazards: readonly AnyRule[] = [
  airPressureTooHigh,
  bathOverFlashPoint,
  hazardAfterStep,
  signalWordTooWeak,
  dangerUnsaid,
];
