import { describe, expect, it } from 'vitest';
import { sizesOf } from '../quantities/index.ts';
import type { Quantity, UnitName } from '../quantities/types.ts';
import { shimRate, stackedSizes, widestStep } from './shim-stock.ts';

const of = (number: string, unit: UnitName): Quantity => ({ number, unit });
const mm = (number: string) => of(number, 'mm');
/** From metres to millimetres, for the eye. */
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
    expect(inMm(stackedSizes([[mm('1.00'), mm('1.05'), mm('1.10')]]))).toEqual([1, 1.05, 1.1]);
  });

  it('two, one on the other, each thickness once', () => {
    expect(
      inMm(
        stackedSizes([
          [mm('1.00'), mm('1.10')],
          [mm('0.40'), mm('0.45'), mm('0.50')],
        ]),
      ),
    ).toEqual([1.4, 1.45, 1.5, 1.55, 1.6]);
  });

  it('too many to look through', () => {
    const drawer = sizesOf(mm('1.000'), mm('2.000'), mm('0.001'))!;
    expect(stackedSizes([drawer, drawer])).toBeNull();
  });

  it('the widest step is the hole in the drawer', () => {
    const step = widestStep(stackedSizes([[mm('1.00'), mm('1.05'), mm('1.20'), mm('1.25')]])!)!;
    expect([step.from, step.to].map((size) => size.mul(1000).valueOf())).toEqual([1.05, 1.2]);
    expect(widestStep(stackedSizes([[mm('1.00')]])!)).toBeNull();
    expect(widestStep([])).toBeNull();
  });
});
