import { describe, expect, it } from 'vitest';
import { sizesOf } from '../quantities/index.ts';
import type { Figure, Quantity, UnitName } from '../quantities/types.ts';
import { type Drawer, shimRate, stackedSizes, thickest, widestStep } from './shim-stock.ts';

const of = (number: string, unit: UnitName): Figure => ({ number, unit });
const mm = (number: string) => of(number, 'mm');
/** A drawer with as many of each size as are wanted. */
const full = (...sizes: readonly Quantity[]): Drawer => ({ sizes, counts: sizes.map(() => null), stacks: false });
/** A drawer that stacks two, with how many there are of each size. */
const stacking = (there: Readonly<Record<string, number | null>>): Drawer => ({
  sizes: Object.keys(there).map(mm),
  counts: Object.values(there),
  stacks: true,
});
/** From meters to millimeters, for the eye. */
const inMm = (sizes: ReturnType<typeof stackedSizes>) => sizes?.map((size) => size.mul(1000).valueOf());

describe('the rate of a shim', () => {
  it('3 bar per 0.001 in is 118.1 bar per mm', () => {
    const rate = shimRate(of('3', 'bar'), of('0.001', 'in'))!;
    expect(rate.valueOf() / 1e8).toBeCloseTo(118.11, 2);
  });

  it('one unit for both is the same', () => {
    expect(shimRate(of('96', 'bar per mm'), null)!.equals(shimRate(of('96', 'bar'), mm('1'))!)).toBe(true);
  });

  it('is none without a thickness', () => {
    expect(shimRate(of('25', 'bar per turn'), null)).toBeNull();
    expect(shimRate(of('3', 'bar'), null)).toBeNull();
    expect(shimRate(of('3', 'bar'), of('1', 'turns'))).toBeNull();
    expect(shimRate(of('3', 'bar'), mm('0'))).toBeNull();
  });
});

describe('what a drawer makes', () => {
  it('one shim of it', () => {
    expect(inMm(stackedSizes([full(mm('1.00'), mm('1.05'), mm('1.10'))]))).toEqual([1, 1.05, 1.1]);
  });

  it('two, one on the other, each thickness once', () => {
    expect(inMm(stackedSizes([full(mm('1.00'), mm('1.10')), full(mm('0.40'), mm('0.45'), mm('0.50'))]))).toEqual([
      1.4, 1.45, 1.5, 1.55, 1.6,
    ]);
  });

  it('too many to look through', () => {
    const drawer = full(...sizesOf(mm('1.000'), mm('2.000'), mm('0.001'))!.filter((_, place) => place !== 500));
    expect(stackedSizes([drawer, drawer])).toBeNull();
    expect(stackedSizes([{ ...drawer, stacks: true }])).toBeNull();
  });

  it('with even steps and enough of each goes on in them, however many there are', () => {
    const drawer = { ...full(...sizesOf(mm('1.000'), mm('2.000'), mm('0.001'))!), stacks: true };
    const made = inMm(stackedSizes([drawer]))!;
    expect([made.length, made[0], made[1000], made[1001], made.at(-1)]).toEqual([3001, 1, 2, 2.001, 4]);
  });

  it('two on each other where it stacks them: a pair of one size takes two', () => {
    expect(inMm(stackedSizes([stacking({ '1.00': 1, '1.10': 2 })]))).toEqual([1, 1.1, 2.1, 2.2]);
    expect(inMm(stackedSizes([stacking({ '1.00': null, '1.10': null })]))).toEqual([1, 1.1, 2, 2.1, 2.2]);
  });

  it('nothing of a size that is out of stock', () => {
    expect(inMm(stackedSizes([{ ...stacking({ '1.00': 3, '1.05': 0, '1.10': null }), stacks: false }]))).toEqual([
      1, 1.1,
    ]);
    expect(stackedSizes([stacking({ '1.00': 0 })])).toEqual([]);
  });

  it('two parts out of one drawer share what there is of a size', () => {
    const drawer = { ...stacking({ '1.00': 1, '1.10': 1 }), stacks: false };
    expect(inMm(stackedSizes([drawer, drawer]))).toEqual([2.1]);
    const lone = { ...stacking({ '1.00': 1 }), stacks: false };
    expect(stackedSizes([lone, lone])).toEqual([]);
  });

  it('as many stacks as are counted one by one, of a drawer of 20 sizes', () => {
    const sizes = sizesOf(mm('1.00'), mm('1.95'), mm('0.05'))!;
    const counts = sizes.map((_, index) => [0, 1, 2, null][index % 4]!);
    const hundredths = new Set<number>();
    for (let one = 0; one < 20; one++) {
      if (counts[one] === 0) continue;
      hundredths.add(100 + 5 * one);
      for (let two = one; two < 20; two++)
        if (counts[two] !== 0 && (one !== two || counts[one] !== 1)) hundredths.add(200 + 5 * (one + two));
    }
    const made = stackedSizes([{ sizes, counts, stacks: true }])!;
    expect(made.map((size) => size.mul(100_000).valueOf())).toEqual([...hundredths].sort((a, b) => a - b));
    expect(thickest({ sizes, counts, stacks: true })!.equals(made.at(-1)!)).toBe(true);
  });

  it('the thickest of it, and none of an empty one', () => {
    expect(
      thickest(stacking({ '1.90': 1, '1.95': 1 }))!
        .mul(1000)
        .valueOf(),
    ).toBe(3.85);
    expect(
      thickest({ ...stacking({ '1.90': 1, '1.95': 0 }), stacks: false })!
        .mul(1000)
        .valueOf(),
    ).toBe(1.9);
    expect(thickest(stacking({ '1.95': 0 }))).toBeNull();
  });

  it('the widest step is the hole in the drawer', () => {
    const step = widestStep(stackedSizes([full(mm('1.00'), mm('1.05'), mm('1.20'), mm('1.25'))])!)!;
    expect([step.from, step.to].map((size) => size.mul(1000).valueOf())).toEqual([1.05, 1.2]);
    expect(widestStep(stackedSizes([full(mm('1.00'))])!)).toBeNull();
    expect(widestStep([])).toBeNull();
  });
});
