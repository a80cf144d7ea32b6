import type { Row } from '../../analysis/build-order.ts';
import type { Face, Port } from '../../model/family.ts';
import { brokenText } from './broken-text.ts';
import { type Box, lineHeight, type Mark, midline, type TextLine, weights } from './drawing.ts';
import type { Facts } from './facts.ts';
import { strokes } from './lines.ts';
import {
  anchorOf,
  cavity,
  cup,
  dowels,
  ghost,
  headOf,
  heightOf,
  type Shape,
  shapeOf,
  silhouette,
  solidEdge,
  threaded,
} from './silhouette.ts';
import { widthOf } from './text-width.ts';

/** How closely a drawing is set. Each step gives up a little; the first that fits is taken. */
export interface Density {
  /** Millimeters between a row and the next. */
  readonly gap: number;
  /** Of the heights of shapes. */
  readonly scale: number;
  readonly titleLines: number;
  /** Lines for each detail under a title; 0: none. */
  readonly detailLines: number;
  /** Lines for each text at the left. */
  readonly sideLines: number;
}

export const densities: readonly Density[] = [
  { gap: 5, scale: 1, titleLines: 2, detailLines: 2, sideLines: 4 },
  { gap: 3.4, scale: 0.9, titleLines: 2, detailLines: 2, sideLines: 4 },
  { gap: 2.4, scale: 0.75, titleLines: 2, detailLines: 2, sideLines: 4 },
  { gap: 1.7, scale: 0.6, titleLines: 2, detailLines: 2, sideLines: 3 },
  { gap: 1.3, scale: 0.5, titleLines: 2, detailLines: 2, sideLines: 3 },
  { gap: 1.3, scale: 0.5, titleLines: 2, detailLines: 2, sideLines: 2 },
  { gap: 1.3, scale: 0.5, titleLines: 2, detailLines: 1, sideLines: 2 },
  { gap: 1.3, scale: 0.5, titleLines: 1, detailLines: 1, sideLines: 2 },
  { gap: 1.2, scale: 0.45, titleLines: 1, detailLines: 1, sideLines: 1 },
  { gap: 1.2, scale: 0.4, titleLines: 1, detailLines: 0, sideLines: 1 },
];

/** The places of the things in a column from its left edge, in millimeters. */
export interface Measures {
  /** Right edge of the texts at the left, and their width; 0: there are none. */
  readonly sideWidth: number;
  readonly middle: number;
  readonly shapeWidth: number;
  /** Left edge of the names, and the width that they may take. */
  readonly names: number;
  readonly namesWidth: number;
}

/** What is in a column, from the bottom up. */
export type Item =
  | { readonly kind: 'foot'; readonly part: string; readonly above: number }
  /** `under`: parts drawn straight below, on which it visibly rests. */
  | { readonly kind: 'row'; readonly row: Row; readonly under: readonly string[]; readonly above: number };

/** A part where it is drawn; x from the column's left edge, y from its top. */
export interface PlacedItem {
  readonly part: string;
  readonly box: Box;
  /** Stretches of its upper and lower edge that are solid: left and right end of each. */
  readonly upper: readonly (readonly [number, number])[];
  readonly lower: readonly (readonly [number, number])[];
  /** The shape that a leader from the side must pass: that of its row. */
  readonly outer: Box;
}

export interface PlacedName {
  readonly role: 'part' | 'foot';
  readonly part: string;
  readonly lines: readonly TextLine[];
  readonly box: Box;
  /** Where its leader ends: on the shape. */
  readonly anchor: { readonly x: number; readonly y: number };
}

/** A text at the left, with the point that it refers to. */
export interface Side {
  readonly role: 'face' | 'port';
  readonly of: readonly string[];
  readonly lines: readonly TextLine[];
  readonly anchor: { readonly x: number; readonly y: number };
}

export interface Column {
  readonly height: number;
  readonly marks: readonly Mark[];
  readonly placed: readonly PlacedItem[];
  readonly names: readonly PlacedName[];
  readonly sides: readonly Side[];
  /** Texts that were cut. */
  readonly cut: readonly string[];
}

/** What all columns of a drawing share. */
export interface Scene {
  readonly facts: Facts;
  readonly carrier: string;
  readonly shares: ReadonlyMap<string, number>;
  /** Ties that are said in words under the name of a part. */
  readonly tieWords: ReadonlyMap<string, readonly string[]>;
  /** Rows by the part drawn in them, for faces that meet: bottom up over the whole drawing. */
  readonly rank: ReadonlyMap<string, number>;
  readonly density: Density;
}

