import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { english, type Said } from '../say/say.ts';
import * as quantities from './read-quantity.ts';
import * as units from './read-unit.ts';

/** With what is said in English. */
function inEnglish<T extends object>(reading: T) {
  const entries = Object.entries(reading).map(([key, value]) => [
    key,
    Array.isArray(value) ? english(value as unknown as Said) : value,
  ]);
  return Object.fromEntries(entries) as { [Key in keyof T]: T[Key] extends Said ? string : T[Key] };
}
const readNumber = (text: string) => inEnglish(quantities.readNumber(text));
const readQuantity = (text: string) => inEnglish(quantities.readQuantity(text));
const readUnit = (text: string) => inEnglish(units.readUnit(text));

describe('numbers', () => {
  test.each(['250', '0.20', '007', '1.250', '-5', '999999999999'])('%s stays as written', (text) => {
    expect(readNumber(text)).toEqual({ number: text });
  });

  test('what is none is refused', () => {
    expect(readNumber('a')).toEqual({ problem: '"a" is no number: write digits with a point, such as 0.25.' });
    expect(readQuantity('a')).toEqual({
      problem: '"a" is no quantity: write a number and a unit, such as 250 bar.',
      of: 'number',
    });
    expect(readUnit('xyz')).toEqual({ refused: '"xyz" is no unit of this language.' });
  });

  test('a decimal comma that can be read one way has a fix', () => {
    expect(readNumber('0,20')).toMatchObject({
      problem: expect.stringContaining('write 0.20'),
      fix: '0.20',
      number: '0.20',
    });
    expect(readNumber('0,125')).toMatchObject({ fix: '0.125' });
    expect(readNumber('1234,567')).toMatchObject({ fix: '1234.567' });
    expect(readNumber('1,234.5')).toMatchObject({ fix: '1234.5' });
    expect(readNumber('1.234,5')).toMatchObject({ fix: '1234.5' });
    expect(readNumber('1,250,000')).toMatchObject({ fix: '1250000' });
  });

  test('3,750 is two numbers: both are offered, none is taken', () => {
    const reading = readNumber('3,750');
    expect(reading).toEqual({ problem: expect.stringMatching(/3750.*3\.75\b/u) });
    expect(readQuantity('3,750 psi')).toEqual({ problem: expect.stringMatching(/3750.*3\.75\b/u), of: 'number' });
  });

  test('an exponent is written out', () => {
    expect(readNumber('5e3')).toMatchObject({ fix: '5000' });
    expect(readNumber('2.5E-3')).toMatchObject({ fix: '0.0025' });
    expect(readNumber('12.345e1')).toMatchObject({ fix: '123.45' });
    expect(readNumber('5e−3')).toMatchObject({ fix: '0.005' });
  });

  test('writing out keeps the value', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 9999 }),
        fc.integer({ min: 0, max: 99 }),
        fc.integer({ min: -8, max: 6 }),
        (whole, part, power) => {
          const reading = readNumber(`${whole}.${part}e${power}`);
          expect('number' in reading && Number(reading.number)).toBeCloseTo(Number(`${whole}.${part}e${power}`), 10);
        },
      ),
    );
  });

  test.each([
    '1e999',
    '1e99999999999',
    '1e-999',
    '1234567890123456',
    '0.1234567890123456',
    '1000000000001',
    '1.2.3',
    '1,2,3',
    '',
    'x',
  ])('%s has no number', (text) => {
    expect(readNumber(text)).toEqual({ problem: expect.any(String) });
  });

  test('printed groups of three read back', () => {
    expect(readNumber('25\u202F855')).toEqual({ number: '25855' });
    expect(readQuantity('25\u00A0855 kPa')).toEqual({ quantity: { number: '25855', unit: 'kPa' } });
  });

  test('no text makes the reader throw', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), (text) => void [readNumber(text), readQuantity(text), readUnit(text)]),
    );
  });
});

describe('units', () => {
  test.each([
    ['N⋅m', 'N·m'],
    ['N•m', 'N·m'],
    ['º', '°'],
    ['ºC', '°C'],
    ['μm', 'µm'],
    ['Ω', 'Ω'],
    ['cam\u00A0deg', 'cam °'],
  ])('the look-alike %s is %s', (text, unit) => expect(readUnit(text)).toEqual({ unit }));

  test.each([
    ['Bar', 'bar'],
    ['nm', 'N·m'],
    ['NM', 'N·m'],
    ['PSI', 'psi'],
    ['mPa', 'MPa'],
    ['mins', 'min'],
    ['secs', 's'],
    ['sec', 's'],
    ['ft-lb', 'lbf·ft'],
    ['ft·lb', 'lbf·ft'],
    ['Ft-Lbs', 'lbf·ft'],
    ['in-lb', 'lbf·in'],
    ['N-m', 'N·m'],
    ['kg-m', 'kgf·m'],
    ['RPM', 'rpm'],
    ['cc', 'mL'],
    ['degC', null],
    ['deg C', '°C'],
  ])('%s', (text, near) => {
    if (near === null) expect(readUnit(text)).toEqual({ unit: '°C' });
    else expect(readUnit(text)).toEqual({ near, why: expect.stringContaining(near) });
  });

  test('mil is refused and thou offered', () => {
    expect(readUnit('mil')).toEqual({ refused: expect.stringContaining('thou') });
    expect(readQuantity('3 mil')).toEqual({ problem: expect.stringContaining('thou'), of: 'unit' });
  });

  test('an unknown unit is refused', () => {
    expect(readUnit('furlong')).toEqual({ refused: expect.stringContaining('furlong') });
  });
});

describe('quantities', () => {
  test('a near miss gives the corrected text and goes on', () => {
    expect(readQuantity('45 ft-lb')).toMatchObject({ fix: '45 lbf·ft', quantity: { number: '45', unit: 'lbf·ft' } });
  });

  test('two faults are both reported, and corrected at once', () => {
    const reading = readQuantity('1,5 Bar');
    expect(reading).toMatchObject({ fix: '1.5 bar', quantity: { number: '1.5', unit: 'bar' } });
    expect('problem' in reading && reading.problem).toMatch(/1\.5.*Bar/u);
  });

  test('a fix leaves an accepted spelling as typed', () => {
    expect(readQuantity('0,5 Nm')).toMatchObject({ fix: '0.5 Nm' });
  });

  test('every fix reads without a problem', () => {
    for (const text of ['0,20 mm', '45 N-m', '5e3 bar', '3 mins', '90 degrees', '1,5 Bar', '4 percent']) {
      const reading = readQuantity(text);
      if (!('fix' in reading)) throw new Error(`no fix for ${text}`);
      expect(readQuantity(reading.fix as string)).toEqual({ quantity: reading.quantity });
    }
  });
});
