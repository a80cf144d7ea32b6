import { type Mark, type Point, weights } from '../drawing.ts';
import { outline, strokes } from '../lines.ts';
import { at, type Frame, type Shape, whole } from './pen.ts';

/** A compression spring seen from the side: its coils, closed and ground flat at both ends. */
export const spring: Shape = {
  height: 18,
  draw(frame) {
    const { height, width } = frame;
    const half = width * 0.46;
    const wire = Math.min(1.9, Math.max(0.8, Math.min(width * 0.1, height * 0.085)));
    const coils = Math.max(3, Math.min(7, Math.round((height - 2 * wire) / (wire * 2))));
    const pitch = (height - wire) / coils;
    const y = (turns: number) => wire / 2 + turns * pitch;
    const marks: Mark[] = [];
    // Behind the axis the wire rises the other way, and is thinner to the eye.
    for (let coil = 0; coil < coils; coil++)
      marks.push(strand(frame, [-half, y(coil + 0.5)], [half, y(coil + 1)], wire, 'behind'));
    for (let coil = 0; coil < coils; coil++)
      marks.push(strand(frame, [half, y(coil)], [-half, y(coil + 0.5)], wire, 'before'));
    for (const down of [y(0), y(coils)]) marks.push(strand(frame, [-half, down], [half, down], wire, 'before'));
    return {
      marks,
      spot: at(frame, half * 0.72, y(Math.floor(coils / 2) + 0.07)),
      upper: whole(frame, half),
      lower: whole(frame, half),
    };
  },
};

type End = readonly [radius: number, down: number];

/** One run of wire, round at its ends. */
function strand({ middle, top }: Frame, from: End, to: End, wire: number, where: 'before' | 'behind'): Mark {
  const [a, b] = [from, to].map(([radius, down]) => ({ x: middle + radius, y: top + down })) as [Point, Point];
  if (where === 'behind') return strokes('spring', [[a, b]], { weight: weights.thin });
  const length = Math.hypot(b.x - a.x, b.y - a.y);
  const [ux, uy] = [(b.x - a.x) / length, (b.y - a.y) / length];
  const radius = wire / 2;
  const cap = (end: Point, sign: number): Point[] =>
    [-90, -45, 0, 45, 90].map((degrees) => {
      const angle = (degrees * Math.PI) / 180;
      const [forward, sideways] = [sign * Math.cos(angle) * radius, sign * Math.sin(angle) * radius];
      return { x: end.x + ux * forward - uy * sideways, y: end.y + uy * forward + ux * sideways };
    });
  return outline([...cap(b, 1), ...cap(a, -1)], { role: 'spring', weight: weights.outline });
}

/** Folds that give way, between two end plates. */
export const bellows: Shape = {
  height: 13,
  draw(frame) {
    const { height, width, middle, top } = frame;
    const [outer, inner] = [width * 0.46, width * 0.32];
    const plate = Math.min(1.4, height * 0.12);
    const folds = Math.max(3, Math.round((height - 2 * plate) / 2.4));
    const edge: [number, number][] = Array.from({ length: 2 * folds + 1 }, (_, index) => [
      index % 2 === 0 ? inner : outer,
      plate + ((height - 2 * plate) * index) / (2 * folds),
    ]);
    const points = [
      ...edge.map(([radius, down]) => ({ x: middle + radius, y: top + down })),
      ...[...edge].reverse().map(([radius, down]) => ({ x: middle - radius, y: top + down })),
    ];
    const lines = edge
      .slice(1, -1)
      .map(([radius, down]) => [-1, 1].map((side) => ({ x: middle + side * radius, y: top + down })));
    const plates = [0, height - plate].map((down) =>
      outline(
        [
          { x: middle - outer, y: top + down },
          { x: middle + outer, y: top + down },
          { x: middle + outer, y: top + down + plate },
          { x: middle - outer, y: top + down + plate },
        ],
        { fill: 'black', weight: 0 },
      ),
    );
    return {
      marks: [outline(points), strokes('outline', lines, { weight: weights.hair }), ...plates],
      spot: at(frame, inner * 0.8, height / 2),
      upper: whole(frame, outer),
      lower: whole(frame, outer),
    };
  },
};
