import { weights } from '../drawing.ts';
import { outline } from '../lines.ts';
import {
  across,
  alongBoth,
  at,
  backdrop,
  type Details,
  type Frame,
  type Shape,
  type Sketch,
  teeth,
  threadLines,
  turned,
  whole,
} from './pen.ts';

/** A hexagon head with a threaded shank under it. `wide`: of the head and the shank, in half widths. */
function headed(
  frame: Frame,
  { isHollow }: Details,
  wide: { head: number; shank: number; headHeight: number },
): Sketch {
  const { height } = frame;
  const [head, shank] = [frame.width * wide.head, frame.width * wide.shank];
  const under = height * wide.headHeight;
  const start = under + Math.min(1, height * 0.08);
  const end = height - Math.min(0.8, height * 0.06);
  const bore = shank * 0.45;
  return {
    marks: [
      outline(
        turned(frame, [
          [head - 0.7, 0],
          [head, 0.6],
          [head, under],
          [shank - 0.7, under],
          ...teeth(shank, start, end),
          [shank - 0.9, height],
        ]),
      ),
      alongBoth(frame, head * 0.5, 0.3, under),
      across(frame, head, under),
      threadLines(frame, shank, start, end),
      ...(isHollow ? [alongBoth(frame, bore, 0, height, { dash: [1.6, 0.8], weight: weights.thin })] : []),
    ],
    spot: at(frame, head * 0.75, under / 2),
    upper: whole(frame, head),
    lower: whole(frame, shank - 0.9),
  };
}

/** A screw: head and a long threaded shank. */
export const screw: Shape = {
  height: 14,
  draw: (frame, details) => headed(frame, details, { head: 0.36, shank: 0.2, headHeight: 0.3 }),
};

/** A plug: it closes a bore, with its thread outside. */
export const plug: Shape = {
  height: 11,
  draw: (frame, details) => headed(frame, details, { head: 0.5, shank: 0.36, headHeight: 0.38 }),
};

/** A connection that a line is screwed to: thread at both ends, a hexagon between them, a bore through it. */
export const union: Shape = {
  height: 16,
  draw(frame) {
    const { height } = frame;
    const [hex, shank, top] = [frame.width * 0.46, frame.width * 0.34, frame.width * 0.28];
    const [from, to] = [height * 0.42, height * 0.66];
    const bore = top * 0.42;
    return {
      marks: [
        outline(
          turned(frame, [
            [top - 0.9, 0],
            ...teeth(top, 0.8, from - 0.8),
            [hex, from],
            [hex, to],
            [shank - 0.7, to],
            ...teeth(shank, to + 0.8, height - 0.6),
            [shank - 0.9, height],
          ]),
        ),
        across(frame, hex, from),
        across(frame, hex, to),
        alongBoth(frame, hex * 0.5, from, to),
        threadLines(frame, top, 0.8, from - 0.8),
        threadLines(frame, shank, to + 0.8, height - 0.6),
        alongBoth(frame, bore, 0, height, { dash: [1.6, 0.8] }),
      ],
      spot: at(frame, hex * 0.75, (from + to) / 2),
      upper: whole(frame, top - 0.9),
      lower: whole(frame, shank - 0.9),
      mouth: at(frame, -top + 1, from * 0.5),
    };
  },
};

/** A screw that sets something: threaded all along, with a slot for the screwdriver. */
export const settingScrew: Shape = {
  height: 13,
  draw(frame) {
    const { height } = frame;
    const radius = frame.width * 0.26;
    const slot = Math.min(2, height * 0.18);
    const end = height * 0.86;
    return {
      marks: [
        backdrop(frame, radius, 0, height),
        outline(
          turned(frame, [
            [0.6, slot],
            [0.6, 0],
            [radius - 0.8, 0],
            ...teeth(radius, 0.8, end),
            [radius * 0.5, end],
            [radius * 0.5, height],
          ]),
        ),
        threadLines(frame, radius, Math.max(slot, 0.8), end),
      ],
      spot: at(frame, radius * 0.5, height * 0.5),
      upper: [
        [frame.middle - radius + 0.8, frame.middle - 0.6],
        [frame.middle + 0.6, frame.middle + radius - 0.8],
      ],
      lower: whole(frame, radius * 0.5),
    };
  },
};
