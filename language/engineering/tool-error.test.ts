import { describe, expect, it } from 'vitest';
import type { Figure, RangeLimit } from '../quantities/types.ts';
import { errorOfClass, permissibleError } from './tool-error.ts';

const bar = (number: string): Figure => ({ number, unit: 'bar' });
const dial = (low: string, high: string): RangeLimit => ({ form: 'range', low: bar(low), high: bar(high) });

describe('the error of a class is percent of span (EN 837-1)', () => {
  it.each([
    ['1.6', dial('0', '10'), '0.16'],
    ['1.0', dial('-1', '5'), '0.06'],
    ['0.25', dial('0', '400'), '1'],
    ['0.6', dial('0', '400'), '2.4'],
  ])('class %s', (accuracyClass, range, error) => {
    expect(errorOfClass(accuracyClass, range)).toEqual(bar(error));
  });

  it('is of the span in degrees, whatever unit its ends are in: 0 °C to 212 °F are 180 °F', () => {
    const mixed: RangeLimit = { form: 'range', low: { number: '0', unit: '°C' }, high: { number: '212', unit: '°F' } };
    expect(errorOfClass('1.0', mixed)).toEqual({ number: '1.8', unit: '°F' });
  });

  it('has none where the ends are no span, or the class is no number', () => {
    expect(errorOfClass('1.0', dial('400', '400'))).toBeNull();
    expect(errorOfClass('1.0', { form: 'range', low: { number: '0', unit: 'mm' }, high: bar('400') })).toBeNull();
    expect(errorOfClass('1,0,0', dial('0', '400'))).toBeNull();
  });
});

describe('the error of a tool', () => {
  const tool = { within: null, accuracyClass: null, range: null };
  const mm: Figure = { number: '0.003', unit: 'mm' };

  it('is what it is good for, in the unit in which the shop says it', () => {
    expect(permissibleError({ ...tool, within: mm }, { number: '1.50', unit: 'mm' })).toEqual(mm);
    expect(permissibleError({ ...tool, within: mm }, { number: '20', unit: 'µm' })).toEqual(mm);
  });

  it('or percent of the reading: a torque tool of ISO 6789 at 60 N·m', () => {
    expect(permissibleError({ ...tool, within: { number: '4', unit: '%' } }, { number: '60', unit: 'N·m' })).toEqual({
      number: '2.4',
      unit: 'N·m',
    });
  });

  it('in percent of the number that it shows: 1 % at 20 °C is 0.68 °F on a thermometer in °F', () => {
    const fahrenheit = {
      form: 'range',
      low: { number: '0', unit: '°F' },
      high: { number: '250', unit: '°F' },
    } as const;
    expect(
      permissibleError(
        { ...tool, within: { number: '1', unit: '%' }, range: fahrenheit },
        { number: '20', unit: '°C' },
      ),
    ).toEqual({ number: '0.68', unit: '°F' });
  });

  it('or that of its class', () => {
    expect(permissibleError({ ...tool, accuracyClass: '0.25', range: dial('0', '400') }, bar('250'))).toEqual(bar('1'));
  });

  it('is not known where it is not stated, or is of another kind', () => {
    expect(permissibleError(tool, bar('250'))).toBeNull();
    expect(permissibleError({ ...tool, within: mm }, bar('250'))).toBeNull();
    expect(permissibleError({ ...tool, accuracyClass: '0.25' }, bar('250'))).toBeNull();
  });
});
