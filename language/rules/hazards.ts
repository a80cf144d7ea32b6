import { airPressureTooHigh } from './hazards/air-pressure-too-high.ts';
import { bathOverFlashPoint } from './hazards/bath-over-flash-point.ts';
import { dangerUnsaid } from './hazards/danger-unsaid.ts';
import { hazardAfterStep } from './hazards/hazard-after-step.ts';
import { signalWordTooWeak } from './hazards/signal-word-too-weak.ts';
import type { AnyRule } from './rule.ts';

/** In the order of causes: where two rules speak of one cause, the earlier one is heard. */
export const hazards: readonly AnyRule[] = [
  airPressureTooHigh,
  bathOverFlashPoint,
  hazardAfterStep,
  signalWordTooWeak,
  dangerUnsaid,
];
