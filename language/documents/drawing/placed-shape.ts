import type { Part } from '../../model/family.ts';
import type { Scene } from './column.ts';
import type { Box, Mark, Point } from './drawing.ts';
import type { Entry } from './entries.ts';
import { outline } from './lines.ts';
import { isFemale, isMale } from './shape-of.ts';
import { body, bodyHeight, boreDepth, boreShare, type End, type Ends, marginsOf } from './shapes/body.ts';
import { shapes } from './shapes/index.ts';
import { dot, type Frame, type Sketch, type Stretch } from './shapes/pen.ts';

/** A shape in its place, the way up that it is drawn. */
export interface Sketched {
  readonly marks: readonly Mark[];
  readonly box: Box;
  readonly spot: Point;
  readonly onEdge: boolean;
  readonly upper: readonly Stretch[];
  readonly lower: readonly Stretch[];
  readonly mouth: Point | null;
  /** Where rings go round it: distance from the axis, and height. */
  readonly belt: Point;
  /** Bores of the part that carries all, if that is what it is: where they reach. */
  readonly bores: {
    readonly radius: number;
    readonly upper: number | null;
    readonly lower: number | null;
    /** Shares of the height between which its wall is whole: there its ports are. */
    readonly wall: readonly [from: number, to: number];
  } | null;
}

interface Movable extends Sketched {
  readonly moved: (down: number) => Sketched;
}

/** Millimeters that a shape is high; `least`: what is at its side needs so much. */
export function heightOf(
  { density, shapes: names }: Scene,
  { part, worn }: Pick<Entry, 'part' | 'worn'>,
  least: number,
  ends: Ends | null,
): number {
  const full = ends === null ? shapes[names.get(part.name)!].height : bodyHeight;
  const rings = worn.length * 3.4 * Math.max(0.7, density.scale);
  const [upperMargin, lowerMargin] = ends === null ? [0, 0] : marginsOf(ends);
  return Math.max(
    full * density.scale,
    Math.min(full, 2),
    least === 0 ? 0 : upperMargin + least + lowerMargin,
    rings === 0 ? 0 : rings + full * density.scale * 0.5,
  );
}

const cutShapes = new Map<string, boolean>();

/** It is drawn cut: shafts, needles, balls, springs and what is too thin for hatching are not. */
function isCut({ shapes: names, carrier, facts: { relations } }: Scene, { name }: Part): boolean {
  if (name === carrier) return true;
  const shape = names.get(name)!;
  const isHollow = relations.ports(name).length > 0;
  const key = `${shape} ${isHollow}`;
  let cut = cutShapes.get(key);
  if (cut === undefined) {
    const { height, draw } = shapes[shape];
    const { marks } = draw({ middle: 0, top: 0, width: 20, height }, { falling: false, hasTip: isHollow, isHollow });
    cut = marks.some(({ role }) => role === 'hatch');
    cutShapes.set(key, cut);
  }
  return cut;
}

/** Hatched falling is every other of the parts that are cut, in the order of the building. */
export function isFalling(scene: Scene, entry: Entry): boolean {
  const cut = scene.entries.filter(({ part }) => isCut(scene, part));
  return cut.findIndex(({ part }) => part === entry.part) % 2 === 1;
}

/** The shape of a part; `least`: of its height, for what is at its side. */
export function sketchOf(
  scene: Scene,
  { part, isBelow, worn }: Entry,
  place: { readonly middle: number; readonly top: number; readonly width: number },
  least: number,
  falling: boolean,
): Movable {
  const { relations } = scene.facts;
  const shape = shapes[scene.shapes.get(part.name)!];
  const ends = part.name === scene.carrier ? endsOf(scene, worn.length) : null;
  const height = heightOf(scene, { part, worn }, least, ends);
  const frame: Frame = {
    middle: place.middle,
    top: place.top,
    width: place.width * (scene.shares.get(part.name) ?? 0.8),
    height,
  };
  const sketch: Sketch =
    ends === null
      ? shape.draw(frame, {
          falling: falling !== isBelow,
          hasTip: relations.ports(part.name).length > 0,
          isHollow: relations.ports(part.name).length > 0,
        })
      : body(frame, ends, falling);
  const dowels = part.locatedBy === null ? [] : dowelsOf(frame, sketch.lower);
  const box: Box = { x: frame.middle - frame.width / 2, y: frame.top, width: frame.width, height };
  const made: Sketched = {
    marks: [...dowels, ...sketch.marks],
    box,
    spot: sketch.spot,
    onEdge: isEdge(sketch, frame),
    upper: sketch.upper,
    lower: sketch.lower,
    mouth: sketch.mouth ?? null,
    belt: sketch.belt ?? {
      x: Math.max(...[...sketch.upper, ...sketch.lower].map(([, right]) => right)) - frame.middle,
      y: frame.top + height / 2,
    },
    bores: ends === null ? null : boresOf(frame, ends),
  };
  const placed = isBelow ? turnedOver(made) : made;
  return { ...placed, moved: (down) => shifted(placed, down) };
}

