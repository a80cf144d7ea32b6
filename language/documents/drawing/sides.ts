import type { Face, Port } from '../../model/family.ts';
import { brokenText } from './broken-text.ts';
import type { Measures, PlacedItem, Scene } from './column.ts';
import { type Mark, type Point, type TextLine, weights } from './drawing.ts';
import type { Entry } from './entries.ts';
import { outline, strokes } from './lines.ts';

/** A text at the left, with the point that it refers to. */
export interface Side {
  readonly role: 'face' | 'port';
  readonly of: readonly string[];
  readonly lines: readonly TextLine[];
  readonly anchor: Point;
  /** How its leader ends: in a dot on a surface, in an arrow at an edge, or at a line that is drawn for it. */
  readonly end: 'dot' | 'arrow' | 'line';
}

interface Found {
  readonly sides: Side[];
  readonly marks: Mark[];
}

/** Millimeters from the shapes to the upright of a bracket, and that a port sticks out. */
const bracketAt = 3;
const stubLength = 3.4;
/** Least height of a port's stub with the room around it. */
const portPitch = 3.8;

/** Height that a shape needs for the ports at its side. */
export function stubsHeight({ facts }: Scene, { part }: Entry): number {
  const count = facts.relations.ports(part.name).filter(({ under }) => under === null).length;
  return count === 0 ? 0 : count * portPitch;
}

/** Lapped and ground faces as thick lines, pairs of them in brackets, ports as stubs, and the texts for all. */
export function sidesOf(scene: Scene, placed: readonly PlacedItem[], measures: Measures, cut: string[]): Found {
  const ports = portsOf(scene, placed, measures, cut);
  const faces = facesOf(scene, placed, measures, cut, ports.sides);
  return { sides: [...faces.sides, ...ports.sides], marks: [...faces.marks, ...ports.marks] };
}

const linesOf = (text: string, width: number, most: number, cut: string[]): TextLine[] => {
  const broken = brokenText(text, false, width, most);
  if (broken.cut) cut.push(text);
  return broken.lines.map((line) => ({ text: line, bold: false }));
};

/** A face where it is drawn. */
interface Seat {
  readonly face: Face;
  readonly item: PlacedItem;
  readonly up: boolean;
  readonly y: number;
  /** Left end of it. */
  readonly x: number;
  /** The face that it closes against, wherever that is. */
  readonly other: Face | null;
}

function seatsOf({ facts, entries }: Scene, placed: readonly PlacedItem[]): Seat[] {
  const { faces } = facts.relations.family;
  const at = new Map(placed.map((one) => [one.part, one]));
  const rank = new Map(
    entries.flatMap(({ part, worn }, index) => [part, ...worn].map(({ name }) => [name, index] as const)),
  );
  return faces.flatMap((face): Seat[] => {
    const item = at.get(face.part);
    if (item === undefined || (face.finish === null && face.guardedBy === null)) return [];
    const other = faces.find(({ id }) => id === face.meets) ?? null;
    // It looks to where what it meets is drawn; alone it is taken for the outer one.
    const mate = other === null ? undefined : at.get(other.part);
    const up =
      other === null
        ? !item.entry.isBelow
        : mate === undefined
          ? (rank.get(other.part) ?? 0) >= (rank.get(face.part) ?? 0)
          : mate.box.y < item.box.y;
    const stretches = up ? item.upper : item.lower;
    return [{ face, item, up, y: up ? item.box.y : item.box.y + item.box.height, x: stretches[0]![0], other }];
  });
}

function facesOf(
  scene: Scene,
  placed: readonly PlacedItem[],
  measures: Measures,
  cut: string[],
  ports: readonly Side[],
): Found {
  const { facts, density } = scene;
  const seats = seatsOf(scene, placed);
  const marks: Mark[] = [];
  const drawn = new Set<string>();
  for (const { item, up, y } of seats) {
    const key = `${item.part} ${up}`;
    if (drawn.has(key)) continue;
    drawn.add(key);
    const runs = (up ? item.upper : item.lower).map(([from, to]) => [
      { x: from, y },
      { x: to, y },
    ]);
    marks.push(strokes('face', runs, { weight: weights.thick }));
  }
  const pairs = bracketed(seats, ports);
  const x = measures.middle - measures.shapeWidth / 2 - bracketAt;
  const sides: Side[] = pairs.map(([upper, lower]) => {
    marks.push(
      strokes('bracket', [
        [
          { x: upper.x, y: upper.y },
          { x, y: upper.y },
          { x, y: lower.y },
          { x: lower.x, y: lower.y },
        ],
      ]),
    );
    const texts = facts.pair(upper.face, lower.face);
    return {
      role: 'face',
      of: [upper.face.id, lower.face.id],
      lines: texts.flatMap((text) => linesOf(text, measures.sideWidth, density.sideLines, cut)),
      anchor: { x, y: (upper.y + lower.y) / 2 },
      end: 'line',
    };
  });
  const paired = new Set(pairs.flat());
  for (const seat of seats) {
    if (paired.has(seat)) continue;
    sides.push({
      role: 'face',
      of: [seat.face.id],
      lines: linesOf(facts.face(seat.face, seat.other).join(', '), measures.sideWidth, density.sideLines + 3, cut),
      anchor: { x: seat.x, y: seat.y },
      end: 'arrow',
    });
  }
  return { sides, marks };
}

