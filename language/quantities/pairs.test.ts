import { describe, expect, test } from 'vitest';
import { pairAgrees } from './pairs.ts';
import type { Limit, NominalLimit, Quantity, UnitName } from './types.ts';

const q = (number: string, unit: UnitName): Quantity => ({ number, unit });
const nominal = (number: string, unit: UnitName, plus?: string, minus = plus): NominalLimit => ({
  form: 'nominal',
  nominal: q(number, unit),
  plus: plus === undefined ? null : q(plus, unit),
  minus: minus === undefined ? null : q(minus, unit),
});
const range = (low: string, high: string, unit: UnitName): Limit => ({
  form: 'range',
  low: q(low, unit),
  high: q(high, unit),
});
const paired = (limit: Limit, pair: Limit) => pairAgrees({ ...limit, pair } as Limit);

describe('pairs printed side by side in technical manuals agree', () => {
  test.each<[string, Limit, Limit]>([
    ['TM 5-3820-256-24-5', nominal('3600', 'psi'), nominal('24820', 'kPa')],
    ['TM 5-3820-256-24-5', nominal('3750', 'psi'), nominal('25855', 'kPa')],
    ['TM 5-3820-256-24-5', nominal('2900', 'psi'), nominal('20000', 'kPa')],
    ['TM 5-3820-256-24-5', nominal('33', 'lbf·ft'), nominal('45', 'N·m')],
    ['TM 5-3820-256-24-5', nominal('20', 'lbf·ft'), nominal('27', 'N·m')],
    ['TM 5-3820-256-24-5', nominal('30', 'lbf·ft'), nominal('41', 'N·m')],
    ['TM 9-4310-397-14', nominal('1500', 'psi'), nominal('10300', 'kPa')],
    ['TM 9-4310-397-14', range('400', '500', 'psi'), range('28', '35', 'bar')],
    ['TM 10-4320-309-14', nominal('2844', 'psi'), nominal('200', 'kgf/cm²')],
    ['TM 10-4320-309-14, far apart in per cent', nominal('0.001', 'in'), nominal('0.03', 'mm')],
    ['TM 5-3895-382-24', { form: 'at least', least: q('12', 'lbf·ft') }, nominal('15.3', 'N·m')],
    ['TM 5-3895-382-24', { form: 'at least', least: q('12', 'lbf·ft') }, { form: 'at least', least: q('15.3', 'N·m') }],
    ['TM 5-3895-382-24', range('18', '20', 'lbf·in'), range('2.0', '2.3', 'N·m')],
    ['TM 5-3895-382-24', range('0.03', '0.10', 'mm'), range('0.001', '0.004', 'in')],
  ])('%s: %j, %j', (_manual, first, second) => {
    expect(paired(first, second)).toBeNull();
    if (second.form === first.form) expect(paired(second, first)).toBeNull();
  });
});

