import type { Relations } from '../../analysis/relations.ts';
import { restsOn } from '../../analysis/relations.ts';
import type { Part } from '../../model/family.ts';
import { type Box, type Mark, type Point, weights } from './drawing.ts';
import { corners, hatch, outline, strokes } from './lines.ts';

/**
 * The simple shape of a part, from what the family says about it and never from its name: what carries others, what is turned,
 * what passes through, what is chosen by its thickness, what has coils that bind.
 */
export type Shape = 'body' | 'box' | 'thin' | 'spring' | 'cap' | 'nut' | 'bolt' | 'shaft';

export function shapeOf(relations: Relations, part: Part, isCarrier: boolean): Shape {
  if (isCarrier) return 'body';
  if (part.bindsOver !== null) return 'spring';
  const isTurned = relations.joint(part.name) !== undefined;
  const isAdjuster = relations.family.adjusters.some((adjuster) => adjuster.part === part.name);
  if ((isTurned && part.through.length > 0) || (isAdjuster && !isTurned)) return 'bolt';
  if (isTurned) return part.holds.length > 0 ? 'cap' : 'nut';
  if (part.through.length > 0) return 'shaft';
  return part.chosenFrom === null ? 'box' : 'thin';
}

/** Millimeters at full size. */
export function heightOf(shape: Shape, relations: Relations, part: Part): number {
  switch (shape) {
    case 'body':
      return 22;
    case 'spring':
      return 13;
    case 'cap':
      return 12;
    case 'bolt':
    case 'shaft':
      return 11;
    case 'nut':
      return 6.5;
    case 'thin':
      return 2.4;
    case 'box':
      return relations.onIt(part.name).length > 0 || relations.isFine(part.name) ? 7.5 : 5;
  }
}

/** Widths of parts as shares of the widest: what lies in another is narrower, what holds others goes around them. */
export function shares(relations: Relations, order: readonly Part[], carrier: string): Map<string, number> {
  const found = new Map<string, number>();
  /** Parts that have something on them already: what comes on them next goes inside of that. */
  const covered = new Set<string>();
  const least = 0.3;
  for (const part of order) {
    const [host = null] = restsOn(part).filter((name) => found.has(name));
    const under = host === null ? 1 : found.get(host)!;
    const onCarrier = host === carrier;
    const joint = relations.joint(part.name);
    const share =
      part.name === carrier
        ? 1
        : host === null
          ? 0.84
          : part.through.length > 0
            ? onCarrier
              ? 0.6
              : Math.min(0.66, under)
            : part.in.includes(host)
              ? onCarrier
                ? 0.46
                : under * 0.6
              : joint !== undefined && part.holds.length > 0
                ? onCarrier
                  ? 0.96
                  : Math.min(0.96, under * 1.1)
                : onCarrier
                  ? 0.8
                  : joint === undefined
                    ? Math.min(under, 0.8)
                    : Math.min(under, 0.8) * 0.85;
    const isInside = host !== null && !onCarrier && part.on.includes(host) && covered.has(host);
    found.set(part.name, Math.max(least, isInside ? share * 0.6 : share));
    for (const other of part.on) covered.add(other);
  }
  return found;
}

const wallOf = (width: number) => Math.max(2.4, width * 0.13);

const boreShare = 0.54;
const capWall = (width: number) => Math.max(2.2, width * 0.11);

/** The room between the walls of a part that others lie in. */
export function cavity(box: Box): number {
  return box.width - 2 * wallOf(box.width);
}

/** A part that holds others in it: walls and floor in section, open at the top. `floor` is the height of its solid end. */
export function cup(box: Box, floor: number): Mark[] {
  const wall = wallOf(box.width);
  const { x, y, width, height } = box;
  const inside: Point[] = [
    { x: x + width - wall, y },
    { x: x + width - wall, y: y + height - floor },
    { x: x + wall, y: y + height - floor },
    { x: x + wall, y },
  ];
  const [topLeft, topRight, bottomRight, bottomLeft] = corners(box) as [Point, Point, Point, Point];
  return [
    outline([topLeft, ...[...inside].reverse(), topRight, bottomRight, bottomLeft]),
    hatch({ x, y, width: wall, height: height - floor }, 1.7),
    hatch({ x: x + width - wall, y, width: wall, height: height - floor }, 1.7),
    hatch({ x, y: y + height - floor, width, height: floor }, 1.7),
    outline([topLeft, ...[...inside].reverse(), topRight, bottomRight, bottomLeft], { fill: 'none' }),
  ];
}

