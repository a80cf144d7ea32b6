import type { Quantity, UnitName } from '../quantities/types.ts';
import { base, quantityOf } from './measured.ts';
import { preloadByFactor } from './preload.ts';

/**
 * Stress area of an ISO metric thread: `π/4 · (d − 0.9382 · P)²` (ISO 898-1), m². Null: a length is not over nothing,
 * or the pitch leaves nothing of the bolt.
 */
export function stressArea(diameter: Quantity, pitch: Quantity): number | null {
  const core = base(diameter) - 0.9382 * base(pitch);
  return base(diameter) > 0 && base(pitch) > 0 && core > 0 ? (Math.PI / 4) * core ** 2 : null;
}

/** Proof stress by property class, MPa: of 8.8 up to M16 and over it (ISO 898-1, from memory). */
const proofStress: Readonly<Record<string, readonly [upTo16: number, over16: number]>> = {
  '4.6': [225, 225],
  '4.8': [310, 310],
  '5.6': [280, 280],
  '5.8': [380, 380],
  '6.8': [440, 440],
  '8.8': [580, 600],
  '9.8': [650, 650],
  '10.9': [830, 830],
  '12.9': [970, 970],
};

/** The property classes that are known, weakest first. */
export const propertyClasses: readonly string[] = Object.keys(proofStress);

/** Diameter up to which a class has the first of its two proof stresses. */
const upTo16 = 0.016;

/** Load that a solid bolt or stud bears without setting: proof stress times stress area. Null: an unknown class, or no thread. */
export function proofLoad(
  diameter: Quantity,
  pitch: Quantity,
  propertyClass: string,
  unit: UnitName = 'N',
): Quantity | null {
  const area = stressArea(diameter, pitch);
  const stresses = proofStress[propertyClass];
  if (area === null || stresses === undefined) return null;
  return quantityOf(stresses[base(diameter) <= upTo16 ? 0 : 1] * 1e6 * area, unit);
}

/**
 * How much of its proof load a torque puts on a solid bolt or stud, by the nut factor; over 1 it stretches for good.
 * Not for hollow parts: nozzle nuts and valve holders have less metal than their thread says. Null: as the parts of it.
 */
export function shareOfProofLoad(
  torque: Quantity,
  bolt: { readonly diameter: Quantity; readonly pitch: Quantity; readonly propertyClass: string },
  factor: number,
): number | null {
  const load = proofLoad(bolt.diameter, bolt.pitch, bolt.propertyClass);
  const preload = preloadByFactor(torque, bolt.diameter, factor);
  return load === null || preload === null ? null : base(preload) / base(load);
}
