import { type Mark, type Point, weights } from '../drawing.ts';
import { outline, strokes } from '../lines.ts';
import { across, alongBoth, around, at, backdrop, circle, cut, type Frame, type Shape, turned, whole } from './pen.ts';

/** A thin ring, cut: so thin that the cut is black. */
export const washer: Shape = {
  height: 2.2,
  draw(frame) {
    const { height } = frame;
    const [outer, hole] = [frame.width * 0.5, frame.width * 0.3];
    return {
      marks: [
        across(frame, hole, 0),
        across(frame, hole, height),
        ...[1, -1].map((side) =>
          outline(
            [
              at(frame, side * hole, 0),
              at(frame, side * outer, 0),
              at(frame, side * outer, height),
              at(frame, side * hole, height),
            ],
            { fill: 'black' },
          ),
        ),
      ],
      spot: at(frame, outer, height / 2),
      upper: around(frame, outer, hole),
      lower: around(frame, outer, hole),
    };
  },
};

/** A shim that is chosen by its thickness. */
export const shim: Shape = {
  height: 2,
  draw(frame) {
    const { height } = frame;
    const half = frame.width * 0.5;
    return {
      marks: [
        outline([at(frame, -half, 0), at(frame, half, 0), at(frame, half, height), at(frame, -half, height)], {
          fill: 'black',
        }),
      ],
      spot: at(frame, half, height / 2),
      upper: whole(frame, half),
      lower: whole(frame, half),
    };
  },
};

/** A ring of a round cross section. */
export const oRing: Shape = {
  height: 3,
  draw(frame) {
    const radius = Math.min(frame.height / 2, frame.width * 0.12);
    const middle = frame.width * 0.5 - radius;
    const y = frame.height / 2;
    return {
      marks: [
        strokes('outline', [
          [at(frame, -middle, y - radius), at(frame, middle, y - radius)],
          [at(frame, -middle, y + radius), at(frame, middle, y + radius)],
        ]),
        ...[1, -1].map((side) =>
          outline(circle(frame.middle + side * middle, frame.top + y, radius), { fill: 'black' }),
        ),
      ],
      spot: at(frame, middle + radius, y),
      upper: around(frame, middle + radius, middle - radius),
      lower: around(frame, middle + radius, middle - radius),
    };
  },
};

/** A disc with a bore, cut. */
export const disc: Shape = {
  height: 6,
  draw(frame, { falling }) {
    const { height } = frame;
    const [outer, bore] = [frame.width * 0.5, frame.width * 0.13];
    return {
      marks: [...pierced(frame, bore, outer, falling)],
      spot: at(frame, outer * 0.75, height / 2),
      upper: around(frame, outer, bore),
      lower: around(frame, outer, bore),
    };
  },
};

/** A plate that is wider than what is around it, with a hole in its middle and holes for its screws. */
export const plate: Shape = {
  height: 4.5,
  draw(frame, details) {
    const { height } = frame;
    const [outer, bore] = [frame.width * 0.5, frame.width * 0.2];
    return {
      marks: [
        backdrop(frame, outer, 0, height),
        across(frame, outer, 0),
        across(frame, outer, height),
        ...cut(
          frame,
          [
            [bore, 0],
            [outer * 0.7, 0],
            [outer * 0.7, height],
            [bore, height],
          ],
          details.falling,
        ),
        ...cut(
          frame,
          [
            [outer * 0.84, 0],
            [outer, 0],
            [outer, height],
            [outer * 0.84, height],
          ],
          details.falling,
        ),
      ],
      spot: at(frame, outer * 0.55, height / 2),
      upper: around(frame, outer, bore),
      lower: around(frame, outer, bore),
    };
  },
};

/** A tube, cut. */
export const sleeve: Shape = {
  height: 12,
  draw(frame, { falling }) {
    const { height } = frame;
    const outer = frame.width * 0.5;
    const bore = outer - Math.max(1.4, frame.width * 0.13);
    return {
      marks: [...pierced(frame, bore, outer, falling)],
      spot: at(frame, (outer + bore) / 2, height / 2),
      upper: around(frame, outer, bore),
      lower: around(frame, outer, bore),
    };
  },
};

/** A seat for a spring, with the pip that presses on what is over it. */
export const seat: Shape = {
  height: 5.5,
  draw(frame) {
    const { height } = frame;
    const [outer, pip] = [frame.width * 0.5, frame.width * 0.17];
    const shoulder = height * 0.42;
    return {
      marks: [
        outline(
          turned(frame, [
            [pip, 0],
            [pip, shoulder],
            [outer, shoulder],
            [outer, height],
          ]),
        ),
        across(frame, pip, shoulder),
      ],
      spot: at(frame, outer * 0.75, (shoulder + height) / 2),
      upper: whole(frame, pip),
      lower: whole(frame, outer),
    };
  },
};