/** The marks of a part that nothing is drawn in. `hasBore`: the body, where parts go into it. */
export function silhouette(shape: Shape, box: Box, hasBore: boolean): Mark[] {
  const { x, y, width, height } = box;
  const middle = x + width / 2;
  switch (shape) {
    case 'body':
      if (!hasBore) return [outline(corners(box))];
      return bored(box);
    case 'box':
    case 'thin':
      return [outline(corners(box))];
    case 'spring':
      return spring(box);
    case 'cap':
      return cap(box);
    case 'nut': {
      const thread = { x: middle - width * 0.2, y, width: width * 0.4, height };
      return [
        outline(corners(box)),
        ...threaded(thread),
        strokes('outline', [verticalAt(thread.x, y, height), verticalAt(thread.x + thread.width, y, height)]),
      ];
    }
    case 'bolt': {
      const head = headOf(shape, height);
      const shank = { x: middle - width * 0.22, y: y + head, width: width * 0.44, height: height - head };
      const end = { ...shank, y: shank.y + shank.height * 0.4, height: shank.height * 0.6 };
      return [outline(corners({ x, y, width, height: head })), outline(corners(shank)), ...threaded(end)];
    }
    case 'shaft': {
      const head = headOf(shape, height);
      const shank = { x: middle - width * 0.2, y: y + head, width: width * 0.4, height: height - head };
      return [outline(corners({ x, y, width, height: head })), outline(corners(shank))];
    }
  }
}

const verticalAt = (x: number, y: number, height: number): Point[] => [
  { x, y },
  { x, y: y + height },
];

/** A thread in section: lines both ways, close together. */
export function threaded(box: Box): Mark[] {
  return [hatch(box, 1.05, 'thread'), hatch(box, 1.05, 'thread', true)];
}

/** The body with a bore from its upper end. */
function bored(box: Box): Mark[] {
  const { x, y, width, height } = box;
  const bore = width * boreShare;
  const depth = height * 0.62;
  const [left, right] = [x + (width - bore) / 2, x + (width + bore) / 2];
  const wall = (width - bore) / 2;
  const edge: Point[] = [
    { x, y },
    { x: left, y },
    { x: left, y: y + depth },
    { x: right, y: y + depth },
    { x: right, y },
    { x: x + width, y },
    { x: x + width, y: y + height },
    { x, y: y + height },
  ];
  return [
    outline(edge),
    hatch({ x, y, width: wall, height: depth }, 2),
    hatch({ x: right, y, width: wall, height: depth }, 2),
    hatch({ x, y: y + depth, width, height: height - depth }, 2),
    outline(edge, { fill: 'none' }),
  ];
}

/** A nut that goes over what it holds: closed at the top but for a hole, its thread at the lower ends. */
function cap(box: Box): Mark[] {
  const { x, y, width, height } = box;
  const wall = capWall(width);
  const roof = Math.min(height * 0.34, 4);
  const hole = width * 0.34;
  const [left, right] = [x + wall, x + width - wall];
  const [from, to] = [x + (width - hole) / 2, x + (width + hole) / 2];
  const half = (outer: number, inner: number, edge: number): Point[] => [
    { x: outer, y },
    { x: edge, y },
    { x: edge, y: y + roof },
    { x: inner, y: y + roof },
    { x: inner, y: y + height },
    { x: outer, y: y + height },
  ];
  const thread = (height - roof) * 0.6;
  const inside = corners({ x: left, y, width: right - left, height });
  return [
    outline(inside, { weight: 0 }),
    strokes(
      'outline',
      [
        [
          { x: from, y },
          { x: to, y },
        ],
        [
          { x: from, y: y + roof },
          { x: to, y: y + roof },
        ],
      ],
      { weight: weights.thin },
    ),
    outline(half(x, left, from)),
    outline(half(x + width, right, to)),
    hatch({ x, y, width: from - x, height: roof }, 1.7),
    hatch({ x: to, y, width: x + width - to, height: roof }, 1.7),
    hatch({ x, y: y + roof, width: wall, height: height - roof - thread }, 1.7),
    hatch({ x: right, y: y + roof, width: wall, height: height - roof - thread }, 1.7),
    ...threaded({ x, y: y + height - thread, width: wall, height: thread }),
    ...threaded({ x: right, y: y + height - thread, width: wall, height: thread }),
  ];
}

