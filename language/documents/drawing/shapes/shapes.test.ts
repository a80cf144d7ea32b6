import { describe, expect, it } from 'vitest';
import { drawnAs } from '../../../model/drawn-as.ts';
import type { Mark, Point } from '../drawing.ts';
import { body } from './body.ts';
import { shapes } from './index.ts';
import { type Frame, hatchWithin, type Sketch } from './pen.ts';

const details = { falling: false, hasTip: true, isHollow: true };
const frames: Frame[] = [
  { middle: 50, top: 10, width: 40, height: 0 },
  { middle: 50, top: 10, width: 26, height: 0 },
  { middle: 50, top: 10, width: 9, height: 0 },
];
const points = (marks: readonly Mark[]): Point[] => marks.flatMap(({ runs }) => runs.flat());

function isSound(sketch: Sketch, { middle, top, width, height }: Frame) {
  // Spray that leaves a tip, and a thread's crest, are a little outside.
  const slack = 1.5;
  for (const { x, y } of points(sketch.marks)) {
    expect(Number.isFinite(x) && Number.isFinite(y)).toBe(true);
    expect(Math.abs(x - middle)).toBeLessThanOrEqual(Math.max(width / 2, 2.5) + slack);
    expect(y).toBeGreaterThanOrEqual(top - slack);
    expect(y).toBeLessThanOrEqual(top + height + slack);
  }
  expect(sketch.spot.x).toBeGreaterThan(middle);
  expect(sketch.spot.y).toBeGreaterThanOrEqual(top);
  expect(sketch.spot.y).toBeLessThanOrEqual(top + height);
  for (const [left, right] of [...sketch.upper, ...sketch.lower]) expect(left).toBeLessThan(right);
}

describe('a shape', () => {
  it.each(Object.keys(shapes))('%s stays in its frame, at any size', (name) => {
    const shape = shapes[name as keyof typeof shapes];
    for (const frame of frames)
      for (const scale of [1, 0.6, 0.42]) {
        const sized = { ...frame, height: Math.max(2, shape.height * scale) };
        const sketch = shape.draw(sized, details);
        expect(sketch.marks.length).toBeGreaterThan(0);
        isSound(sketch, sized);
      }
  });
  it('is there for each word, and no two are drawn alike', () => {
    expect(Object.keys(shapes)).toEqual(expect.arrayContaining([...drawnAs]));
    const frame = { middle: 50, top: 10, width: 30, height: 14 };
    const all = Object.values(shapes).map((shape) => JSON.stringify(shape.draw(frame, details).marks));
    expect(new Set(all).size).toBe(all.length);
  });
  it('of the part that carries all has what its joints and its bores ask for', () => {
    const frame = { middle: 50, top: 10, width: 40, height: 28 };
    const none = { isOpen: false, inside: false, outside: false };
    const open = { isOpen: true, inside: true, outside: true };
    for (const upper of [none, open])
      for (const lower of [none, open])
        for (const hasChannel of [false, true])
          isSound(body(frame, { upper, lower, hasChannel, rings: 1 }, false), frame);
    const edge = (sketch: Sketch) => [sketch.upper.length, sketch.lower.length];
    expect(edge(body(frame, { upper: open, lower: none, hasChannel: false, rings: 0 }, false))).toEqual([2, 1]);
    expect(edge(body(frame, { upper: open, lower: none, hasChannel: true, rings: 0 }, false))).toEqual([2, 2]);
  });
});

describe('hatching', () => {
  // ISO 128-50: thin lines at 45°.
  it('is at 45°, and inside of the outline', () => {
    const outline = [
      { x: 0, y: 0 },
      { x: 10, y: 0 },
      { x: 10, y: 10 },
      { x: 5, y: 5 },
      { x: 0, y: 10 },
    ];
    for (const falling of [false, true]) {
      const { runs } = hatchWithin(outline, 1, falling);
      expect(runs.length).toBeGreaterThan(5);
      for (const [from, to] of runs as [Point, Point][]) {
        expect(to.y - from.y).toBeCloseTo((falling ? 1 : -1) * (to.x - from.x));
        for (const { x, y } of [from, to]) expect(y).toBeLessThanOrEqual(5 + Math.abs(x - 5) + 1e-9);
      }
    }
  });
});
