import type { Quantity, UnitName } from '../quantities/types.ts';
import { type Said, say } from '../say/say.ts';
import { base, quantityOf } from './measured.ts';

/** Diameters of a needle: of its guide, and of the seat that it closes. */
export interface Needle {
  readonly guide: Quantity;
  readonly seat: Quantity;
}

/** What is wrong with the diameters, or null. The ring between the two is what the fuel lifts the needle by. */
export function needleProblem({ guide, seat }: Needle): Said | null {
  if (base(guide) <= 0) return say`The guide must have a diameter over nothing.`;
  if (base(seat) < 0) return say`The seat cannot have a diameter under nothing.`;
  if (base(seat) >= base(guide))
    return say`The seat is as wide as the guide or wider: no pressure would lift this needle. Measure both again.`;
  return null;
}

/** `π/4 · (guide² − seat²)`, m². */
export function liftingArea({ guide, seat }: Needle): number {
  return (Math.PI / 4) * (base(guide) ** 2 - base(seat) ** 2);
}

/**
 * Pressure at which a needle lifts: `preload / (π/4 · (guide² − seat²))`. Balance of forces, first opening only: a
 * second spring's rate is given or fitted. Null: see `needleProblem`.
 */
export function openingPressure(preload: Quantity, needle: Needle, unit: UnitName = 'bar'): Quantity | null {
  return needleProblem(needle) === null ? quantityOf(base(preload) / liftingArea(needle), unit) : null;
}

/** Pressure at which it falls shut again, the whole guide being under pressure: `preload / (π/4 · guide²)`. */
export function closingPressure(preload: Quantity, guide: Quantity, unit: UnitName = 'bar'): Quantity | null {
  if (base(guide) <= 0) return null;
  return quantityOf(base(preload) / ((Math.PI / 4) * base(guide) ** 2), unit);
}

/**
 * Seat over guide from two pressures of one needle: `closing / opening = 1 − (seat/guide)²`. Null: it closes at no
 * pressure, or at one that is not under that at which it opens.
 */
export function seatOverGuide(opening: Quantity, closing: Quantity): number | null {
  const ratio = base(closing) / base(opening);
  return ratio > 0 && ratio < 1 ? Math.sqrt(1 - ratio) : null;
}

/**
 * What a unit of shim brings: `stiffness / (π/4 · (guide² − seat²))`. A shim presses the spring by its own thickness.
 * Null: see `needleProblem`, or a spring with no stiffness.
 */
export function shimRateOf(stiffness: Quantity, needle: Needle, unit: UnitName = 'bar per mm'): Quantity | null {
  if (needleProblem(needle) !== null || base(stiffness) <= 0) return null;
  return quantityOf(base(stiffness) / liftingArea(needle), unit);
}
