import { airPressureTooHigh } from './hazards/air-pressure-too-high.ts';
import { bathOverFlashPoint } from './hazards/bath-over-flash-point.ts';
import { dangerUnsaid } from './hazards/danger-unsaid.ts';
import { hazardAfterStep } from './hazards/hazard-after-step.ts';
import { signalWordTooWeak } from './hazards/signal-word-too-weak.ts';
import type { AnyRule } from './rule.ts';

/** In order of precedence: if two rules report the same cause, the earlier one wins. */
export const hazards: readonly AnyRule[] = [
  airPressureTooHigh,
  bathOverFlashPoint,
  hazardAfterStep,
  signalWordTooWeak,
  dangerUnsaid,
];
