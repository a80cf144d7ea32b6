import { describe, expect, it } from 'vitest';
import { fitLine, type Point } from './fit-line.ts';
import { fitSlope } from './fit-slope.ts';

const points: readonly Point[] = [
  { x: 1.2, y: 221 },
  { x: 1.3, y: 231.4 },
  { x: 1.4, y: 239.6 },
  { x: 1.5, y: 250.3 },
];

describe('one slope for several units', () => {
  it('of one unit is the line through it, with the same errors (which give NIST’s Norris: fit-line.test.ts)', () => {
    const [slope, line] = [fitSlope([points])!, fitLine(points)!];
    expect(slope.slope).toBeCloseTo(line.slope, 9);
    expect(slope.error).toBeCloseTo(line.slopeError, 9);
    expect(slope.residual).toBeCloseTo(line.residual, 9);
    expect(slope.freedom).toBe(2);
  });

  it('is that of the points drawn to the middle of their unit: by hand', () => {
    // Middles (1.3, 231) and (1.5, 210): slope Σxy/Σx² = (10 + 10 + 9.5 + 10.5) · 0.1 / 0.04 = 100.
    const unit = (x: number, y: number, below: number, above: number): Point[] => [
      { x: x - 0.1, y: y - below },
      { x, y: y + below - above },
      { x: x + 0.1, y: y + above },
    ];
    const found = fitSlope([unit(1.3, 231, 10, 10), unit(1.5, 210, 9.5, 10.5)])!;
    expect(found.slope).toBeCloseTo(100, 9);
    expect(found).toMatchObject({ points: 6, units: 2, freedom: 3 });
    // Residuals of the first: none. Of the second: heights 200.5, 209, 220.5 about 200, 210, 220: Σ = 0.25 + 1 + 0.25.
    expect(found.residual).toBeCloseTo(Math.sqrt(1.5 / 3), 9);
    expect(found.error).toBeCloseTo(Math.sqrt(1.5 / 3) / Math.sqrt(0.04), 9);
  });

  it('is not fooled by springs that differ: thicker shims lie in weaker units', () => {
    const weak = points.map(({ x, y }) => ({ x: x + 0.5, y: y - 20 }));
    expect(fitSlope([points, weak])!.slope).toBeCloseTo(fitLine(points)!.slope, 9);
    expect(fitLine([...points, ...weak])!.slope).toBeLessThan(40);
  });

  it('is refused without a point to spare, or where no shim was ever changed', () => {
    expect(fitSlope([points.slice(0, 2)])).toBeNull();
    expect(fitSlope([])).toBeNull();
    expect(fitSlope([[points[0]!, points[0]!, points[0]!]])).toBeNull();
    expect(fitSlope([[...points, { x: Number.NaN, y: 1 }]])).toBeNull();
  });
});
