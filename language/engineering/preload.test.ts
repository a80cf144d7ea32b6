import { describe, expect, it } from 'vitest';
import type { Quantity, UnitName } from '../quantities/types.ts';
import { preloadByFactor, torqueByFactor, torqueByFriction } from './preload.ts';

const q = (number: string, unit: UnitName): Quantity => ({ number, unit });

describe('Shigley, Ex. 8-3: ¾-16, 25 kip (from memory)', () => {
  it('3750 lbf·in by K = 0.2, and back', () => {
    expect(torqueByFactor(q('25000', 'lbf'), q('0.75', 'in'), 0.2, 'lbf·in')!.number).toBe('3750');
    expect(preloadByFactor(q('3750', 'lbf·in'), q('0.75', 'in'), 0.2, 'lbf')!.number).toBe('25000');
  });

  it('3551 lbf·in by the long form with a friction of 0.15, within half a percent', () => {
    // Pitch diameter 0.7094 in (ASME B1.1, ¾-16 UNF, from memory); the face's mean diameter is 1.25 of the thread's.
    const thread = {
      pitch: q('0.0625', 'in'),
      threadRadius: q('0.3547', 'in'),
      threadFriction: 0.15,
      faceRadius: q('0.46875', 'in'),
      faceFriction: 0.15,
    };
    const torque = Number(torqueByFriction(q('25000', 'lbf'), thread, 'lbf·in')!.number);
    expect(Math.abs(torque / 3551 - 1)).toBeLessThan(0.005);
  });
});

it('is refused where a figure is not over nothing', () => {
  expect(torqueByFactor(q('0', 'N'), q('8', 'mm'), 0.2)).toBeNull();
  expect(preloadByFactor(q('20', 'N·m'), q('8', 'mm'), Number.NaN)).toBeNull();
});
