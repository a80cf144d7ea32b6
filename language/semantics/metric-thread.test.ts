import { describe, expect, it } from 'vitest';
import { stressArea } from '../engineering/proof-load.ts';
import { readMetricThread } from './metric-thread.ts';

const read = (text: string) => {
  const thread = readMetricThread(text);
  return thread === null ? null : `${thread.diameter.number} ${thread.pitch.number}`;
};

describe('a metric thread', () => {
  it.each([
    ['M8x1.25', '8 1.25'],
    ['M8 x 1.25', '8 1.25'],
    ['m 8X1,25 mm', '8 1.25'],
    ['M12×1.75 left', '12 1.75'],
    ['M12x1.75, left-hand', '12 1.75'],
    ['M12x1.5 LH', '12 1.5'],
    ['M10x1.25-6g', '10 1.25'],
    ['M10 - 6g6h', '10 1.5'],
    ['M10', '10 1.5'],
    ['M4.5', '4.5 0.75'],
    ['M8.0', '8.0 1.25'],
  ])('is read of %s', (text, expected) => {
    expect(read(text)).toBe(expected);
  });

  it.each([
    '3/8-24',
    '5/8-18 UNF',
    'G 1/4',
    'Tr 20x4',
    // A pitch that is not written and not known, or that is written in another way.
    'M13',
    'M40',
    'M8-1.25',
    'M8 fine',
    'M16xPh3P1.5',
    'M8x',
    // A point forgotten: nothing is left of the bolt.
    'M8x125',
    'M0',
    'AM8',
    '',
  ])('is not read of “%s”', (text) => {
    expect(read(text)).toBeNull();
  });

  it.each([
    ['M3', '5.03'],
    ['M3.5', '6.78'],
    ['M4', '8.78'],
    ['M5', '14.2'],
    ['M6', '20.1'],
    ['M7', '28.9'],
    ['M8', '36.6'],
    ['M10', '58.0'],
    ['M12', '84.3'],
    ['M14', '115'],
    ['M16', '157'],
    ['M18', '192'],
    ['M20', '245'],
    ['M22', '303'],
    ['M24', '353'],
    ['M27', '459'],
    ['M30', '561'],
    ['M33', '694'],
    ['M36', '817'],
  ])(
    '%s with no pitch is the coarse one: ISO 898-1 prints its stress area as %s mm² (from memory)',
    (text, printed) => {
      const { diameter, pitch } = readMetricThread(text)!;
      expect((stressArea(diameter, pitch)! * 1e6).toPrecision(3)).toBe(printed);
    },
  );
});
