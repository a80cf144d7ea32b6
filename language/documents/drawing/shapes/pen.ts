import { type Mark, type Point, weights } from '../drawing.ts';
import { outline, strokes } from '../lines.ts';

/** Where a shape is drawn: its axis, its upper edge, and the room that it may take. Millimeters. */
export interface Frame {
  readonly middle: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

/** A stretch of an edge that is solid: its left and right end. */
export type Stretch = readonly [left: number, right: number];

/** A shape, drawn. Up is away from the part that carries all. */
export interface Sketch {
  readonly marks: readonly Mark[];
  /** Where the leader of its name ends: on it, right of the axis. */
  readonly spot: Point;
  /** What is solid of its upper and its lower edge: there its faces are. */
  readonly upper: readonly Stretch[];
  readonly lower: readonly Stretch[];
  /** Where its first port is, if that has a place of its own: a nozzle's tip. */
  readonly mouth?: Point;
  /** Where rings go round it, if it has a place for them: x is the distance from the axis. */
  readonly belt?: Point;
}

/** What a shape may have to know of its neighbors. */
export interface Details {
  /** Hatched falling: neighbors that are cut are hatched in different directions. */
  readonly falling: boolean;
  /** It has spray holes, or whatever a port at its tip is. */
  readonly hasTip: boolean;
  /** It is drawn hollow: fluid passes through it. */
  readonly isHollow: boolean;
}

export interface Shape {
  /** Millimeters at full size. */
  readonly height: number;
  readonly draw: (frame: Frame, details: Details) => Sketch;
}

/** Distances from the axis and from the upper edge of the frame. */
export type Profile = readonly (readonly [radius: number, down: number])[];

/** A body of revolution, seen from the side: its profile, and the same mirrored. */
export function turned({ middle, top }: Frame, profile: Profile): Point[] {
  return [
    ...profile.map(([radius, down]) => ({ x: middle + radius, y: top + down })),
    ...[...profile].reverse().map(([radius, down]) => ({ x: middle - radius, y: top + down })),
  ];
}

/** The two halves of a body of revolution that is cut along its axis. */
export function cut(frame: Frame, profile: Profile, falling: boolean, every = 1.5): Mark[] {
  const { middle, top } = frame;
  // What is solid on the axis is one piece.
  if (profile[0]?.[0] === 0 && profile.at(-1)?.[0] === 0) return cutFace(turned(frame, profile), falling, every);
  return [1, -1].flatMap((side) =>
    cutFace(
      profile.map(([radius, down]) => ({ x: middle + side * radius, y: top + down })),
      falling,
      every,
    ),
  );
}

/** A cut face: hatched within its outline. */
function cutFace(points: readonly Point[], falling: boolean, every = 1.5): Mark[] {
  return [outline(points), hatchWithin(points, every, falling)];
}

/** Slanting lines at 45° within an outline, all on one grid. */
export function hatchWithin(points: readonly Point[], every: number, falling: boolean): Mark {
  const step = every * Math.SQRT2;
  // Rising lines have x + y = c, falling ones y - x = c.
  const along = ({ x, y }: Point) => (falling ? y - x : x + y);
  const all = points.map(along);
  const runs: Point[][] = [];
  for (let c = (Math.floor(Math.min(...all) / step) + 1) * step; c < Math.max(...all) - 1e-6; c += step) {
    const hits: Point[] = [];
    points.forEach((from, index) => {
      const to = points[(index + 1) % points.length]!;
      const [a, b] = [along(from) - c, along(to) - c];
      if (a < 0 === b < 0) return;
      const share = a / (a - b);
      hits.push({ x: from.x + (to.x - from.x) * share, y: from.y + (to.y - from.y) * share });
    });
    hits.sort((a, b) => a.x - b.x);
    for (let index = 0; index + 1 < hits.length; index += 2)
      if (hits[index + 1]!.x - hits[index]!.x > 0.05) runs.push([hits[index]!, hits[index + 1]!]);
  }
  return strokes('hatch', runs, { weight: weights.hair });
}

/** A circle in short lines. */
export function circle(x: number, y: number, radius: number, sides = 28): Point[] {
  return Array.from({ length: sides }, (_, index) => {
    const angle = ((index + 0.5) / sides) * 2 * Math.PI;
    return { x: x + radius * Math.cos(angle), y: y + radius * Math.sin(angle) };
  });
}

/** A circle that is so small, and black, that few sides are round. */
export const dot = (x: number, y: number, radius: number) => circle(x, y, radius, radius < 1 ? 8 : 12);

/**
 * The edge of a thread from one height to another, as part of a profile: teeth that go in from the radius by their depth.
 * A thread that is cut in a wall has a negative depth.
 */
export function teeth(radius: number, from: number, to: number, depth = 0.7): (readonly [number, number])[] {
  const count = Math.max(2, Math.round(Math.abs(to - from) / 1.3));
  return Array.from({ length: 2 * count + 1 }, (_, index) => [
    radius - (index % 2 === 0 ? depth : 0),
    from + ((to - from) * index) / (2 * count),
  ]);
}

/** The slanting lines of a thread that is seen from the side, between its two edges. */
export function threadLines(frame: Frame, radius: number, from: number, to: number, depth = 0.7): Mark {
  const { middle, top } = frame;
  const count = Math.max(2, Math.round(Math.abs(to - from) / 1.3));
  const pitch = (to - from) / count;
  const runs = Array.from({ length: count }, (_, index) => [
    { x: middle - radius, y: top + from + pitch * (index + 0.5) },
    { x: middle + radius - depth, y: top + from + pitch * (index + 1) },
  ]);
  return strokes('thread', runs, { weight: weights.hair });
}

/** A line across the axis, for an edge that is seen behind a cut or on a turned part. */
export function across({ middle, top }: Frame, radius: number, down: number, weight: number = weights.thin): Mark {
  return strokes(
    'outline',
    [
      [
        { x: middle - radius, y: top + down },
        { x: middle + radius, y: top + down },
      ],
    ],
    { weight },
  );
}

/** Lines along the axis at both sides of it. */
export function alongBoth(
  { middle, top }: Frame,
  radius: number,
  from: number,
  to: number,
  more: Partial<Mark> = {},
): Mark {
  return strokes(
    'outline',
    [1, -1].map((side) => [
      { x: middle + side * radius, y: top + from },
      { x: middle + side * radius, y: top + to },
    ]),
    { weight: weights.thin, ...more },
  );
}

/** White behind a cut part: what is seen through its bore. */
export function backdrop({ middle, top }: Frame, radius: number, from: number, to: number): Mark {
  return outline(
    [
      { x: middle - radius, y: top + from },
      { x: middle + radius, y: top + from },
      { x: middle + radius, y: top + to },
      { x: middle - radius, y: top + to },
    ],
    { weight: 0 },
  );
}

/** The edge of a solid part. */
export const whole = ({ middle }: Frame, radius: number): Stretch[] => [[middle - radius, middle + radius]];

/** The edge of a part with a hole in it. */
export const around = ({ middle }: Frame, radius: number, hole: number): Stretch[] => [
  [middle - radius, middle - hole],
  [middle + hole, middle + radius],
];

/** A point of a shape right of the axis. */
export const at = ({ middle, top }: Frame, radius: number, down: number): Point => ({
  x: middle + radius,
  y: top + down,
});
