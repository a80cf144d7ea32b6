import { createRequire } from 'node:module';
import { describe, expect, test } from 'vitest';
import { amount, convert } from './convert.ts';
import type { UnitName } from './types.ts';
import { kindOfUnit, units } from './unit-table.ts';

/** The number of one unit in another, at the printed significant digits. */
function atPrintedDigits(from: UnitName, to: UnitName, digits: number, times = 1): string {
  return (convert({ number: '1', unit: from }, to)!.valueOf() * times).toPrecision(digits);
}

describe('factors printed in NIST SP 811, Appendix B.8', () => {
  test.each([
    ['psi', 'kPa', '6.894757', 1],
    ['lbf·ft', 'N·m', '1.355818', 1],
    ['lbf·in', 'N·m', '0.1129848', 1],
    // An ounce-force inch is no unit of the language: it is 1/16 of a pound-force inch.
    ['lbf·in', 'N·m', '0.007061552', 1 / 16],
    ['kgf·m', 'N·m', '9.80665', 1],
    ['kgf/cm²', 'kPa', '98.0665', 1],
    ['inHg', 'kPa', '3.386389', 1],
    ['inH2O', 'kPa', '0.2490889', 1],
    ['lbf', 'N', '4.448222', 1],
    ['kgf', 'N', '9.80665', 1],
    ['lb', 'kg', '0.4535924', 1],
    ['in', 'mm', '25.4', 1],
    ['thou', 'µm', '25.4', 1],
    // "acceleration of free fall, standard (gn) to meter per second squared"; "centimeter … per second squared" is 1/100.
    ['g', 'm/s²', '9.80665', 1],
    // "inch of mercury, conventional", counted downward.
    ['inHg vacuum', 'kPa vacuum', '3.386389', 1],
    ['mbar vacuum', 'kPa vacuum', '0.1', 1],
  ] as const)('1 %s is so many %s: %s', (from, to, printed, times) => {
    const digits = printed.replace('.', '').replace(/^0+/u, '').length;
    expect(atPrintedDigits(from, to, digits, times)).toBe(printed);
  });

  test('prefixes of the SI brochure, table 7: micro, milli, kilo, mega; centi', () => {
    expect(atPrintedDigits('ms', 'µs', 4)).toBe('1000');
    expect(atPrintedDigits('Ω', 'mΩ', 4)).toBe('1000');
    expect(atPrintedDigits('kΩ', 'Ω', 4)).toBe('1000');
    expect(atPrintedDigits('MΩ', 'kΩ', 4)).toBe('1000');
    expect(atPrintedDigits('N·m', 'N·cm', 3)).toBe('100');
    expect(atPrintedDigits('N·cm', 'cN·m', 3)).toBe('1.00');
  });

  test('a centistokes is 1e-6 m²/s', () => {
    expect(amount({ number: '1', unit: 'cSt' }).toFraction()).toBe('1/1000000');
  });

  test('lbf/in is 175.1268 N/m', () => {
    expect(amount({ number: '1', unit: 'lbf/in' }).valueOf().toPrecision(7)).toBe('175.1268');
  });
});

test('exact by definition, not merely close', () => {
  expect(convert({ number: '1', unit: 'in' }, 'mm')!.toFraction()).toBe('127/5');
  expect(convert({ number: '32', unit: '°F' }, '°C')!.toFraction()).toBe('0');
  expect(convert({ number: '212', unit: '°F' }, 'K')!.toFraction()).toBe('7463/20');
  expect(convert({ number: '1', unit: 'mL/1000 strokes' }, 'mm³/stroke')!.toFraction()).toBe('1');
  expect(convert({ number: '1', unit: 'bar per mm' }, 'bar per in')!.toFraction()).toBe('127/5');
  expect(amount({ number: '1', unit: 'inHg' }).toFraction()).toBe('3386388640341/1000000000');
});

