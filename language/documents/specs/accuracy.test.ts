import { expect, it } from 'vitest';
import { wordsIn } from '../../i18n/index.ts';
import type { Asset } from '../../model/shop.ts';
import type { Figure, Limit, UnitName } from '../../quantities/types.ts';
import { accuracyOf } from './accuracy.ts';

const words = wordsIn('en');

const q = (number: string, unit: UnitName): Figure => ({ number, unit });
const place = { file: 'x', range: { start: { line: 0, character: 0 }, end: { line: 0, character: 1 } } };

const thermometer: Asset = {
  name: 'TH-1',
  title: 'TH-1',
  source: place,
  kind: 'tool',
  range: { form: 'range', low: q('32', '°F'), high: q('212', '°F') },
  within: q('1', '°C'),
  accuracyClass: null,
  graduated: q('1', '°F'),
  at: null,
  calibrated: null,
  due: null,
  calibrations: [],
  outOfUse: null,
  damped: false,
  digital: false,
  length: null,
};

it('of a thermometer: 20 to 30 °C in °F, its error as a difference and the limit as values', () => {
  const limit: Limit = { form: 'range', low: q('20', '°C'), high: q('30', '°C') };
  // Half of 10 °C over 1 °C; as a value 1 °C would be 33.8 °F.
  expect(accuracyOf(thermometer, limit, false, words)).toEqual({ error: '±1.8\u00a0°F', ratio: '5.0:1' });
  const classed = { ...thermometer, within: null, accuracyClass: '1' };
  expect(accuracyOf(classed, { form: 'range', low: q('68', '°F'), high: q('20.5', '°C') }, false, words)).toEqual({
    error: '±1.8\u00a0°F',
    ratio: '0.2:1',
  });
});

it('at exactly four to one says so, in whatever unit the error is written', () => {
  const gauge: Asset = {
    ...thermometer,
    range: { form: 'range', low: q('0', 'bar'), high: q('400', 'bar') },
    within: q('1', 'psi'),
    graduated: null,
  };
  const limit: Limit = { form: 'nominal', nominal: q('250', 'bar'), plus: q('4', 'psi'), minus: q('4', 'psi') };
  expect(accuracyOf(gauge, limit, false, words)?.ratio).toBe('4.0:1');
});
