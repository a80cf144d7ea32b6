import { across, around, at, backdrop, cut, type Frame, type Profile, type Sketch, teeth, whole } from './pen.ts';

/** How an end of the part that carries all is made. */
export interface End {
  /** Parts go into it here. */
  readonly isOpen: boolean;
  /** Something is screwed into it here. */
  readonly inside: boolean;
  /** Something is screwed over it here. */
  readonly outside: boolean;
}

/** Of its height: how deep a bore goes where there is only one, and where there is one from each end. */
const depths = { alone: 0.64, each: 0.42 } as const;
export const boreShare = 0.52;

export const bodyHeight = 28;

/** Where a bore from an end reaches, from the upper edge. */
export function boreDepth({ height }: Frame, isThrough: boolean): number {
  return height * (isThrough ? depths.each : depths.alone);
}

/** What is asked of the part that carries the others. */
export interface Ends {
  readonly upper: End;
  readonly lower: End;
  /** A force goes through it from end to end: a channel joins them. */
  readonly hasChannel: boolean;
  readonly rings: number;
}

/** Millimeters at each end that ports keep clear of: threads, rings, the edge. */
export const marginsOf = ({ upper, lower, rings }: Ends): readonly [upper: number, lower: number] => [
  upper.outside ? 9 : 3,
  lower.outside ? 9 : rings > 0 ? 6.4 : 2.4,
];

/** The part that carries the others: cut, with a bore from each end that parts go into, and the threads of its joints. */
export function body(frame: Frame, ends: Ends, falling: boolean): Sketch {
  const { upper, lower, hasChannel, rings } = ends;
  const { height, width } = frame;
  const outer = width * 0.5;
  const bore = outer * boreShare;
  const isThrough = upper.isOpen && lower.isOpen;
  const depth = boreDepth(frame, isThrough);
  const channel = isThrough || hasChannel ? bore * 0.34 : 0;
  const neck = outer - Math.max(2, width * 0.11);
  const thread = Math.min(height * 0.3, 7);
  /** From the axis out, as if the end were at the top. */
  const inside = ({ isOpen, inside: isThreaded }: End, down: (depth: number) => number): Profile =>
    isOpen
      ? [
          [channel, down(depth)],
          [bore, down(depth)],
          ...(isThreaded
            ? [[bore, down(thread)] as const, ...teeth(bore, down(thread), down(0), -0.7)]
            : [[bore, down(0)] as const]),
        ]
      : [[channel, down(0)]];
  const outside = ({ outside: isThreaded }: End, down: (depth: number) => number): Profile =>
    isThreaded
      ? [
          [neck - 0.8, down(0)],
          ...teeth(neck, down(0.8), down(thread)),
          [neck, down(thread + 0.8)],
          [outer, down(thread + 0.8)],
        ]
      : [[outer, down(0)]];
  const down = (depthFromTop: number) => depthFromTop;
  const up = (depthFromBottom: number) => height - depthFromBottom;
  const profile: Profile = [
    ...inside(upper, down),
    ...outside(upper, down),
    ...[...outside(lower, up)].reverse(),
    ...[...inside(lower, up)].reverse(),
  ];
  const rim = (end: End) => (end.outside ? neck - 0.8 : outer);
  const hole = (end: End) => (end.isOpen ? bore : channel);
  const edge = (end: End) => (hole(end) > 0 ? around(frame, rim(end), hole(end)) : whole(frame, rim(end)));
  return {
    marks: [
      ...(hole(upper) + hole(lower) > 0 ? [backdrop(frame, Math.max(hole(upper), hole(lower)), 0, height)] : []),
      ...cut(frame, profile, falling, 1.9),
      ...(hole(upper) > 0 ? [across(frame, hole(upper), 0)] : []),
      ...(hole(lower) > 0 ? [across(frame, hole(lower), height)] : []),
      ...(upper.isOpen ? [across(frame, bore, depth)] : []),
      ...(lower.isOpen ? [across(frame, bore, height - depth)] : []),
    ],
    spot: at(frame, (outer + bore) / 2, height * (upper.outside ? 0.6 : 0.4)),
    upper: edge(upper),
    lower: edge(lower),
    belt: { x: outer, y: frame.top + (lower.outside || rings === 0 ? height * 0.5 : height - 3.2) },
  };
}
