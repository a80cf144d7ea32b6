import { weights } from '../drawing.ts';
import { outline, strokes } from '../lines.ts';
import { across, around, at, backdrop, cut, type Shape, turned, whole } from './pen.ts';

/** A nozzle: its collar with the face that closes against what is under it, its stem, its tip. Cut along the axis. */
export const nozzle: Shape = {
  height: 23,
  draw(frame, { falling, hasTip }) {
    const { width, height } = frame;
    const [collar, stem, bore, tip] = [width * 0.5, width * 0.26, width * 0.12, width * 0.09];
    const [shoulder, cone, sac] = [height * 0.7, height * 0.22, height * 0.11];
    const mouth = at(frame, -tip - width * 0.05, cone * 0.45);
    const hole = (side: number) => [
      at(frame, side * tip * 0.35, sac),
      at(frame, side * (tip + width * 0.09), -0.2 + cone * 0.2),
    ];
    return {
      marks: [
        backdrop(frame, bore, sac, height),
        ...cut(
          frame,
          [
            [0, 0],
            [tip, 0],
            [stem, cone],
            [stem, shoulder],
            [collar, shoulder],
            [collar, height],
            [bore, height],
            [bore, cone + sac],
            [0, sac],
          ],
          falling,
        ),
        across(frame, bore, height),
        ...(hasTip ? [strokes('outline', [hole(1), hole(-1)], { weight: weights.thin })] : []),
      ],
      spot: at(frame, (collar + bore) / 2, (shoulder + height) / 2),
      upper: whole(frame, tip),
      lower: around(frame, collar, bore),
      mouth,
    };
  },
};

/** A needle: its cone, its guide, and the stem that is pressed on. Never cut. */
export const needle: Shape = {
  height: 18,
  draw(frame, _details) {
    const { height } = frame;
    const guide = Math.max(1.2, frame.width * 0.18);
    const [cone, neck] = [height * 0.16, height * 0.34];
    const stem = height * 0.84;
    return {
      marks: [
        outline(
          turned(frame, [
            [0, 0],
            [guide * 0.72, cone],
            [guide * 0.72, neck],
            [guide, neck + guide * 0.4],
            [guide, stem],
            [guide * 0.5, stem],
            [guide * 0.5, height],
          ]),
        ),
        across(frame, guide * 0.72, cone),
        across(frame, guide, neck + guide * 0.4),
        across(frame, guide, stem),
      ],
      spot: at(frame, guide * 0.5, (neck + stem) / 2 + guide * 0.2),
      upper: whole(frame, guide * 0.3),
      lower: whole(frame, guide * 0.5),
    };
  },
};
