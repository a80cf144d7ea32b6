import { weights } from '../drawing.ts';
import { outline, strokes } from '../lines.ts';
import { across, around, at, backdrop, circle, cut, type Shape, whole } from './pen.ts';

/** A ball. */
export const ball: Shape = {
  height: 8,
  draw(frame) {
    const radius = Math.min(frame.height / 2, frame.width * 0.5);
    const down = frame.height / 2;
    return {
      marks: [
        outline(circle(frame.middle, frame.top + down, radius)),
        // Light from the upper left.
        strokes(
          'outline',
          [
            Array.from({ length: 9 }, (_, index) => {
              const angle = ((200 + index * 8) * Math.PI) / 180;
              return at(frame, radius * 0.66 * Math.cos(angle), down + radius * 0.66 * Math.sin(angle));
            }),
          ],
          { weight: weights.thin },
        ),
      ],
      spot: at(frame, radius * 0.5, down),
      upper: whole(frame, radius * 0.3),
      lower: whole(frame, radius * 0.3),
    };
  },
};

/** A rolling bearing, cut: two rings with a ball between them at each side. */
export const bearing: Shape = {
  height: 8,
  draw(frame, { falling }) {
    const { height } = frame;
    const [outer, bore] = [frame.width * 0.5, frame.width * 0.2];
    const span = outer - bore;
    const radius = Math.min(span * 0.27, height * 0.34);
    const ring = span * 0.26;
    return {
      marks: [
        backdrop(frame, outer, 0, height),
        across(frame, outer, 0),
        across(frame, outer, height),
        ...cut(
          frame,
          [
            [bore, 0],
            [bore + ring, 0],
            [bore + ring, height],
            [bore, height],
          ],
          falling,
          1.1,
        ),
        ...cut(
          frame,
          [
            [outer - ring, 0],
            [outer, 0],
            [outer, height],
            [outer - ring, height],
          ],
          falling,
          1.1,
        ),
        ...[1, -1].map((side) =>
          outline(circle(frame.middle + side * (bore + span / 2), frame.top + height / 2, radius)),
        ),
      ],
      spot: at(frame, outer - ring / 2, height / 2),
      upper: around(frame, outer, bore),
      lower: around(frame, outer, bore),
    };
  },
};
