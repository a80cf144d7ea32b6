import type { Quantity, UnitName } from '../quantities/types.ts';
import { base, quantityOf } from './measured.ts';

/** Torque for a preload by the nut factor: `T = K · F · d` (Shigley, Mechanical Engineering Design). Null: a figure is not over nothing. */
export function torqueByFactor(
  preload: Quantity,
  diameter: Quantity,
  factor: number,
  unit: UnitName = 'N·m',
): Quantity | null {
  if (!(base(preload) > 0 && base(diameter) > 0 && factor > 0)) return null;
  return quantityOf(factor * base(preload) * base(diameter), unit);
}

/** Preload that a torque brings by the nut factor: `F = T / (K · d)`. Null: a figure is not over nothing. */
export function preloadByFactor(
  torque: Quantity,
  diameter: Quantity,
  factor: number,
  unit: UnitName = 'N',
): Quantity | null {
  if (!(base(torque) > 0 && base(diameter) > 0 && factor > 0)) return null;
  return quantityOf(base(torque) / (factor * base(diameter)), unit);
}

/** A thread and the face under its head, with the friction of both. */
export interface Thread {
  readonly pitch: Quantity;
  /** Mean radius of the thread, half its pitch diameter. */
  readonly threadRadius: Quantity;
  readonly threadFriction: number;
  /** Mean radius of the face that turns under the head. */
  readonly faceRadius: Quantity;
  readonly faceFriction: number;
}

/**
 * Torque for a preload, long form for 60° threads: `T = F · (P/2π + µt·rt/cos 30° + µn·rn)`. Null: a length is not over
 * nothing, or a friction is under nothing.
 */
export function torqueByFriction(preload: Quantity, thread: Thread, unit: UnitName = 'N·m'): Quantity | null {
  const [force, pitch] = [base(preload), base(thread.pitch)];
  const [rt, rn] = [base(thread.threadRadius), base(thread.faceRadius)];
  if (!(force > 0 && pitch > 0 && rt > 0 && rn > 0 && thread.threadFriction >= 0 && thread.faceFriction >= 0))
    return null;
  const arm = pitch / (2 * Math.PI) + (thread.threadFriction * rt) / Math.cos(Math.PI / 6) + thread.faceFriction * rn;
  return quantityOf(force * arm, unit);
}