/** Coils as a zigzag between two ground ends. */
function spring(box: Box): Mark[] {
  const { x, y, width, height } = box;
  const turns = turnsOf(height);
  const zigzag = Array.from({ length: turns + 1 }, (_, index) => ({
    x: index % 2 === 0 ? x : x + width,
    y: y + (height * index) / turns,
  }));
  const ends = [y, y + height].map((at) => [
    { x, y: at },
    { x: x + width, y: at },
  ]);
  return [outline(corners(box), { weight: 0 }), strokes('spring', [...ends, zigzag], { weight: weights.outline })];
}

/** A part that is drawn elsewhere, as the ground of a stack: dashed, its lower end left open. */
export function ghost({ x, y, width, height }: Box): Mark[] {
  const sides: Point[] = [
    { x, y: y + height },
    { x, y },
    { x: x + width, y },
    { x: x + width, y: y + height },
  ];
  return [
    outline(corners({ x, y, width, height }), { weight: 0 }),
    strokes('ghost', [sides], { weight: weights.thin, dash: [1.6, 1.1] }),
  ];
}

/** Where the leader of a name ends: at the right of what is drawn, as near to a height as can be. */
export function anchorOf(shape: Shape | 'cup', box: Box, wish: number): Point {
  const solid = shape === 'bolt' || shape === 'shaft' ? headOf(shape, box.height) : box.height;
  const inset = Math.min(0.8, solid / 2);
  const y = Math.min(Math.max(wish, box.y + inset), box.y + solid - inset);
  if (shape !== 'spring') return { x: box.x + box.width, y };
  // On the coil that passes there.
  const turns = turnsOf(box.height);
  const along = ((y - box.y) / box.height) * turns;
  const part = along - Math.floor(along);
  return { x: box.x + box.width * (Math.floor(along) % 2 === 0 ? part : 1 - part), y };
}

const turnsOf = (height: number) => Math.max(3, Math.round(height / 2.6));
/** Height of the wide end of a shape that has a shank below it. */
export const headOf = (shape: 'bolt' | 'shaft', height: number) =>
  shape === 'bolt' ? Math.min(height * 0.36, 4) : height * 0.5;

/** Stretches of the upper or lower edge of a shape that are solid: left and right end of each. */
export function solidEdge(
  shape: Shape | 'cup',
  box: Box,
  hasBore: boolean,
  up: boolean,
): (readonly [number, number])[] {
  const { x, width } = box;
  const around = (hole: number): (readonly [number, number])[] => [
    [x, x + (width - hole) / 2],
    [x + (width + hole) / 2, x + width],
  ];
  if (shape === 'cup' && up) return around(cavity(box));
  if (shape === 'body' && up && hasBore) return around(width * boreShare);
  if (shape === 'cap') return around(up ? width * 0.34 : width - 2 * capWall(width));
  if (shape === 'bolt' && !up) return [[x + width * 0.28, x + width * 0.72]];
  if (shape === 'shaft' && !up) return [[x + width * 0.3, x + width * 0.7]];
  return [[x, x + width]];
}

/** Two pins that stick out of the lower face. */
export function dowels({ x, y, width, height }: Box): Mark[] {
  return [0.28, 0.72].map((share) =>
    outline(corners({ x: x + width * share - 0.55, y: y + height, width: 1.1, height: 2 }), {
      role: 'dowel',
      fill: 'black',
      weight: 0,
    }),
  );
}
