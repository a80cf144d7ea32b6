import { expect, it } from 'vitest';
import type { RecordResult } from '../../../language/archive/record.ts';
import { fitSlope } from '../../../language/engineering/fit-slope.ts';
import { shimSums } from './shim-sums.ts';

const row = (role: RecordResult['role'], name: string, number: string, unit: string): RecordResult => ({
  role,
  name,
  value: { number, unit },
  passed: null,
  limit: null,
  margin: null,
  tool: null,
  watched: null,
  by: null,
  on: null,
  text: null,
  tries: 1,
});
const shim = (role: 'shim out' | 'shim in', size: string) => row(role, 'shim', size, 'mm');
const read = (bar: string, role: RecordResult['role'] = 'earlier') => row(role, 'opening', bar, 'bar');

const units = [
  [
    read('208', 'as found'),
    shim('shim out', '1.30'),
    read('231'),
    shim('shim in', '1.50'),
    read('250'),
    read('251', 'as left'),
  ],
  [read('236'), shim('shim out', '1.36'), shim('shim in', '1.54'), read('254', 'as left')],
  [
    shim('shim out', '1.20'),
    read('219'),
    shim('shim in', '1.44'),
    read('242'),
    shim('shim in', '1.56'),
    read('254', 'as left'),
  ],
];

it('adds up over units to the slope and the error that a fit of all of them gives', () => {
  const all = units.map((one) => shimSums(one, 'shim', 'opening')!);
  const sum = (key: 'points' | 'xx' | 'xy' | 'yy' | 'blurX' | 'blurY') =>
    all.reduce((total, one) => total + one[key], 0);
  const slope = sum('xy') / sum('xx');
  const freedom = sum('points') - all.length - 1;
  const blurred = (sum('blurY') + slope ** 2 * sum('blurX')) / sum('points');
  const error = Math.sqrt(((sum('yy') - slope * sum('xy')) / freedom + blurred) / sum('xx'));
  const points = [
    [
      [1.3, 231],
      [1.5, 250],
      [1.5, 251],
    ],
    [
      [1.36, 236],
      [1.54, 254],
    ],
    [
      [1.2, 219],
      [1.44, 242],
      [1.56, 254],
    ],
  ].map((one) => one.map(([x, y]) => ({ x: x!, y: y! })));
  const fit = fitSlope(points, { x: 0.01 / Math.sqrt(12), y: 1 / Math.sqrt(12) })!;
  expect(slope).toBeCloseTo(fit.slope, 9);
  expect(error).toBeCloseTo(fit.error, 9);
});

it('is nothing where one shim was read with, or none came out', () => {
  for (const one of [
    [read('231'), read('254', 'as left')],
    [shim('shim in', '1.50'), read('254', 'as left')],
    [read('208', 'as found'), shim('shim out', '1.30'), shim('shim in', '1.50'), read('254', 'as left')],
    [shim('shim out', '1.30'), read('3400', 'earlier'), shim('shim in', '1.30'), read('254', 'as left')],
  ])
    expect(shimSums(one, 'shim', 'opening')).toBeNull();
});

it('leaves out readings in another unit than the first', () => {
  const psi = row('earlier', 'opening', '3600', 'psi');
  const one = [shim('shim out', '1.30'), read('231'), psi, shim('shim in', '1.50'), read('250', 'as left')];
  expect(shimSums(one, 'shim', 'opening')).toMatchObject({ points: 2, unit: 'bar' });
});
