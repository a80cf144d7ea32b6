import type { Measures, PlacedItem, Scene } from './column.ts';
import { type Mark, type Point, weights } from './drawing.ts';
import { outline, strokes } from './lines.ts';

/** A dimension between a part and the next one over it, for each gap that is set there. Its figure is at the part's name. */
export function gapMarks({ facts }: Scene, placed: readonly PlacedItem[], { middle }: Measures): Mark[] {
  return placed.flatMap((item) => {
    if (!facts.gaps.has(item.part)) return [];
    const isBelow = item.entry.isBelow;
    const next = isBelow
      ? placed.find(({ box }) => box.y > item.box.y)
      : placed.findLast(({ box }) => box.y < item.box.y);
    if (next === undefined) return [];
    const [from, to] = isBelow
      ? [item.box.y + item.box.height, next.box.y]
      : [next.box.y + next.box.height, item.box.y];
    const x = middle + 2.4;
    return to - from < 3 ? [] : dimension(x, from, to);
  });
}

/** An upright dimension line with an arrow at each end. */
function dimension(x: number, from: number, to: number): Mark[] {
  const tip = (y: number, way: number): Point[] => [
    { x, y },
    { x: x - 0.7, y: y + way * 1.5 },
    { x: x + 0.7, y: y + way * 1.5 },
  ];
  return [
    strokes(
      'dimension',
      [
        [
          { x, y: from },
          { x, y: to },
        ],
      ],
      { weight: weights.thin },
    ),
    ...[tip(from, 1), tip(to, -1)].map((points) => outline(points, { role: 'dimension', fill: 'black', weight: 0 })),
  ];
}