describe('agreement with convert-units', () => {
  type Other = (value: number) => { from(unit: string): { to(unit: string): number } };
  const other = createRequire(import.meta.url)('convert-units') as Other;

  /** Unit here: unit there, the unit there that has the size of our base, our base units in one of it. */
  const counterparts: Partial<Record<UnitName, [from: string, to: string, perBase: number]>> = {
    bar: ['bar', 'Pa', 1],
    kPa: ['kPa', 'Pa', 1],
    MPa: ['MPa', 'Pa', 1],
    psi: ['psi', 'Pa', 1],
    mm: ['mm', 'm', 1],
    in: ['in', 'm', 1],
    ms: ['ms', 's', 1],
    s: ['s', 's', 1],
    min: ['min', 's', 1],
    h: ['h', 's', 1],
    '°C': ['C', 'K', 1],
    '°F': ['F', 'K', 1],
    K: ['K', 'K', 1],
    'mm³': ['mm3', 'm3', 1],
    mL: ['ml', 'm3', 1],
    'mL/min': ['l/min', 'm3/s', 1000],
    rpm: ['rpm', 'Hz', 1],
    '°': ['deg', 'deg', 1],
    µs: ['mu', 's', 1],
    Hz: ['Hz', 'Hz', 1],
    V: ['V', 'V', 1],
    A: ['A', 'A', 1],
    kg: ['kg', 'kg', 1],
    oz·in: ['oz', 'kg', 1 / 0.0254],
  };

  /** convert-units has no force, torque, stiffness, viscosity, resistance, acceleration, counts, rates, or small and column units. */
  const without: UnitName[] = [
    'lb',
    'mbar',
    'kgf/cm²',
    'inHg',
    'inH2O',
    'N·m',
    'cN·m',
    'lbf·ft',
    'lbf·in',
    'kgf·m',
    'kgf·cm',
    'N·cm',
    'kPa vacuum',
    'mbar vacuum',
    'inHg vacuum',
    'mm/s',
    'g',
    'm/s²',
    'mΩ',
    'kΩ',
    'MΩ',
    'µm',
    'thou',
    'N',
    'lbf',
    'kgf',
    'N/mm',
    'lbf/in',
    'mm³/stroke',
    'mL/1000 strokes',
    'strokes/min',
    'cam °',
    'drops',
    'strokes',
    'turns',
    'bar per mm',
    'bar per in',
    'kPa per mm',
    'bar per turn',
    'psi per turn',
    'mm²/s',
    'cSt',
    'g·mm',
    'Ω',
    '%',
  ];

  test('every unit has a counterpart or is named as without', () => {
    expect([...Object.keys(counterparts), ...without].sort()).toEqual(units.map((row) => row.name).sort());
  });

  // Its psi, inch and ounce come through rounded factors (6.89476 kPa, 3.28084 ft to the meter, 453.592 g to the
  // pound), off by 4.4e-7, 3.2e-8 and 8.2e-7; the rest is double precision.
  const within: Partial<Record<UnitName, number>> = { psi: 5e-7, in: 4e-8, oz·in: 1e-6 };

  test.each(Object.entries(counterparts))('%s', (name, [from, to, perBase]) => {
    const unit = name as UnitName;
    for (const number of ['1', '37.5', '250']) {
      const theirs = other(Number(number)).from(from).to(to) / perBase;
      const ours = amount({ number, unit }).valueOf();
      expect(Math.abs(ours / theirs - 1)).toBeLessThan(within[unit] ?? 1e-9);
    }
  });
});

test('names and spellings are all different', () => {
  const all = units.flatMap((row) => [row.name, ...row.spellings]);
  expect(new Set(all).size).toBe(all.length);
});

test('every unit outside the reach of a keyboard has an ASCII spelling', () => {
  const plain = /^[\x20-\x7E]+$/u;
  const missing = units.filter((row) => ![row.name, ...row.spellings].some((spelling) => plain.test(spelling)));
  expect(missing.map((row) => row.name)).toEqual([]);
});

test('kinds that are easily taken for each other are apart', () => {
  expect(kindOfUnit('strokes/min')).toBe('stroke rate');
  expect(kindOfUnit('rpm')).toBe('speed');
  expect(kindOfUnit('bar per mm')).toBe('setting rate');
  expect(kindOfUnit('bar per turn')).toBe('screw rate');
  expect(convert({ number: '10', unit: '°' }, 'cam °')).toBeNull();
});
