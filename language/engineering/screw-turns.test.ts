import { describe, expect, it } from 'vitest';
import type { Quantity, UnitName } from '../quantities/types.ts';
import { exactTurns, screwTurns } from './screw-turns.ts';

const quantity = (number: string, unit: UnitName): Quantity => ({ number, unit });
const bar = (number: string) => quantity(number, 'bar');
const window = { low: bar('120'), high: bar('125'), aim: bar('122.5') };

describe('turns of an adjusting screw', () => {
  it('are the difference over the rate, by hand', () => {
    // 24.5 bar at 25 bar per turn: 0.98 of a turn, 352.8°; the nearest 15° is a whole turn, and lands at 123 bar.
    expect(exactTurns(bar('98'), bar('122.5'), quantity('25', 'bar per turn'))).toBeCloseTo(0.98, 12);
    expect(screwTurns(bar('98'), window, quantity('25', 'bar per turn'))).toMatchObject({ angle: 360, way: 'in' });
    expect(Number(screwTurns(bar('98'), window, quantity('25', 'bar per turn'))!.expected.number)).toBeCloseTo(123, 9);
    expect(screwTurns(bar('131'), window, quantity('25', 'bar per turn'))).toMatchObject({ angle: 120, way: 'out' });
  });

  it('agree over units', () => {
    // 362.594 psi per turn is 25 bar per turn.
    const turns = screwTurns(quantity('1421.37', 'psi'), window, quantity('362.594', 'psi per turn'))!;
    expect(turns).toMatchObject({ angle: 360, way: 'in', expected: { unit: 'psi' } });
    expect(Number(turns.expected.number)).toBeCloseTo(1783.96, 1);
  });

  it('go to the finer angle where the coarse one leaves the window', () => {
    const narrow = { low: bar('122'), high: bar('123'), aim: bar('122.5') };
    expect(screwTurns(bar('98'), narrow, quantity('250', 'bar per turn'))).toMatchObject({ angle: 35, way: 'in' });
    const narrower = { low: bar('122.4'), high: bar('122.6'), aim: bar('122.5') };
    expect(screwTurns(bar('98'), narrower, quantity('50', 'bar per turn'))).toMatchObject({ angle: 176, way: 'in' });
  });

  it('are none without a rate of a screw', () => {
    for (const rate of [quantity('0', 'bar per turn'), quantity('-25', 'bar per turn'), quantity('25', 'bar per mm')])
      expect(screwTurns(bar('98'), window, rate)).toBeNull();
  });
});