/** The texts of a part: its title, then the facts about it. */
export function nameLines(
  scene: Scene,
  part: string,
  under: readonly string[],
  width: number,
  cut: string[],
): TextLine[] {
  const { facts, density } = scene;
  const take = (text: string, bold: boolean, most: number): TextLine[] => {
    const broken = brokenText(text, bold, width, most);
    if (broken.cut) cut.push(text);
    return broken.lines.map((line) => ({ text: line, bold }));
  };
  const heading = (): TextLine[] => {
    const whole = brokenText(facts.heading(part), true, width, density.titleLines);
    if (!whole.cut) return whole.lines.map((text) => ({ text, bold: true }));
    cut.push(facts.heading(part));
    // How many there are is not what is cut.
    const count = facts.count(part);
    const room = width - (count === '' ? 0 : widthOf(count, true));
    const lines = brokenText(facts.drawn.title(part), true, room, density.titleLines).lines;
    return lines.map((text, index) => ({ text: index + 1 === lines.length ? text + count : text, bold: true }));
  };
  const more = density.detailLines;
  const details: (TextLine & { readonly most: number })[] = [
    // If it is drawn straight on what it rests on, the picture says it.
    ...(under.length === 0 || facts.restsOnAny(part, under) ? [] : [facts.rests(part).join(', ')]),
    facts.located(part).join(', '),
    facts.joint(part).join(', '),
    facts.loose(part).join(', '),
  ].map((text) => ({ text, bold: false, most: more }));
  const ties = (scene.tieWords.get(part) ?? []).map((text) => ({ text, bold: false, most: more > 1 ? 3 : more }));
  // Turned the wrong way it breaks: said apart, and with weight.
  const leftHand = facts.leftHand(part).map((text) => ({ text, bold: true, most: 2 }));
  const all = [...details, ...leftHand, ...ties].filter(({ text }) => text !== '');
  cut.push(...all.filter(({ most }) => most === 0).map(({ text }) => text));
  return [
    ...heading(),
    ...all.filter(({ most }) => most > 0).flatMap(({ text, bold, most }) => take(text, bold, most)),
  ];
}

/**
 * Where the first line of a label is beside a shape, and how much both take. `head`: height of the wide end at the top
 * that its leader comes from.
 */
function besideEachOther(shape: number, label: number, head = shape) {
  if (head < shape) {
    const down = midline - head / 2;
    return {
      height: Math.max(label - Math.min(0, down), Math.max(0, down) + shape),
      shapeTop: Math.max(0, down),
      labelTop: Math.max(0, -down),
    };
  }
  if (shape >= label) return { height: shape, shapeTop: 0, labelTop: (shape - label) / 2 };
  const shapeTop = Math.max(0, midline - shape / 2);
  return { height: Math.max(label, shapeTop + shape), shapeTop, labelTop: 0 };
}

/** Least height of a port's stub with the room around it. */
const portPitch = 4;

