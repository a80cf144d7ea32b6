import { describe, expect, it } from 'vitest';
import type { Quantity } from '../quantities/types.ts';
import { proofLoad, propertyClasses, shareOfProofLoad, stressArea } from './proof-load.ts';

const mm = (number: string): Quantity => ({ number, unit: 'mm' });

describe('a solid bolt', () => {
  it.each([
    ['8', '1.25', 36.6],
    ['10', '1.5', 58.0],
    ['12', '1.75', 84.3],
    ['20', '2.5', 245],
  ] as const)('M%s × %s has the stress area of ISO 898-1: %s mm²', (diameter, pitch, printed) => {
    const digits = printed === 245 ? 0 : 1;
    expect((stressArea(mm(diameter), mm(pitch))! * 1e6).toFixed(digits)).toBe(printed.toFixed(digits));
  });

  it('M10 of class 8.8 bears 33 700 N, of 10.9 48 100 N (ISO 898-1, from memory)', () => {
    const load = (propertyClass: string) => Number(proofLoad(mm('10'), mm('1.5'), propertyClass)!.number);
    // The standard reckons with the area as printed, 58.0 mm², and rounds.
    expect(Math.abs(load('8.8') / 33700 - 1)).toBeLessThan(0.003);
    expect(Math.abs(load('10.9') / 48100 - 1)).toBeLessThan(0.003);
  });

  it('M8 of class 8.8 at 50 N·m is past its proof load by K = 0.2, at 25 N·m it is not', () => {
    const bolt = { diameter: mm('8'), pitch: mm('1.25'), propertyClass: '8.8' };
    // 50 / (0.2 · 0.008) = 31 250 N over 580 · 36.6 = 21 230 N. By hand.
    expect(shareOfProofLoad({ number: '50', unit: 'N·m' }, bolt, 0.2)).toBeCloseTo(31250 / 21230, 2);
    expect(shareOfProofLoad({ number: '25', unit: 'N·m' }, bolt, 0.2)).toBeLessThan(1);
  });

  it('is refused with a class that is none, and with a pitch that leaves no bolt', () => {
    expect(proofLoad(mm('10'), mm('1.5'), '7.7')).toBeNull();
    expect(stressArea(mm('1'), mm('2'))).toBeNull();
    expect(propertyClasses).toContain('10.9');
  });
});
