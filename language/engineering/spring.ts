import type { Quantity, UnitName } from '../quantities/types.ts';
import { base, quantityOf } from './measured.ts';

/** A round-wire helical compression spring. */
export interface Spring {
  /** Shear modulus of the wire, a pressure. */
  readonly modulus: Quantity;
  readonly wire: Quantity;
  /** Mean diameter of the coil, middle of wire to middle of wire. */
  readonly coil: Quantity;
  /** Coils that work, without the closed ends. */
  readonly coils: number;
}

/**
 * Stiffness `G d⁴ / (8 D³ n)` (Shigley, Mechanical Engineering Design, helical compression springs). Null: a figure is
 * not over nothing, or the wire is as thick as the coil is wide.
 */
export function springStiffness({ modulus, wire, coil, coils }: Spring, unit: UnitName = 'N/mm'): Quantity | null {
  const [g, d, mean] = [base(modulus), base(wire), base(coil)];
  if (!(g > 0 && d > 0 && mean > d && coils > 0)) return null;
  return quantityOf((g * d ** 4) / (8 * mean ** 3 * coils), unit);
}