/** Lays a column out from the bottom up; then all is measured from its top. */
export function buildColumn(scene: Scene, items: readonly Item[], measures: Measures, more: number): Column {
  const { facts, density } = scene;
  const { relations } = facts;
  const cut: string[] = [];
  const placed: PlacedItem[] = [];
  const names: PlacedName[] = [];
  const marks: Mark[] = [];
  let y = 0;

  const boxAt = (width: number, top: number, height: number): Box => ({
    x: measures.middle - width / 2,
    y: top,
    width,
    height,
  });
  const stands = (part: string, shape: Shape | 'cup', box: Box, outer: Box, hasBore = false): PlacedItem => ({
    part,
    box,
    upper: solidEdge(shape, box, hasBore, true),
    lower: solidEdge(shape, box, hasBore, false),
    outer,
  });
  const widthFor = (part: string) => (scene.shares.get(part) ?? 0.8) * measures.shapeWidth;
  const name = (
    role: 'part' | 'foot',
    part: string,
    lines: TextLine[],
    top: number,
    shape: Box,
    kind: Shape | 'cup',
  ) => {
    const anchor = anchorOf(kind, shape, top + midline);
    names.push({
      role,
      part,
      lines,
      box: {
        x: measures.names,
        y: top,
        width: Math.max(...lines.map(({ text, bold }) => widthOf(text, bold))),
        height: lines.length * lineHeight,
      },
      anchor,
    });
  };

  /** Height of a shape with these ports at its side: if there is room enough, their texts are straight beside them. */
  const roomForPorts = (ports: readonly Port[]): number => {
    if (ports.length === 0) return 0;
    if (density.scale < 0.8) return ports.length * portPitch + 1;
    const lines = ports.flatMap(
      (port) => brokenText(facts.port(port), false, measures.sideWidth, density.sideLines).lines,
    );
    return Math.max(ports.length * portPitch + 1, lines.length * lineHeight + (ports.length - 1) * 1.2);
  };

  const drawFoot = (part: string) => {
    const broken = brokenText(facts.drawn.title(part), false, measures.namesWidth, density.titleLines);
    if (broken.cut) cut.push(facts.drawn.title(part));
    const lines = broken.lines.map((text) => ({ text, bold: false }));
    const beside = besideEachOther(5.5, lines.length * lineHeight);
    const box = boxAt(Math.max(widthFor(part), measures.shapeWidth * 0.5), y + beside.shapeTop, 5.5);
    marks.push(...ghost(box));
    name('foot', part, lines, y + beside.labelTop, box, 'box');
    y += beside.height;
  };

  const drawRow = ({ part, inner }: Row, under: readonly string[]) => {
    const isCarrier = part.name === scene.carrier;
    const shape = shapeOf(relations, part, isCarrier);
    const ports = roomForPorts([part.name, ...inner.map((one) => one.name)].flatMap((one) => relations.ports(one)));
    const width = widthFor(part.name);
    if (inner.length === 0) {
      const lines = nameLines(scene, part.name, under, measures.namesWidth, cut);
      const height = Math.max(heightOf(shape, relations, part) * density.scale, ports, 2);
      const head = shape === 'bolt' || shape === 'shaft' ? headOf(shape, height) : height;
      const beside = besideEachOther(height, lines.length * lineHeight, head);
      const box = boxAt(width, y + beside.shapeTop, height);
      const hasBore = relations.onIt(part.name).some((other) => other.in.includes(part.name));
      marks.push(...silhouette(shape, box, hasBore));
      if (part.locatedBy !== null) marks.push(...dowels(box));
      placed.push(stands(part.name, shape, box, box, hasBore));
      name('part', part.name, lines, y + beside.labelTop, box, shape);
      y += beside.height;
      return;
    }
    // A part with others in it: from its mouth down to its floor, the last one first.
    const outerWidth = Math.max(width, measures.shapeWidth * 0.66);
    const room = cavity(boxAt(outerWidth, 0, 0));
    const top = y;
    const within: { part: string; box: Box; shape: Shape }[] = [];
    y += 1.6;
    const here = [part.name, ...inner.map((one) => one.name)];
    for (const one of [...inner].reverse()) {
      const kind = shapeOf(relations, one, false);
      const lines = nameLines(
        scene,
        one.name,
        one.in.includes(part.name) ? [] : here.filter((other) => other !== part.name && one.on.includes(other)),
        measures.namesWidth,
        cut,
      );
      const height = Math.max(heightOf(kind, relations, one) * density.scale, 2);
      const beside = besideEachOther(height, lines.length * lineHeight);
      const box = boxAt(room * (kind === 'spring' ? 0.66 : 0.74), y + beside.shapeTop, height);
      within.push({ part: one.name, box, shape: kind });
      name('part', one.name, lines, y + beside.labelTop, box, kind);
      y += beside.height + Math.max(1.6, density.gap * 0.5);
    }
    const lines = nameLines(scene, part.name, under, measures.namesWidth, cut);
    const floor = Math.max(4.5, 6 * density.scale);
    y = Math.max(y, top + ports - floor);
    const outer = boxAt(outerWidth, top, y + floor - top);
    marks.push(...cup(outer, floor));
    if (relations.joint(part.name) !== undefined) {
      const wall = (outerWidth - room) / 2;
      marks.push(...threaded({ x: outer.x, y: outer.y, width: wall, height: Math.min(5, outer.height * 0.4) }));
      marks.push(
        ...threaded({
          x: outer.x + outer.width - wall,
          y: outer.y,
          width: wall,
          height: Math.min(5, outer.height * 0.4),
        }),
      );
    }
    if (part.locatedBy !== null) marks.push(...dowels(outer));
    placed.push(stands(part.name, 'cup', outer, outer));
    for (const { part: one, box, shape: kind } of within) {
      marks.push(...silhouette(kind, box, false));
      if (relations.part(one).locatedBy !== null) marks.push(...dowels(box));
      placed.push(stands(one, kind, box, outer));
    }
    const beside = besideEachOther(floor, lines.length * lineHeight);
    // The label of the whole is at its floor and may hang below it.
    const labelTop = y + Math.min(beside.labelTop, Math.max(0, floor / 2 - midline));
    name('part', part.name, lines, labelTop, { ...outer, y, height: floor }, 'cup');
    y = Math.max(y + floor, labelTop + lines.length * lineHeight);
  };

  const fromTop = [...items].reverse();
  for (const [index, item] of fromTop.entries()) {
    if (index > 0) y += density.gap + more + fromTop[index]!.above;
    if (item.kind === 'foot') drawFoot(item.part);
    else drawRow(item.row, item.under);
  }
  const sides = sidesOf(scene, items, placed, measures, marks, cut);
  return { height: y, marks, placed, names, sides, cut };
}

