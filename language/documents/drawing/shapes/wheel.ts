import { type Mark, type Point, weights } from '../drawing.ts';
import { outline, strokes } from '../lines.ts';
import {
  across,
  alongBoth,
  at,
  type Frame,
  type Profile,
  type Shape,
  teeth,
  threadLines,
  turned,
  whole,
} from './pen.ts';

/** The curve from the nose of a wheel out to its rim. */
function flank(nose: number, rim: number, from: number, to: number): Profile {
  return Array.from({ length: 9 }, (_, index) => {
    const angle = (index / 8) * (Math.PI / 2);
    return [rim - (rim - nose) * Math.cos(angle), from + (to - from) * Math.sin(angle)] as const;
  });
}

/** Blades over the flank of a wheel, and its hub. */
function blades(frame: Frame, hub: number, nose: number, rim: number, from: number, to: number): Mark {
  const runs: Point[][] = [];
  for (const share of [-0.86, -0.6, -0.32, 0, 0.32, 0.6, 0.86])
    runs.push(
      Array.from({ length: 7 }, (_, index) => {
        const along = index / 6;
        const angle = along * (Math.PI / 2);
        const radius = rim - (rim - nose) * Math.cos(angle);
        // They lean as they go out.
        return at(frame, share * radius + Math.sin(angle * 2) * hub * 0.35, from + (to - from) * Math.sin(angle));
      }),
    );
  return strokes('outline', runs, { weight: weights.thin });
}

/** A compressor wheel: nose, blades, back disc. */
export const wheel: Shape = {
  height: 13,
  draw(frame) {
    const { height } = frame;
    const rim = frame.width * 0.5;
    const [hub, nose] = [rim * 0.22, rim * 0.5];
    const [from, back] = [height * 0.14, height * 0.84];
    return {
      marks: [
        outline(
          turned(frame, [
            [hub, 0],
            [hub, from],
            ...flank(nose, rim, from, back),
            [rim, height * 0.92],
            [rim * 0.5, height],
          ]),
        ),
        across(frame, hub, from),
        blades(frame, hub, nose, rim, from, back),
        across(frame, rim, back, weights.outline),
        across(frame, rim, height * 0.92),
      ],
      spot: at(frame, rim * 0.8, (back + height * 0.92) / 2),
      upper: whole(frame, hub),
      lower: whole(frame, rim * 0.5),
    };
  },
};

/** A turbine wheel with its shaft: the wheel away from the housing, grooves for its rings, bearing lands, a thread at the end. */
export const shaftAndWheel: Shape = {
  height: 34,
  draw(frame) {
    const { height } = frame;
    const rim = frame.width * 0.5;
    const [nose, hub] = [rim * 0.66, rim * 0.24];
    const [from, back] = [height * 0.04, height * 0.3];
    const radius = Math.max(1.3, rim * 0.2);
    const groove = back + height * 0.07;
    const neck = height * 0.72;
    return {
      marks: [
        outline(
          turned(frame, [
            [hub, 0],
            [hub, from],
            ...flank(nose, rim, from, back),
            [rim, back + height * 0.03],
            [rim * 0.36, back + height * 0.05],
            [rim * 0.36, groove + height * 0.05],
            [radius, groove + height * 0.05],
            [radius, neck],
            [radius * 0.72, neck],
            [radius * 0.72, height * 0.86],
            ...teeth(radius * 0.72, height * 0.87, height - 0.4, 0.45),
            [radius * 0.4, height],
          ]),
        ),
        blades(frame, hub, nose, rim, from, back),
        across(frame, rim, back, weights.outline),
        across(frame, rim, back + height * 0.03),
        across(frame, rim * 0.36, groove + height * 0.015),
        across(frame, rim * 0.36, groove + height * 0.035),
        across(frame, radius, neck),
        alongBoth(frame, radius, height * 0.5, height * 0.52),
        threadLines(frame, radius * 0.72, height * 0.87, height - 0.4, 0.45),
      ],
      spot: at(frame, radius * 0.5, height * 0.58),
      upper: whole(frame, hub),
      lower: whole(frame, radius * 0.4),
    };
  },
};

/** A guide vane: its profile over the pin that it turns on. */
export const vane: Shape = {
  height: 10,
  draw(frame) {
    const { height } = frame;
    const half = frame.width * 0.42;
    const thick = height * 0.24;
    const middle = height * 0.3;
    const upper = Array.from({ length: 15 }, (_, index) => {
      const share = index / 14;
      return at(frame, -half + share * 2 * half, middle - thick * 2.1 * Math.sqrt(share) * (1 - share));
    });
    const lower = Array.from({ length: 15 }, (_, index) => {
      const share = 1 - index / 14;
      return at(frame, -half + share * 2 * half, middle + thick * 0.5 * Math.sqrt(share) * (1 - share));
    });
    const pin = Math.min(1.2, half * 0.2);
    return {
      marks: [
        outline([at(frame, -pin, middle), at(frame, pin, middle), at(frame, pin, height), at(frame, -pin, height)]),
        outline([...upper, ...lower]),
      ],
      spot: at(frame, half * 0.3, middle - thick * 0.3),
      upper: whole(frame, half),
      lower: whole(frame, pin),
    };
  },
};