describe('pairs that disagree', () => {
  test('0.005 in and 0.15 mm are 15 per cent apart (TM 10-4320-309-14)', () => {
    expect(paired(nominal('0.005', 'in'), nominal('0.15', 'mm'))?.message).toMatch(/0\.005.in is 0\.127.mm/u);
    expect(paired(nominal('0.15', 'mm'), nominal('0.005', 'in'))).not.toBeNull();
  });

  test.each<[Limit, Limit]>([
    [nominal('100', 'bar'), nominal('1000', 'psi')],
    [nominal('250', 'bar'), nominal('3500', 'psi')],
    [nominal('45', 'N·m'), nominal('35', 'lbf·ft')],
    [nominal('45', 'N·m'), nominal('33', 'lbf·in')],
    [nominal('200', 'bar'), nominal('3100', 'psi')],
    [range('400', '500', 'psi'), range('28', '37', 'bar')],
    [range('55', '65', 'N·m'), nominal('44', 'lbf·ft')],
    [nominal('45', 'N·m'), range('30', '36', 'lbf·ft')],
    [
      { form: 'at least', least: q('12', 'lbf·ft') },
      { form: 'at most', most: q('16', 'N·m') },
    ],
    [nominal('45', 'N·m'), nominal('33', 'psi')],
  ])('%j, %j', (first, second) => expect(paired(first, second)).not.toBeNull());

  test('a whole digit is let through only in the safe direction', () => {
    // 16.4 N·m are 12.1 lbf·ft: a minimum of 11 lbf·ft would loosen it, one of 13 would not.
    expect(paired({ form: 'at least', least: q('16.4', 'N·m') }, nominal('13', 'lbf·ft'))).toBeNull();
    expect(paired({ form: 'at least', least: q('16.4', 'N·m') }, nominal('11', 'lbf·ft'))).not.toBeNull();
    expect(paired({ form: 'at most', most: q('16.2', 'N·m') }, nominal('11', 'lbf·ft'))).toBeNull();
    expect(paired({ form: 'at most', most: q('16.2', 'N·m') }, nominal('13', 'lbf·ft'))).not.toBeNull();
    expect(paired(nominal('16.4', 'N·m'), nominal('13', 'lbf·ft'))).not.toBeNull();
  });
});

describe('tolerances beside a nominal', () => {
  test('45 N·m ±5 (33 lbf·ft ±4)', () =>
    expect(paired(nominal('45', 'N·m', '5'), nominal('33', 'lbf·ft', '4'))).toBeNull());
  test('a lone nominal is judged by the nominal', () =>
    expect(paired(nominal('45', 'N·m', '5'), nominal('33', 'lbf·ft'))).toBeNull());
  test('45 N·m ±5 (33 lbf·ft ±7)', () => {
    expect(paired(nominal('45', 'N·m', '5'), nominal('33', 'lbf·ft', '7'))?.message).toMatch(
      /tolerances \+5.N·m and \+7.lbf·ft/u,
    );
  });
  test('only one side wrong', () => {
    expect(paired(nominal('250', 'bar', '8', '0'), nominal('3630', 'psi', '110', '0'))).toBeNull();
    expect(paired(nominal('250', 'bar', '8', '0'), nominal('3630', 'psi', '110', '50'))?.message).toMatch(
      /−0.bar and −50.psi/u,
    );
  });
  test('per cent beside per cent, and beside its value', () => {
    const percent = (limit: NominalLimit, number: string): NominalLimit => ({
      ...limit,
      plus: q(number, '%'),
      minus: q(number, '%'),
    });
    expect(paired(percent(nominal('45', 'N·m'), '10'), percent(nominal('33', 'lbf·ft'), '10'))).toBeNull();
    expect(paired(percent(nominal('45', 'N·m'), '10'), nominal('33', 'lbf·ft', '3'))).toBeNull();
    expect(paired(percent(nominal('45', 'N·m'), '10'), nominal('33', 'lbf·ft', '6'))).not.toBeNull();
  });
  test('a temperature tolerance has no zero of its own', () => {
    expect(paired(nominal('80', '°C', '5'), nominal('176', '°F', '9'))).toBeNull();
  });
  test('a window written as a range', () => {
    expect(paired(nominal('250', 'bar', '8', '0'), range('3630', '3740', 'psi'))).toBeNull();
    expect(paired(nominal('250', 'bar', '8', '0'), range('3430', '3740', 'psi'))).not.toBeNull();
  });
});

test('of torque and angle the torque carries the pair', () => {
  const angle = nominal('90', '°', '5');
  expect(
    pairAgrees({ form: 'then', first: { ...nominal('40', 'N·m'), pair: nominal('30', 'lbf·ft') }, angle }),
  ).toBeNull();
  expect(
    pairAgrees({ form: 'then', first: { ...nominal('40', 'N·m'), pair: nominal('40', 'lbf·ft') }, angle }),
  ).not.toBeNull();
});

test('no pair, nothing to judge', () => expect(pairAgrees(nominal('45', 'N·m'))).toBeNull());
