import { describe, expect, it } from 'vitest';
import type { Quantity, UnitName } from '../quantities/types.ts';
import { english } from '../say/say.ts';
import { closingPressure, needleProblem, openingPressure, seatOverGuide, shimRateOf } from './needle.ts';

const q = (number: string, unit: UnitName): Quantity => ({ number, unit });

describe('a needle', () => {
  const needle = { guide: q('6', 'mm'), seat: q('3', 'mm') };

  it('opens at its preload over the ring between guide and seat, and shuts at that over the guide', () => {
    // π/4 · (36 − 9) mm² = 21.2058 mm²; 500 N over it are 23.5785 MPa. By hand.
    expect(Number(openingPressure(q('500', 'N'), needle)!.number)).toBeCloseTo(235.785, 2);
    expect(Number(closingPressure(q('500', 'N'), needle.guide)!.number)).toBeCloseTo(176.839, 2);
  });

  it('of TM 5-2815-232-14 has a seat of 0.69 to 0.75 of its guide: opens at 20 000 to 23 300 kPa, closes at about 10 300', () => {
    expect(seatOverGuide(q('20000', 'kPa'), q('10300', 'kPa'))).toBeCloseTo(0.696, 3);
    expect(seatOverGuide(q('23300', 'kPa'), q('10300', 'kPa'))).toBeCloseTo(0.747, 3);
  });

  it('gives the shim rate with the stiffness of its spring; published shop rates run from 69 to 196 bar/mm', () => {
    const rate = shimRateOf(q('200', 'N/mm'), needle)!;
    // 200 N over 21.2058 mm² for each millimeter: 9.43139 MPa.
    expect(Number(rate.number)).toBeCloseTo(94.3139, 3);
    expect(rate.unit).toBe('bar per mm');
  });

  it('with a seat as wide as its guide is refused, never NaN', () => {
    const wide = { guide: q('4', 'mm'), seat: q('4', 'mm') };
    expect(english(needleProblem(wide)!)).toMatch(/no pressure would lift/u);
    expect(openingPressure(q('500', 'N'), wide)).toBeNull();
    expect(shimRateOf(q('0', 'N/mm'), needle)).toBeNull();
    expect(closingPressure(q('500', 'N'), q('0', 'mm'))).toBeNull();
    expect(seatOverGuide(q('100', 'bar'), q('100', 'bar'))).toBeNull();
  });
});