/** A ring with a gap, as it lies: piston rings. */
export const ring: Shape = {
  height: 4,
  draw(frame) {
    const { height, middle, top } = frame;
    const radius = frame.width * 0.42;
    const squash = (height / 2 / radius) * 0.95;
    const arc = (r: number, s: number): Point[] =>
      Array.from({ length: 25 }, (_, index) => {
        const angle = ((100 + (index / 24) * 340) * Math.PI) / 180;
        return { x: middle + r * Math.cos(angle), y: top + height / 2 + r * s * Math.sin(angle) };
      });
    const [outside, inside] = [arc(radius, squash), arc(radius * 0.84, squash * 0.72)];
    return {
      marks: [outline([...outside, ...inside.reverse()])],
      spot: at(frame, radius * 0.92, height / 2),
      upper: whole(frame, radius),
      lower: whole(frame, radius),
    };
  },
};

/** A spring ring with two eyes, as it lies. */
export const circlip: Shape = {
  height: 5,
  draw(frame, details) {
    const { height, middle, top } = frame;
    const radius = frame.width * 0.42;
    const eye = Math.min(1.1, height * 0.2);
    const made = ring.draw({ ...frame, height: height * 0.86 }, details);
    const eyes = [-1, 1].map((side) => ({ x: middle + side * (eye + 0.5), y: top + height - eye }));
    return {
      ...made,
      marks: [
        ...made.marks,
        ...eyes.map(({ x, y }) => outline(circle(x, y, eye))),
        ...eyes.map(({ x, y }) => outline(circle(x, y, eye * 0.4), { weight: weights.thin })),
      ],
      spot: at(frame, radius * 0.92, height * 0.43),
    };
  },
};

/** A sheet that bends, clamped at its rim, with a plate at its middle. */
export const diaphragm: Shape = {
  height: 5,
  draw(frame) {
    const { height } = frame;
    const outer = frame.width * 0.5;
    const [rim, hub] = [outer * 0.8, outer * 0.35];
    const wave = (side: number) =>
      Array.from({ length: 13 }, (_, index) => {
        const share = index / 12;
        return at(
          frame,
          side * (hub + (rim - hub) * share),
          height * 0.5 + Math.sin(share * Math.PI * 2) * height * 0.34,
        );
      });
    const plates = [0.12, 0.56].map((down) =>
      outline(
        turned(frame, [
          [hub, height * down],
          [hub, height * (down + 0.32)],
        ]),
      ),
    );
    return {
      marks: [
        strokes('outline', [wave(1), wave(-1)], { weight: weights.thick }),
        ...[1, -1].map((side) =>
          outline(
            [
              at(frame, side * rim, height * 0.4),
              at(frame, side * outer, height * 0.4),
              at(frame, side * outer, height * 0.62),
              at(frame, side * rim, height * 0.62),
            ],
            { fill: 'black' },
          ),
        ),
        ...plates,
      ],
      spot: at(frame, hub * 0.7, height * 0.28),
      upper: whole(frame, outer),
      lower: whole(frame, outer),
    };
  },
};

/** Windings in a cut bobbin: each side crossed, as windings are. */
export const coil: Shape = {
  height: 10,
  draw(frame) {
    const { height } = frame;
    const [outer, bore] = [frame.width * 0.5, frame.width * 0.2];
    const lip = Math.min(1.2, height * 0.14);
    const halves = [1, -1].map((side) => [
      at(frame, side * (bore + 1), lip),
      at(frame, side * (outer - 0.6), lip),
      at(frame, side * (outer - 0.6), height - lip),
      at(frame, side * (bore + 1), height - lip),
    ]);
    return {
      marks: [
        backdrop(frame, outer, 0, height),
        outline(
          turned(frame, [
            [outer, 0],
            [outer, lip],
            [bore + 1, lip],
            [bore + 1, height - lip],
            [outer, height - lip],
            [outer, height],
          ]),
        ),
        alongBoth(frame, bore, 0, height),
        ...halves.map((half) => outline(half)),
        strokes(
          'outline',
          halves.flatMap((half) => [
            [half[0]!, half[2]!],
            [half[1]!, half[3]!],
          ]),
        ),
      ],
      spot: at(frame, (outer + bore) / 2, height / 2),
      upper: around(frame, outer, bore),
      lower: around(frame, outer, bore),
    };
  },
};

/** A round of even height with a bore through it, cut. */
function pierced(frame: Frame, bore: number, outer: number, falling: boolean): Mark[] {
  const { height } = frame;
  return [
    backdrop(frame, bore, 0, height),
    across(frame, bore, 0),
    across(frame, bore, height),
    ...cut(
      frame,
      [
        [bore, 0],
        [outer, 0],
        [outer, height],
        [bore, height],
      ],
      falling,
    ),
  ];
}
