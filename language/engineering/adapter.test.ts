import { describe, expect, it } from 'vitest';
import type { Quantity, UnitName } from '../quantities/types.ts';
import { changesSetting, settingThroughAdapter } from './adapter.ts';

const of = (number: string, unit: UnitName): Quantity => ({ number, unit });
const inch = (number: string) => of(number, 'in');
const at = (length: Quantity, degrees: string | null) => ({
  length,
  angle: degrees === null ? null : of(degrees, '°'),
});

describe('the setting through an adapter, as TM 9-254 works it out', () => {
  it('12 in wrench, 2 in extension: set to 60 in-lb it gives 70', () => {
    expect(settingThroughAdapter(of('70', 'lbf·in'), inch('12'), at(inch('2'), null))).toEqual(of('60', 'lbf·in'));
  });

  it('12 in wrench, 6 in extension, 30 lb-ft wanted: set 20', () => {
    expect(settingThroughAdapter(of('30', 'lbf·ft'), inch('12'), at(inch('6'), '0'))).toEqual(of('20', 'lbf·ft'));
  });

  it('at 90° nothing changes', () => {
    const square = at(inch('6'), '90');
    expect(settingThroughAdapter(of('30', 'lbf·ft'), inch('12'), square)).toEqual(of('30', 'lbf·ft'));
    expect(changesSetting(square)).toBe(false);
    expect(changesSetting(at(inch('6'), null))).toBe(true);
  });
});

it('the units of the lengths may differ', () => {
  expect(settingThroughAdapter(of('60', 'N·m'), of('400', 'mm'), at(of('50', 'mm'), '60'))).toEqual(
    of('56.470588235294118', 'N·m'),
  );
  expect(settingThroughAdapter(of('70', 'N·m'), inch('12'), at(of('50.8', 'mm'), null))).toEqual(of('60', 'N·m'));
});

it('an adapter turned back shortens the wrench, and not past its grip', () => {
  expect(settingThroughAdapter(of('50', 'N·m'), of('400', 'mm'), at(of('200', 'mm'), '180'))).toEqual(of('100', 'N·m'));
  expect(settingThroughAdapter(of('50', 'N·m'), of('400', 'mm'), at(of('400', 'mm'), '180'))).toBeNull();
});

it('lengths that are no lengths make no setting', () => {
  expect(settingThroughAdapter(of('50', 'N·m'), of('400', 'N·m'), at(of('50', 'mm'), null))).toBeNull();
  expect(settingThroughAdapter(of('50', 'N·m'), of('0', 'mm'), at(of('50', 'mm'), null))).toBeNull();
});