/** Pairs of faces that a bracket can join: no text at the left has its point between them. Upper face first. */
function bracketed(seats: readonly Seat[], ports: readonly Side[]): (readonly [Seat, Seat])[] {
  const byId = new Map(seats.map((seat) => [seat.face.id, seat]));
  let pairs = seats.flatMap((lower): (readonly [Seat, Seat])[] => {
    const upper = byId.get(lower.face.meets ?? '');
    return upper !== undefined && lower.up && !upper.up && upper.y < lower.y && upper.item.entry.stack !== undefined
      ? [[upper, lower]]
      : [];
  });
  for (;;) {
    const singles = seats.filter((seat) => !pairs.some((pair) => pair.includes(seat))).map(({ y }) => y);
    const points = [...singles, ...ports.map(({ anchor }) => anchor.y)];
    const isClear = ([upper, lower]: readonly [Seat, Seat]) =>
      points.every((y) => y <= upper.y + 0.01 || y >= lower.y - 0.01) &&
      pairs.every(([other, under]) => other === upper || under.y <= upper.y + 0.01 || other.y >= lower.y - 0.01);
    const clear = pairs.filter(isClear);
    if (clear.length === pairs.length) return clear;
    // The longest of those that are in the way of others goes first.
    const wrong = pairs.filter((pair) => !clear.includes(pair)).sort((a, b) => b[1].y - b[0].y - (a[1].y - a[0].y))[0];
    pairs = pairs.filter((pair) => pair !== wrong);
  }
}

/** Ports: at a nozzle's tip, in the mouth of a bore that a part closes, or as a stub with its cap at the left of the shape. */
function portsOf(scene: Scene, placed: readonly PlacedItem[], measures: Measures, cut: string[]): Found {
  const { facts, density } = scene;
  const sides: Side[] = [];
  const marks: Mark[] = [];
  const push = (port: Port, anchor: Point, end: Side['end']) =>
    sides.push({
      role: 'port',
      of: [port.name],
      lines: linesOf(facts.port(port), measures.sideWidth, density.sideLines, cut),
      anchor,
      end,
    });
  for (const item of placed) {
    const [...ports] = facts.relations.ports(item.part);
    if (item.mouth !== null && ports.length > 0) push(ports.shift()!, item.mouth, 'arrow');
    for (const { port, y, isBore } of portPlaces(item, ports, placed)) {
      const middle = item.box.x + item.box.width / 2;
      if (isBore) push(port, { x: middle - item.bores!.radius * 0.6, y }, 'dot');
      else {
        const wall = middle - item.belt.x;
        marks.push(...stub(port, wall, y));
        push(port, { x: wall - stubLength - (isCapped(port) ? 1.3 : 0), y }, 'line');
      }
    }
  }
  return { sides, marks };
}

/** Heights of the ports of a part: in the bores where what covers them is drawn, the others spread over the wall between. */
export function portPlaces({ box, bores }: PlacedItem, ports: readonly Port[], placed: readonly PlacedItem[]) {
  const whereUnder = (port: Port): 'upper' | 'lower' | 'wall' => {
    const cover = placed.find(({ part }) => part === port.under);
    if (cover === undefined || bores === null) return 'wall';
    const side = cover.box.y < box.y ? 'upper' : 'lower';
    return bores[side] === null ? 'wall' : side;
  };
  const all = ports.map((port) => ({ port, where: whereUnder(port) }));
  const [upper, wall, lower] = (['upper', 'wall', 'lower'] as const).map((where) =>
    all.filter((one) => one.where === where),
  );
  const [from, to] = [box.y + box.height * (bores?.wall[0] ?? 0), box.y + box.height * (bores?.wall[1] ?? 1)];
  const spread = (count: number, index: number, low: number, high: number) =>
    low + ((high - low) * (index + 0.5)) / count;
  const shallow = Math.min(box.height * 0.1, 3);
  return [
    ...upper!.map(({ port }, index) => ({
      port,
      isBore: true,
      y: spread(upper!.length, index, box.y + shallow * 0.4, Math.max(box.y + shallow * 1.6, from)),
    })),
    ...wall!.map(({ port }, index) => ({ port, isBore: false, y: spread(wall!.length, index, from, to) })),
    ...lower!.map(({ port }, index) => ({
      port,
      isBore: true,
      y: spread(
        lower!.length,
        index,
        Math.min(box.y + box.height - shallow * 1.6, to),
        box.y + box.height - shallow * 0.4,
      ),
    })),
  ];
}

const isCapped = (port: Port) => port.under === null && !port.openInTransit;

/** A short pipe at the left of a shape; with a cap on its end, unless a part covers it or it travels open. */
function stub(port: Port, x: number, y: number): Mark[] {
  const box = { x: x - stubLength, y: y - 1.1, width: stubLength, height: 2.2 };
  const line = (atY: number) => [
    { x: box.x, y: atY },
    { x: box.x + box.width, y: atY },
  ];
  const pipe = strokes('port', [line(box.y), line(box.y + box.height)], { weight: weights.outline });
  if (!isCapped(port)) return [pipe];
  const cap = outline(
    [
      { x: box.x + 1, y: box.y - 0.35 },
      { x: box.x - 1.3, y: box.y - 0.35 },
      { x: box.x - 1.3, y: box.y + box.height + 0.35 },
      { x: box.x + 1, y: box.y + box.height + 0.35 },
    ],
    { role: 'cap', fill: 'black', weight: 0 },
  );
  return [pipe, cap];
}
