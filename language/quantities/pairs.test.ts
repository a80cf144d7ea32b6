import { createRequire } from 'node:module';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { english } from '../say/say.ts';
import { pairAgrees } from './pairs.ts';
import type { Figure, Limit, NominalLimit, UnitName } from './types.ts';

const q = (number: string, unit: UnitName): Figure => ({ number, unit });
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
  test('0.005 in and 0.15 mm are 15 percent apart (TM 10-4320-309-14)', () => {
    expect(english(paired(nominal('0.005', 'in'), nominal('0.15', 'mm'))!.message)).toMatch(/0\.005.in is 0\.127.mm/u);
    expect(paired(nominal('0.15', 'mm'), nominal('0.005', 'in'))).not.toBeNull();
  });

  test.each<[Limit, Limit]>([
    [nominal('100', 'bar'), nominal('1000', 'psi')],
    [nominal('250', 'bar'), nominal('3500', 'psi')],
    [nominal('45', 'N·m'), nominal('35', 'lbf·ft')],
    [nominal('45', 'N·m'), nominal('33', 'lbf·in')],
    [nominal('200', 'bar'), nominal('3100', 'psi')],
    [range('400', '500', 'psi'), range('28', '37', 'bar')],
    [range('55', '65', 'N·m'), nominal('41', 'lbf·ft')],
    [nominal('45', 'N·m'), range('33', '36', 'lbf·ft')],
    // Trailing zeros are open in one of the two at a time, and never beyond two figures, or three after a 1.
    [range('200', '250', 'bar'), range('2900', '3500', 'psi')],
    [range('100', '150', 'bar'), range('1400', '2200', 'psi')],
    [nominal('100', 'bar'), nominal('1520', 'psi')],
    [{ form: 'at least', least: q('100', 'bar') }, nominal('1400', 'psi')],
    [{ form: 'at most', most: q('100', 'bar') }, nominal('1500', 'psi')],
    [{ form: 'at most', most: q('30', 'psi') }, nominal('2.2', 'bar')],
    [nominal('250', 'bar', '20'), nominal('3630', 'psi', '350')],
    [
      { form: 'at least', least: q('12', 'lbf·ft') },
      { form: 'at most', most: q('16', 'N·m') },
    ],
    [nominal('45', 'N·m'), nominal('33', 'psi')],
  ])('%j, %j', (first, second) => expect(paired(first, second)).not.toBeNull());

  test('the message says what the other would be', () => {
    expect(english(paired(range('55', '65', 'N·m'), nominal('41', 'lbf·ft'))!.message).replaceAll('\u00a0', ' ')).toBe(
      'a single figure beside a band is its middle, but the middle of 55 to 65 N·m is 44.3 lbf·ft, not 41 lbf·ft.',
    );
  });

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
    expect(english(paired(nominal('45', 'N·m', '5'), nominal('33', 'lbf·ft', '7'))!.message)).toMatch(
      /tolerances \+5.N·m and \+7.lbf·ft/u,
    );
  });
  test('only one side wrong', () => {
    expect(paired(nominal('250', 'bar', '8', '0'), nominal('3630', 'psi', '110', '0'))).toBeNull();
    expect(english(paired(nominal('250', 'bar', '8', '0'), nominal('3630', 'psi', '110', '50'))!.message)).toMatch(
      /−0.bar and −50.psi/u,
    );
  });
  test('percent beside percent, and beside its value', () => {
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

describe('a single figure beside a band is its middle', () => {
  test.each<[Limit, Limit]>([
    [range('55', '65', 'N·m'), nominal('44', 'lbf·ft')],
    [nominal('44', 'lbf·ft'), range('55', '65', 'N·m')],
    [nominal('45', 'N·m'), range('30', '36', 'lbf·ft')],
    [range('20', '30', '°C'), nominal('77', '°F')],
  ])('%j, %j', (first, second) => expect(paired(first, second)).toBeNull());
});

/** One unit rounded from the other by a library that knows nothing of ours (its factors are good to a millionth). */
describe('random pairs, converted by convert-units', () => {
  const other = createRequire(import.meta.url)('convert-units') as (value: number) => {
    from: (unit: string) => { to: (unit: string) => number };
  };
  const two: readonly (readonly [UnitName, string, UnitName, string])[] = [
    ['bar', 'bar', 'psi', 'psi'],
    ['kPa', 'kPa', 'psi', 'psi'],
    ['mm', 'mm', 'in', 'in'],
    ['°C', 'C', '°F', 'F'],
    ['MPa', 'MPa', 'bar', 'bar'],
  ];
  const anyPair = fc.record({
    units: fc.constantFrom(...two.flatMap(([a, b, c, d]) => [[a, b, c, d] as const, [c, d, a, b] as const])),
    digits: fc.integer({ min: 11, max: 99_999 }).filter((digits) => digits % 10 !== 0),
    decimals: fc.integer({ min: 0, max: 3 }),
    places: fc.integer({ min: 0, max: 3 }),
    side: fc.constantFrom(1, -1),
  });
  const made = (digits: number, decimals: number, unit: UnitName) =>
    q((digits / 10 ** decimals).toFixed(decimals), unit);

  test('agree as rounded, and not more than a digit beyond, whatever limit they are in', () => {
    fc.assert(
      fc.property(anyPair, ({ units: [a, otherA, b, otherB], digits, decimals, places, side }) => {
        const value = made(digits, decimals, a);
        const exact = other(Number(value.number)).from(otherA).to(otherB);
        const text = exact.toFixed(places);
        // Open digits have their own tests; a figure that came out as nothing has none.
        fc.pre(Number(text) > 0 && (places > 0 || !text.endsWith('0')));
        const one = (number: string): NominalLimit => ({
          form: 'nominal',
          nominal: q(number, b),
          plus: null,
          minus: null,
        });
        const all = (number: string): [Limit, Limit][] => [
          [{ form: 'nominal', nominal: value, plus: null, minus: null }, one(number)],
          [{ form: 'at least', least: value }, one(number)],
          [
            { form: 'at most', most: value },
            { form: 'at most', most: q(number, b) },
          ],
        ];
        for (const [first, second] of all(text))
          expect(paired(first, second), `${value.number} ${a}, ${text} ${b}`).toBeNull();
        // Beyond a whole digit of each of the two, in either direction.
        const digitOfValue = Math.abs(
          other(Number(value.number) + 10 ** -decimals)
            .from(otherA)
            .to(otherB) - exact,
        );
        const off = (exact + side * (digitOfValue + 2 * 10 ** -places + exact * 2e-6)).toFixed(places);
        fc.pre(Number(off) > 0 && (places > 0 || !off.endsWith('0')));
        for (const [first, second] of all(off))
          expect(paired(first, second), `${value.number} ${a}, ${off} ${b}`).not.toBeNull();
      }),
      { numRuns: 2000 },
    );
  });
});

test('a pair of differences has no zero of its own: 5 °C apart are 9 °F', () => {
  const spread = (pair: string): Limit => ({
    form: 'at most',
    most: q('5', '°C'),
    pair: { form: 'at most', most: q(pair, '°F') },
  });
  expect(pairAgrees(spread('9'), 'differences')).toBeNull();
  expect(pairAgrees(spread('41'), 'differences')).not.toBeNull();
  expect(pairAgrees(spread('41'))).toBeNull();
});

test('no pair, nothing to judge', () => expect(pairAgrees(nominal('45', 'N·m'))).toBeNull());