const isEdge = ({ spot, upper }: Sketch, { middle, width }: Frame) =>
  upper.length > 0 && spot.x >= middle + width / 2 - 0.01;

function boresOf(frame: Frame, ends: Ends): Sketched['bores'] {
  const [upperMargin, lowerMargin] = marginsOf(ends);
  const depth = boreDepth(frame, ends.upper.isOpen && ends.lower.isOpen);
  const reach = ({ isOpen }: End) => (isOpen || ends.hasChannel ? depth : null);
  return {
    radius: (frame.width / 2) * boreShare * (ends.hasChannel ? 0.3 : 1),
    upper: reach(ends.upper),
    lower: reach(ends.lower),
    wall: [upperMargin / frame.height, 1 - lowerMargin / frame.height],
  };
}

/** What goes into the part that carries all at each end, and what is screwed on there. */
function endsOf({ facts: { relations }, carrier, entries, shapes }: Scene, rings: number): Ends {
  const main = entries[0]!.stack;
  const isScrewed = ({ name, on, in: within }: Part) =>
    relations.joint(name)?.to === carrier ||
    (relations.family.adjusters.some(({ part }) => part === name) && [...on, ...within].includes(carrier));
  const partsAt = (isBelow: boolean) =>
    entries
      .filter((one) => one.isBelow === isBelow && (one.stack === main || one.isBelow) && one.part.name !== carrier)
      .map(({ part }) => part);
  const [above, below] = [partsAt(false), partsAt(true)];
  const end = (parts: readonly Part[]): End => {
    const screwed = parts.filter(isScrewed);
    // Screws that go through a part have holes of their own.
    const inside = screwed.some(({ name, through }) => isMale(shapes.get(name)!) && through.length === 0);
    return {
      isOpen: inside || parts.some((part) => part.in.includes(carrier)),
      inside,
      outside: screwed.some(({ name }) => isFemale(shapes.get(name)!)),
    };
  };
  const presses = (some: readonly Part[], others: readonly Part[]) =>
    some.some(({ bearsOn }) => others.some(({ name }) => bearsOn.includes(name)));
  const goesThrough = [...above, ...below].some(({ through }) => through.includes(carrier));
  return {
    upper: end(above),
    lower: end(below),
    hasChannel: goesThrough || presses(above, below) || presses(below, above),
    rings,
  };
}

/** Two pins that stick out of the lower face. */
function dowelsOf({ middle, top, height }: Frame, lower: readonly Stretch[]): Mark[] {
  const right = Math.max(...lower.map(([, end]) => end)) - middle;
  return [-1, 1].map((side) => {
    const x = middle + side * right * 0.62;
    const y = top + height;
    return outline(
      [
        { x: x - 0.6, y: y - 0.5 },
        { x: x + 0.6, y: y - 0.5 },
        { x: x + 0.6, y: y + 2 },
        { x: x - 0.6, y: y + 2 },
      ],
      { role: 'dowel', fill: 'black', weight: 0 },
    );
  });
}

/** Cuts of rings round a shape: black, at both sides of it. */
export function ringMarks({ box, belt }: Sketched, count: number): { readonly marks: Mark[]; readonly spot: Point }[] {
  const middle = box.x + box.width / 2;
  const radius = 1.2;
  const pitch = 3.4;
  return Array.from({ length: count }, (_, index) => {
    const y = Math.min(
      box.y + box.height - radius,
      Math.max(box.y + radius, belt.y + (index - (count - 1) / 2) * pitch),
    );
    return {
      marks: [1, -1].map((side) =>
        outline(dot(middle + side * (belt.x + radius * 0.5), y, radius), { fill: 'black', weight: 0 }),
      ),
      spot: { x: middle + belt.x + radius * 1.5, y },
    };
  });
}

/** Upside down: what goes in from the lower end. */
function turnedOver(made: Sketched): Sketched {
  const { y, height } = made.box;
  const over = (point: Point): Point => ({ x: point.x, y: 2 * y + height - point.y });
  return {
    ...made,
    marks: made.marks.map((mark) => ({ ...mark, runs: mark.runs.map((run) => run.map(over)) })),
    spot: over(made.spot),
    upper: made.lower,
    lower: made.upper,
    mouth: made.mouth === null ? null : over(made.mouth),
    belt: over(made.belt),
  };
}

function shifted(made: Sketched, down: number): Sketched {
  if (down === 0) return made;
  const to = (point: Point): Point => ({ x: point.x, y: point.y + down });
  return {
    ...made,
    marks: made.marks.map((mark) => ({ ...mark, runs: mark.runs.map((run) => run.map(to)) })),
    box: { ...made.box, y: made.box.y + down },
    spot: to(made.spot),
    mouth: made.mouth === null ? null : to(made.mouth),
    belt: to(made.belt),
  };
}
