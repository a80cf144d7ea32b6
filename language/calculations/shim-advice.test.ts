import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Figure, UnitName } from '../quantities/types.ts';
import { type ShimQuestion, shimAdvice } from './shim-advice.ts';

const q = (number: string, unit: UnitName): Figure => ({ number, unit });

const drawer = (...sizes: string[]) => sizes.map((size) => ({ thickness: q(size, 'mm'), count: null }));

const question: ShimQuestion = {
  reading: q('231', 'bar'),
  now: q('1.30', 'mm'),
  low: q('250', 'bar'),
  high: q('258', 'bar'),
  aim: null,
  rate: q('3000', 'bar per in'),
  rateError: null,
  scatter: null,
  settling: null,
  drawer: drawer('1.40', '1.45', '1.50', '1.55'),
  stacks: false,
};

const chosen = (change: Partial<ShimQuestion>) => {
  const advice = shimAdvice({ ...question, ...change });
  return 'choice' in advice ? advice.choice : null;
};
const nothing = (change: Partial<ShimQuestion>) => {
  const advice = shimAdvice({ ...question, ...change });
  return 'nothing' in advice ? advice.nothing : null;
};

describe('a shim for a reading', () => {
  it('is the one that lands nearest to the middle of the window, or to the aim', () => {
    // 3 bar per 0.001 in are 118.11 bar/mm: 1.50 brings 254.6 bar, 1.55 brings 260.5. By hand.
    expect(chosen({})).toMatchObject({ shims: [q('1.50', 'mm')], probability: 1 });
    expect(Number(chosen({})!.expected.number)).toBeCloseTo(231 + (3 * 0.2) / 0.0254, 6);
    // 100 bar/mm exactly: 1.45 and 1.50 bring 246 and 251, 1.55 brings 256.
    const rate = q('100', 'bar per mm');
    expect(chosen({ rate })!.shims).toEqual([q('1.55', 'mm')]);
    expect(chosen({ rate, aim: q('251', 'bar') })!.shims).toEqual([q('1.50', 'mm')]);
  });

  it('on the very end of the window is inside it', () => {
    const change = { rate: q('100', 'bar per mm'), reading: q('240', 'bar'), drawer: drawer('1.40') };
    expect(chosen(change)).toMatchObject({ expected: q('250', 'bar'), probability: 1 });
  });

  it('is the surest, not the nearest, where the rate is in doubt: the doubt grows with the change', () => {
    const rate = q('100', 'bar per mm');
    const change = { rate, rateError: q('10', 'bar per mm'), scatter: q('0.5', 'bar') };
    const { probability, low, high, expected } = chosen(change)!;
    // 0.25 mm more: expected 256 bar, doubt √((0.25 · 10)² + 2 · 0.5²) = 2.5981 bar.
    expect(expected).toEqual(q('256', 'bar'));
    expect(Number(high.number) - 256).toBeCloseTo(1.959964 * 2.598076, 4);
    expect(256 - Number(low.number)).toBeCloseTo(1.959964 * 2.598076, 4);
    // Φ(0.7698) − Φ(−2.3094), from the normal table.
    expect(probability).toBeCloseTo(0.7793 - 0.0105, 3);
  });

  it('of a new spring allows for its settling', () => {
    const rate = q('100', 'bar per mm');
    // 231 bar and 0.25 mm: 256 as read, 252 when it has settled. 251 bar would settle to 247, under the window.
    const settled = { rate, settling: q('4', 'bar') };
    expect(chosen(settled)).toMatchObject({ shims: [q('1.55', 'mm')], expected: q('256', 'bar') });
    expect(chosen({ ...settled, drawer: drawer('1.50') })).toBeNull();
    expect(nothing({ ...settled, drawer: drawer('1.50') })).toMatchObject({ reason: 'too thin' });
    // What it reads must be in the window as well: 261 bar is not, though it would settle to 257.
    expect(nothing({ ...settled, drawer: drawer('1.60') })).toMatchObject({ reason: 'too thick' });
    expect(nothing({ rate, settling: q('9', 'bar') })).toEqual({ reason: 'settles out' });
  });

  it('may be two on each other where that is allowed and there are two', () => {
    const change = { rate: q('100', 'bar per mm'), drawer: drawer('0.75') };
    expect(chosen(change)).toBeNull();
    expect(chosen({ ...change, stacks: true })!.shims).toEqual([q('0.75', 'mm'), q('0.75', 'mm')]);
    const one = [{ thickness: q('0.75', 'mm'), count: 1 }];
    expect(chosen({ ...change, drawer: one, stacks: true })).toBeNull();
  });

  it('is one rather than two that bring the same', () => {
    expect(chosen({ drawer: drawer('0.75', '1.50'), stacks: true })!.shims).toEqual([q('1.50', 'mm')]);
  });
});

describe('where nothing fits it is said why', () => {
  const rate = q('100', 'bar per mm');

  it('the drawer ends too thin, or begins too thick', () => {
    expect(nothing({ rate, drawer: drawer('1.35', '1.40') })).toMatchObject({
      reason: 'too thin',
      nearest: { shims: [q('1.40', 'mm')], expected: q('241', 'bar') },
    });
    expect(nothing({ rate, drawer: drawer('1.70', '1.60') })).toMatchObject({
      reason: 'too thick',
      nearest: { shims: [q('1.60', 'mm')], expected: q('261', 'bar') },
    });
  });

  it('the steps go past the window', () => {
    expect(nothing({ rate, drawer: drawer('1.40', '1.60', '1.30') })).toMatchObject({
      reason: 'too coarse',
      under: { expected: q('241', 'bar') },
      over: { expected: q('261', 'bar') },
    });
  });

  it('there is nothing in the drawer', () => {
    expect(nothing({ drawer: [] })).toEqual({ reason: 'empty' });
    expect(nothing({ drawer: [{ thickness: q('1.50', 'mm'), count: 0 }] })).toEqual({ reason: 'empty' });
  });
});

it('never leaves a shim that lands surer than the one it chooses', () => {
  const sizes = fc.uniqueArray(fc.integer({ min: 100, max: 195 }), { minLength: 1, maxLength: 8 });
  fc.assert(
    fc.property(
      sizes,
      fc.integer({ min: 180, max: 300 }),
      fc.integer({ min: 1, max: 20 }),
      (thicknesses, reading, error) => {
        const change = {
          reading: q(String(reading), 'bar'),
          rateError: q(String(error), 'bar per mm'),
          scatter: q('1', 'bar'),
        };
        const of = (size: number) => drawer((size / 100).toFixed(2));
        const found = chosen({ ...change, drawer: thicknesses.flatMap(of) });
        const each = thicknesses.flatMap((size) => chosen({ ...change, drawer: of(size) }) ?? []);
        expect(found?.probability ?? null).toBe(
          each.length === 0 ? null : Math.max(...each.map((one) => one.probability)),
        );
      },
    ),
    { seed: 6 },
  );
});