/** Lapped and ground faces as thick lines, ports as stubs, and the texts for both. */
function sidesOf(
  scene: Scene,
  items: readonly Item[],
  placed: readonly PlacedItem[],
  measures: Measures,
  marks: Mark[],
  cut: string[],
): Side[] {
  const { facts, density } = scene;
  const { relations } = facts;
  const at = new Map(placed.map((one) => [one.part, one]));
  const sides: Side[] = [];
  const linesOf = (text: string, most: number): TextLine[] => {
    const broken = brokenText(text, false, measures.sideWidth, most);
    if (broken.cut) cut.push(text);
    return broken.lines.map((line) => ({ text: line, bold: false }));
  };
  const rows = items.flatMap((item) =>
    item.kind === 'row' ? [[item.row.part, ...item.row.inner].map(({ name }) => name)] : [],
  );
  const rowAt = (part: string) => rows.findIndex((row) => row.includes(part));
  /** A face looks up where what it meets is built on it; alone it is taken for the upper one. */
  const looksUp = (face: Face) => {
    const other = partOfFace(relations.family.faces, face.meets);
    return other === null || (scene.rank.get(other) ?? 0) >= (scene.rank.get(face.part) ?? 0);
  };
  const said = new Set<string>();
  for (const face of relations.family.faces) {
    const spot = at.get(face.part);
    if (spot === undefined || (face.finish === null && face.guardedBy === null)) continue;
    const up = looksUp(face);
    const { box } = spot;
    const y = up ? box.y : box.y + box.height;
    const key = `${face.part} ${up}`;
    const isDrawn = said.has(key);
    said.add(key);
    if (!isDrawn)
      marks.push(
        strokes(
          'face',
          (up ? spot.upper : spot.lower).map(([from, to]) => [
            { x: from, y },
            { x: to, y },
          ]),
          { weight: weights.thick },
        ),
      );
    const other = partOfFace(relations.family.faces, face.meets);
    const gapRows = other === null ? Number.NaN : Math.abs(rowAt(other) - rowAt(face.part));
    const isNext = other !== null && rowAt(other) >= 0 && gapRows === 1;
    // One text for two faces that are seen to meet, at the one that is guarded or else the lower.
    const partner = relations.family.faces.find(({ id }) => id === face.meets);
    const speaks = partner === undefined || !isNext || face.guardedBy !== null || (partner.guardedBy === null && up);
    if (!speaks) continue;
    sides.push({
      role: 'face',
      of: [face.id],
      lines: linesOf(facts.face(face, isNext ? null : other).join(', '), density.sideLines + 1),
      anchor: { x: (up ? spot.upper : spot.lower)[0]![0], y },
    });
  }
  for (const row of rows) {
    const ports = row.flatMap((part) => relations.ports(part));
    const outer = at.get(row[0]!)?.outer;
    if (outer === undefined) continue;
    for (const [index, port] of ports.entries()) {
      const y = outer.y + (outer.height * (index + 0.5)) / ports.length;
      marks.push(...stub(port, outer.x, y));
      sides.push({
        role: 'port',
        of: [port.name],
        lines: linesOf(facts.port(port), density.sideLines),
        anchor: { x: outer.x - stubLength - (port.under === null && !port.openInTransit ? 1.3 : 0), y },
      });
    }
  }
  return sides;
}

export function partOfFace(faces: readonly Face[], id: string | null): string | null {
  return faces.find((face) => face.id === id)?.part ?? null;
}

/** Millimeters that a port sticks out. */
const stubLength = 3.4;

/** A short pipe at the left of a shape; with a cap on its end, unless a part covers it or it travels open. */
function stub(port: Port, x: number, y: number): Mark[] {
  const box = { x: x - stubLength, y: y - 1.1, width: stubLength, height: 2.2 };
  const line = (atY: number) => [
    { x: box.x, y: atY },
    { x: box.x + box.width, y: atY },
  ];
  const pipe = strokes('port', [line(box.y), line(box.y + box.height)], { weight: weights.outline });
  const isCapped = port.under === null && !port.openInTransit;
  const cap: Mark = {
    role: 'cap',
    runs: [
      [
        { x: box.x + 1, y: box.y - 0.7 },
        { x: box.x - 1.3, y: box.y - 0.7 },
        { x: box.x - 1.3, y: box.y + box.height + 0.7 },
        { x: box.x + 1, y: box.y + box.height + 0.7 },
      ],
    ],
    closed: true,
    fill: 'black',
    weight: 0,
    dash: [],
  };
  return isCapped ? [pipe, cap] : [pipe];
}
