import { weights } from '../drawing.ts';
import { outline, strokes } from '../lines.ts';
import {
  across,
  alongBoth,
  around,
  at,
  backdrop,
  circle,
  cut,
  type Shape,
  teeth,
  threadLines,
  turned,
  whole,
} from './pen.ts';

/** A rod that passes a force on: slim, rounded at its ends. */
export const rod: Shape = {
  height: 17,
  draw(frame) {
    const { height } = frame;
    const radius = Math.max(1.1, frame.width * 0.14);
    const round = radius * 0.7;
    return {
      marks: [
        outline(
          turned(frame, [
            [radius * 0.4, 0],
            [radius, round],
            [radius, height - round],
            [radius * 0.4, height],
          ]),
        ),
        across(frame, radius, round),
        across(frame, radius, height - round),
      ],
      spot: at(frame, radius * 0.45, height / 2),
      upper: whole(frame, radius * 0.4),
      lower: whole(frame, radius * 0.4),
    };
  },
};

/** A stepped shaft with a thread at its end. */
export const shaft: Shape = {
  height: 20,
  draw(frame) {
    const { height } = frame;
    const radius = Math.max(1.4, frame.width * 0.16);
    const [collar, shoulder] = [height * 0.16, height * 0.62];
    return {
      marks: [
        outline(
          turned(frame, [
            [radius * 1.5, 0],
            [radius * 1.5, collar],
            [radius, collar],
            [radius, shoulder],
            [radius * 0.72, shoulder],
            [radius * 0.72, height * 0.78],
            ...teeth(radius * 0.72, height * 0.79, height - 0.5, 0.5),
            [radius * 0.4, height],
          ]),
        ),
        across(frame, radius * 1.5, collar),
        across(frame, radius, shoulder),
        threadLines(frame, radius * 0.72, height * 0.79, height - 0.5, 0.5),
      ],
      spot: at(frame, radius * 0.5, height * 0.4),
      upper: whole(frame, radius * 1.5),
      lower: whole(frame, radius * 0.4),
    };
  },
};

/** A plunger or piston: a ground cylinder with a foot, and the helix that ends its stroke. */
export const piston: Shape = {
  height: 17,
  draw(frame) {
    const { height } = frame;
    const radius = Math.max(1.6, frame.width * 0.22);
    const [from, to, neck, foot] = [height * 0.16, height * 0.34, height * 0.8, height * 0.9];
    return {
      marks: [
        outline(
          turned(frame, [
            [radius, 0],
            [radius, neck],
            [radius * 0.6, neck],
            [radius * 0.6, foot],
            [radius * 1.2, foot],
            [radius * 1.2, height],
          ]),
        ),
        strokes(
          'outline',
          [
            [at(frame, -radius * 0.2, 0), at(frame, -radius * 0.2, from), at(frame, radius, to)],
            [at(frame, -radius, to + 1), at(frame, radius, to + 1)],
          ],
          { weight: weights.thin },
        ),
        across(frame, radius, neck),
        across(frame, radius * 1.2, foot),
      ],
      spot: at(frame, radius * 0.5, height * 0.6),
      upper: whole(frame, radius),
      lower: whole(frame, radius * 1.2),
    };
  },
};

/** The cylinder that a plunger slides in, cut: a collar, a bore, a hole in its side. */
export const barrel: Shape = {
  height: 18,
  draw(frame, { falling }) {
    const { height } = frame;
    const [collar, outer, bore] = [frame.width * 0.5, frame.width * 0.38, frame.width * 0.16];
    const shoulder = height * 0.34;
    const hole = Math.min(0.9, bore * 0.6);
    return {
      marks: [
        backdrop(frame, outer, 0, height),
        ...cut(
          frame,
          [
            [bore, 0],
            [collar, 0],
            [collar, shoulder],
            [outer, shoulder],
            [outer, height],
            [bore, height],
          ],
          falling,
        ),
        outline(circle(frame.middle, frame.top + height * 0.52, hole), { weight: weights.thin }),
        across(frame, bore, 0),
        across(frame, bore, height),
      ],
      spot: at(frame, (collar + bore) / 2, shoulder / 2),
      upper: around(frame, collar, bore),
      lower: around(frame, outer, bore),
    };
  },
};

/** A valve with a cone that closes on its seat, and flutes that guide it. */
export const valve: Shape = {
  height: 13,
  draw(frame) {
    const { height } = frame;
    const head = frame.width * 0.34;
    const [stem, guide] = [head * 0.4, head * 0.62];
    const [top, cone, band] = [height * 0.24, height * 0.36, height * 0.5];
    return {
      marks: [
        outline(
          turned(frame, [
            [stem, 0],
            [stem, top],
            [head, top],
            [head, cone],
            [guide, band],
            [guide, height - 0.8],
            [guide - 0.6, height],
          ]),
        ),
        across(frame, head, top),
        across(frame, head, cone),
        across(frame, guide, band),
        alongBoth(frame, guide * 0.35, band, height),
      ],
      spot: at(frame, head * 0.7, (top + cone) / 2),
      upper: whole(frame, stem),
      lower: whole(frame, guide - 0.6),
    };
  },
};

/** A filter: a body of fine slots or mesh. */
export const filter: Shape = {
  height: 11,
  draw(frame) {
    const { height } = frame;
    const radius = Math.max(2, frame.width * 0.3);
    const rim = Math.min(1.6, height * 0.16);
    const lines: { x: number; y: number }[][] = [];
    for (let down = rim + 1; down < height - rim - 0.4; down += 1.1)
      lines.push([at(frame, -radius * 0.86, down), at(frame, radius * 0.86, down)]);
    const upright = Array.from({ length: 5 }, (_, index) => radius * 0.86 * (index / 2 - 1)).map((x) => [
      at(frame, x, rim),
      at(frame, x, height - rim),
    ]);
    return {
      marks: [
        outline(
          turned(frame, [
            [radius, 0],
            [radius, rim],
            [radius * 0.86, rim],
            [radius * 0.86, height - rim],
            [radius, height - rim],
            [radius, height],
          ]),
        ),
        across(frame, radius, rim),
        across(frame, radius, height - rim),
        strokes('outline', [...lines, ...upright], { weight: weights.hair }),
      ],
      spot: at(frame, radius, rim / 2),
      upper: whole(frame, radius),
      lower: whole(frame, radius),
    };
  },
};

/** A part about which nothing else is known: a turned piece, its edges broken. */
export const block: Shape = {
  height: 7,
  draw(frame) {
    const { height } = frame;
    const half = frame.width * 0.5;
    const chamfer = Math.min(0.9, height * 0.16);
    return {
      marks: [
        outline(
          turned(frame, [
            [half - chamfer, 0],
            [half, chamfer],
            [half, height - chamfer],
            [half - chamfer, height],
          ]),
        ),
        across(frame, half, chamfer),
        across(frame, half, height - chamfer),
      ],
      spot: at(frame, half * 0.75, height / 2),
      upper: whole(frame, half - chamfer),
      lower: whole(frame, half - chamfer),
    };
  },
};
