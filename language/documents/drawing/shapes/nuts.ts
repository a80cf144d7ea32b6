import { outline } from '../lines.ts';
import { across, alongBoth, around, at, backdrop, circle, cut, type Shape, teeth, turned, whole } from './pen.ts';

/** A nut that goes over what it holds: open below, with its thread there, and a hole in its roof. */
export const retainingNut: Shape = {
  height: 14,
  draw(frame, { falling }) {
    const { width, height } = frame;
    const outer = width * 0.5;
    const wall = Math.max(2, width * 0.11);
    const inner = outer - wall;
    const hole = inner * 0.5;
    const roof = height * 0.28;
    const thread = height * 0.56;
    return {
      marks: [
        backdrop(frame, outer, 0, height),
        across(frame, hole, 0),
        across(frame, inner, roof),
        ...cut(
          frame,
          [
            [outer - 0.8, 0],
            [outer, 0.8],
            [outer, height],
            ...teeth(inner, height, thread, -0.7),
            [inner, thread],
            [inner, roof],
            [hole, roof],
            [hole, 0],
          ],
          falling,
          // Closer than what it is screwed to: it touches more than one part.
          1,
        ),
        across(frame, inner, height),
      ],
      spot: at(frame, (outer + hole) / 2, roof / 2),
      upper: around(frame, outer, hole),
      lower: around(frame, outer, inner),
    };
  },
};

/** A hexagon nut, seen from the side. */
export const nut: Shape = {
  height: 6.5,
  draw(frame) {
    const { height } = frame;
    const half = frame.width * 0.5;
    const chamfer = Math.min(0.8, height * 0.15);
    return {
      marks: [
        outline(
          turned(frame, [
            [half - chamfer * 1.5, 0],
            [half, chamfer],
            [half, height - chamfer],
            [half - chamfer * 1.5, height],
          ]),
        ),
        alongBoth(frame, half * 0.5, chamfer * 0.6, height - chamfer * 0.6),
        alongBoth(frame, half * 0.24, 0, height, { dash: [1.2, 0.7] }),
      ],
      spot: at(frame, half * 0.75, height / 2),
      upper: whole(frame, half),
      lower: whole(frame, half),
    };
  },
};

/** A nut that is closed: a hexagon with a dome over it. */
export const capNut: Shape = {
  height: 10,
  draw(frame) {
    const { height } = frame;
    const half = frame.width * 0.5;
    const dome = half * 0.78;
    const hex = height * 0.45;
    const round = circle(0, 0, 1)
      .filter(({ x, y }) => x >= -1e-9 && y <= 1e-9)
      .sort((a, b) => a.y - b.y)
      .map(({ x, y }) => [x * dome, hex + y * hex * 0.98] as const);
    return {
      marks: [
        outline(turned(frame, [[0, 0], ...round, [half - 0.8, hex], [half, hex + 0.8], [half, height]])),
        across(frame, half - 0.8, hex),
        alongBoth(frame, half * 0.5, hex, height),
        alongBoth(frame, half * 0.62, height * 0.55, height, { dash: [1.2, 0.7] }),
      ],
      spot: at(frame, half * 0.75, (hex + height) / 2),
      upper: whole(frame, dome * 0.3),
      lower: whole(frame, half),
    };
  },
};
