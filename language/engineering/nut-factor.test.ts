import { describe, expect, it } from 'vitest';
import type { Quantity } from '../quantities/types.ts';
import { base } from './measured.ts';
import { nutFactor } from './nut-factor.ts';
import { torqueByFriction } from './preload.ts';

const mm = (number: string): Quantity => ({ number, unit: 'mm' });

/** Factor that comes of the long form, of a hexagon head: it bears from 1.1 to 1.5 of the diameter, in the middle 0.65. */
function factorOf(diameter: number, pitch: number, friction: number): number {
  const torque = torqueByFriction(
    { number: '1000', unit: 'N' },
    {
      pitch: mm(String(pitch)),
      threadRadius: mm(String((diameter - 0.6495 * pitch) / 2)),
      threadFriction: friction,
      faceRadius: mm(String(0.65 * diameter)),
      faceFriction: friction,
    },
  );
  return base(torque!) / (1000 * (diameter / 1000));
}

describe('the nut factor', () => {
  it.each([
    [6, 1],
    [8, 1.25],
    [10, 1.5],
    [12, 1.25],
    [20, 2.5],
  ])(
    'of a dry M%s × %s is the 0.2 of Shigley: “friction 0.15, whatever the size, coarse or fine” (from memory)',
    (diameter, pitch) => {
      expect(factorOf(diameter, pitch, 0.15)).toBeCloseTo(nutFactor(false), 1);
      expect(Math.abs(factorOf(diameter, pitch, 0.15) / nutFactor(false) - 1)).toBeLessThan(0.05);
    },
  );

  it('of an oiled thread lies between friction 0.10 and 0.12, where VDI 2230 puts oiled steel (from memory)', () => {
    for (const [diameter, pitch] of [
      [8, 1.25],
      [10, 1.5],
      [20, 2.5],
    ] as const) {
      expect(factorOf(diameter, pitch, 0.1)).toBeLessThan(nutFactor(true));
      expect(factorOf(diameter, pitch, 0.12)).toBeGreaterThan(nutFactor(true));
    }
  });

  it.each([
    // Torque and preload for 90 % of yield: friction 0.14 is near dry, 0.10 is oiled.
    [27.3, 17300, false],
    [21.6, 18800, true],
  ])(
    'brings M8 of 8.8 near to what the tables of VDI 2230 say (from memory): %s N·m, %s N',
    (torque, preload, oiled) => {
      expect(Math.abs(torque / (nutFactor(oiled) * 0.008) / preload - 1)).toBeLessThan(0.05);
    },
  );
});
