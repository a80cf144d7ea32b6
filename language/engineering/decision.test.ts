import { describe, expect, it } from 'vitest';
import type { Figure, RangeLimit, UnitName } from '../quantities/types.ts';
import { acceptance, conformance, falseAccept } from './decision.ts';
import { errorOfClass } from './tool-error.ts';

const q = (number: string, unit: UnitName): Figure => ({ number, unit });

describe('what a gauge may read', () => {
  const opening = { low: q('250', 'bar'), high: q('258', 'bar'), nominal: q('250', 'bar') };
  const dial: RangeLimit = { form: 'range', low: q('0', 'bar'), high: q('400', 'bar') };
  const read = (accuracyClass: string, mark: string) => {
    const made = acceptance(opening, errorOfClass(accuracyClass, dial)!, 'guarded', q(mark, 'bar'))!;
    return made.shut ? null : `${made.window.low!.number}..${made.window.high!.number}`;
  };

  it('250 bar +8 −0 on a dial of 0 to 400 bar, guarded: by class, never looser than the exact window', () => {
    expect(read('0.6', '1')).toBe('252..256');
    // Exactly 253.32 to 254.68.
    expect(read('1.0', '0.1')).toBe('253.4..254.6');
    expect(read('1.6', '0.1')).toBeNull();
  });

  it('limit ±0.003, expanded uncertainty 0.001, fully guarded: ±0.002', () => {
    const limit = { low: q('-0.003', 'mm'), high: q('0.003', 'mm'), nominal: null };
    expect(acceptance(limit, q('0.001', 'mm'), 'fully guarded', null)).toEqual({
      window: { low: q('-0.002', 'mm'), high: q('0.002', 'mm'), nominal: null },
      shut: false,
    });
  });

  it('is the limit itself by simple acceptance', () => {
    expect(acceptance(opening, q('4', 'bar'), 'simple', null)!.window).toEqual(opening);
  });

  it('with two dials of EN 837-1: class is of the span', () => {
    expect(errorOfClass('1.6', { form: 'range', low: q('0', 'bar'), high: q('10', 'bar') })).toEqual(q('0.16', 'bar'));
    expect(errorOfClass('1.0', { form: 'range', low: q('-1', 'bar'), high: q('5', 'bar') })).toEqual(q('0.06', 'bar'));
  });

  it('of a temperature in °F on a thermometer in °C: ends are converted as values, the error as a difference', () => {
    // 68 to 86 °F are 20 to 30 °C; 1.8 °F of error are 1 °C. As differences the ends would be 37.8 and 47.8.
    const limit = { low: q('68', '°F'), high: q('86', '°F'), nominal: null };
    expect(acceptance(limit, q('1.8', '°F'), 'fully guarded', q('0.5', '°C'))).toEqual({
      window: { low: q('21', '°C'), high: q('29', '°C'), nominal: null },
      shut: false,
    });
    expect(acceptance(limit, q('1', '°C'), 'fully guarded', null)!.window).toMatchObject({
      low: q('21', '°C'),
      high: q('29', '°C'),
    });
  });

  it('is on the marks of the dial, in their unit', () => {
    // 250 + 0.83 · 2.4 and 258 − 0.83 · 2.4 bar are 3654.8 and 3713.1 psi.
    const made = acceptance(opening, q('2.4', 'bar'), 'guarded', q('5', 'psi'))!;
    expect([made.window.low, made.window.high]).toEqual([q('3655', 'psi'), q('3710', 'psi')]);
  });

  it('is refused where kinds differ, or a mark has no width', () => {
    expect(acceptance(opening, q('1', 'mm'), 'guarded', null)).toBeNull();
    expect(acceptance(opening, q('1', 'bar'), 'guarded', q('0', 'bar'))).toBeNull();
  });
});

describe('probabilities', () => {
  it('of a false accept at the limit, exact and one-sided', () => {
    expect(falseAccept(0)).toBe(0.5);
    expect(falseAccept(0.83)).toBeCloseTo(0.0485, 4);
    expect(falseAccept(1)).toBeCloseTo(0.0228, 4);
    expect(falseAccept(1.5)).toBeCloseTo(0.00135, 5);
    // The tail too: Φ(−8) and Φ(−10), from memory.
    expect(falseAccept(4) / 6.22096057427178e-16).toBeCloseTo(1, 12);
    expect(falseAccept(5) / 7.61985302416053e-24).toBeCloseTo(1, 12);
  });

  it('that a reading conforms: the examples of JCGM 106:2012 (from memory)', () => {
    const open = { low: null, high: null };
    expect(conformance({ ...open, low: q('490', 'mm') }, q('509.7', 'mm'), q('8.6', 'mm'))).toBeCloseTo(0.99, 2);
    expect(conformance({ ...open, high: q('-5.40', 'mm') }, q('-5.47', 'mm'), q('0.05', 'mm'))).toBeCloseTo(0.92, 2);
    const both = { low: q('12.5', 'mm'), high: q('16.3', 'mm') };
    expect(conformance(both, q('13.6', 'mm'), q('1.8', 'mm'))).toBeCloseTo(0.66, 2);
  });

  it('are the same in °C, °F and K: an uncertainty has no zero of its own', () => {
    const inCelsius = conformance({ low: q('20', '°C'), high: q('30', '°C') }, q('29', '°C'), q('1', '°C'));
    expect(inCelsius).toBeCloseTo(0.8413, 4);
    expect(conformance({ low: q('68', '°F'), high: q('86', '°F') }, q('29', '°C'), q('1.8', '°F'))).toBeCloseTo(
      inCelsius!,
      10,
    );
    expect(conformance({ low: q('20', '°C'), high: q('30', '°C') }, q('302.15', 'K'), q('1', 'K'))).toBeCloseTo(
      inCelsius!,
      10,
    );
  });

  it('are refused without an uncertainty', () => {
    expect(conformance({ low: null, high: q('1', 'mm') }, q('1', 'mm'), q('0', 'mm'))).toBeNull();
  });
});
