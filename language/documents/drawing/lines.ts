import { type Box, type Mark, type MarkRole, type Point, weights } from './drawing.ts';

/** The corners of a box. */
export function corners({ x, y, width, height }: Box): Point[] {
  return [
    { x, y },
    { x: x + width, y },
    { x: x + width, y: y + height },
    { x, y: y + height },
  ];
}

/** A closed shape that hides what lies behind it. */
export function outline(points: readonly Point[], more: Partial<Mark> = {}): Mark {
  return {
    role: 'outline',
    runs: [points],
    closed: true,
    fill: 'white',
    weight: weights.outline,
    dash: [],
    ...more,
  };
}

/** Open lines. */
export function strokes(role: MarkRole, runs: readonly (readonly Point[])[], more: Partial<Mark> = {}): Mark {
  return { role, runs, closed: false, fill: 'none', weight: weights.thin, dash: [], ...more };
}

/**
 * Slanting lines over a box, as a section is hatched; `every` millimeters across. All lie on one grid, so that boxes beside
 * each other are hatched as one piece.
 */
export function hatch(box: Box, every: number, role: MarkRole = 'hatch', falling = false): Mark {
  const { x, y, width, height } = box;
  const step = every * Math.SQRT2;
  // Rising lines have x + y = c, falling ones x - y = c.
  const [least, most] = falling ? [x - y - height, x + width - y] : [x + y, x + y + width + height];
  const runs: Point[][] = [];
  for (let c = (Math.floor(least / step) + 1) * step; c < most - 1e-6; c += step) {
    const [from, to] = [
      Math.max(x, falling ? c + y : c - y - height),
      Math.min(x + width, falling ? c + y + height : c - y),
    ];
    if (to - from > 1e-6) runs.push([from, to].map((at) => ({ x: at, y: falling ? at - c : c - at })));
  }
  return strokes(role, runs, { weight: weights.hair });
}

/** A part that is drawn elsewhere, as the ground of a stack: dashed, its lower end left open. */
export function ghost({ x, y, width, height }: Box): Mark[] {
  const sides: Point[] = [
    { x, y: y + height },
    { x, y },
    { x: x + width, y },
    { x: x + width, y: y + height },
  ];
  return [
    outline(corners({ x, y, width, height }), { weight: 0 }),
    strokes('ghost', [sides], { weight: weights.thin, dash: [1.6, 1.1] }),
  ];
}
