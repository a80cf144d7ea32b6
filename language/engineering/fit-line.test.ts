import { describe, expect, it } from 'vitest';
import { fitLine, lineAt, newPointAt } from './fit-line.ts';

/** NIST Statistical Reference Datasets, Norris (public domain): y and x of 36 points. The data from memory. */
const norris = `
  0.1 0.2  338.8 337.4  118.1 118.2  888.0 884.6  9.2 10.1  228.1 226.5  668.5 666.3  998.5 996.3  449.1 448.6
  778.9 777.0  559.2 558.2  0.3 0.4  0.1 0.6  778.1 775.5  668.8 666.9  339.3 338.0  448.9 447.5  10.8 11.6
  557.7 556.0  228.3 228.1  998.0 995.8  888.8 887.6  119.6 120.2  0.3 0.3  0.6 0.3  557.6 556.8  339.3 339.1
  888.0 887.2  998.5 999.0  778.9 779.0  10.2 11.1  117.6 118.3  228.9 229.2  668.4 669.1  449.2 448.9  0.2 0.5`;

describe('a line by least squares', () => {
  it('gives what NIST certifies for Norris, to ten digits', () => {
    const figures = norris.trim().split(/\s+/u).map(Number);
    const points = Array.from({ length: 36 }, (_, index) => ({ y: figures[2 * index]!, x: figures[2 * index + 1]! }));
    const line = fitLine(points)!;
    expect(line.intercept).toBeCloseTo(-0.262323073774029, 10);
    expect(line.slope).toBeCloseTo(1.00211681802045, 12);
    expect(line.residual).toBeCloseTo(0.884796396144373, 10);
    // From memory, as the data.
    expect(line.interceptError).toBeCloseTo(0.232818234301152, 10);
    expect(line.slopeError).toBeCloseTo(0.000429796848199937, 12);
  });

  it('gives the calibration of a thermometer of GUM H.3 (JCGM 100:2008), correlation and prediction with it', () => {
    // Temperatures and corrections of table H.6, from memory; reckoned from 20 °C.
    const readings = [21.521, 22.012, 22.512, 23.003, 23.507, 23.999, 24.513, 25.002, 25.503, 26.01, 26.511];
    const corrections = [-0.171, -0.169, -0.166, -0.159, -0.164, -0.165, -0.156, -0.157, -0.159, -0.161, -0.16];
    const line = fitLine(readings.map((x, index) => ({ x: x - 20, y: corrections[index]! })))!;
    expect(line.intercept).toBeCloseTo(-0.1712, 4);
    expect(line.slope).toBeCloseTo(0.00218, 5);
    expect(line.covariance / (line.slopeError * line.interceptError)).toBeCloseTo(-0.93, 3);
    const at30 = lineAt(line, 10);
    expect(at30.value).toBeCloseTo(-0.1494, 4);
    expect(at30.uncertainty).toBeCloseTo(0.0041, 4);
    // What leaving out the correlation gives instead.
    expect(Math.hypot(line.interceptError, 10 * line.slopeError)).toBeCloseTo(0.0073, 4);
  });

  it('puts a new point within Student’s t of the line: 4.303 for 95 % of two degrees of freedom', () => {
    const line = fitLine([
      { x: 0, y: 0 },
      { x: 1, y: 1 },
      { x: 2, y: 1.9 },
      { x: 3, y: 3.1 },
    ])!;
    const { low, high } = newPointAt(line, 1.5, 0.95);
    expect((high - low) / 2 / Math.hypot(line.residual, lineAt(line, 1.5).uncertainty)).toBeCloseTo(4.303, 3);
    expect((high + low) / 2).toBeCloseTo(lineAt(line, 1.5).value, 12);
  });

  it('puts it within t of one degree of freedom, which is a tangent: 12.706 for 95 %, 63.657 for 99 %', () => {
    const line = fitLine([0, 1.1, 1.9].map((y, x) => ({ x, y })))!;
    const across = Math.hypot(line.residual, lineAt(line, 1).uncertainty);
    // NIST/SEMATECH e-Handbook, 1.3.6.7.2, from memory.
    for (const [share, published] of [
      [0.95, 12.706],
      [0.99, 63.657],
    ] as const) {
      const { low, high } = newPointAt(line, 1, share);
      expect((high - low) / 2 / across).toBeCloseTo(published, 3);
      expect((high - low) / 2 / across / Math.tan((Math.PI * share) / 2)).toBeCloseTo(1, 12);
    }
  });

  it('is refused for two points, for points at one place, and for what is no number', () => {
    expect(
      fitLine([
        { x: 0, y: 0 },
        { x: 1, y: 1 },
      ]),
    ).toBeNull();
    expect(fitLine([1, 2, 3].map((y) => ({ x: 1, y })))).toBeNull();
    expect(fitLine([1, 2, Number.NaN].map((y, x) => ({ x, y })))).toBeNull();
  });
});
