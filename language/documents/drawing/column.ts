import { brokenText } from './broken-text.ts';
import type { Density } from './density.ts';
import { type Box, lineHeight, type Mark, midline, type Point, type TextLine, textSize } from './drawing.ts';
import { ductOf } from './duct.ts';
import type { Entry } from './entries.ts';
import type { Facts } from './facts.ts';
import { gapMarks } from './gaps.ts';
import { ghost } from './lines.ts';
import { type NameLines, nameLines } from './name-lines.ts';
import { heightOf, isFalling, ringMarks, type Sketched, sketchOf } from './placed-shape.ts';
import type { ShapeName } from './shapes/index.ts';
import { type Side, sidesOf, stubsHeight } from './sides.ts';
import { spread } from './spread.ts';
import { widthOf } from './text-width.ts';

/** The places of the things in a column from its left edge, in millimeters. */
export interface Measures {
  /** Right edge of the texts at the left, and their width; 0: there are none. */
  readonly sideWidth: number;
  readonly middle: number;
  readonly shapeWidth: number;
  /** Left edge of the names, with the step numbers before them, and the width that the names may take. */
  readonly names: number;
  readonly stepWidth: number;
  readonly namesWidth: number;
}

/** What is in a column, from the bottom up. */
export type Item =
  | { readonly kind: 'foot'; readonly part: string; readonly above: number }
  | { readonly kind: 'row'; readonly entry: Entry; readonly beside: readonly string[]; readonly above: number };

/** A part where it is drawn; from the column's left upper corner. */
export interface PlacedItem extends Sketched {
  readonly part: string;
  readonly entry: Entry;
}

export interface PlacedName {
  readonly role: 'part' | 'foot';
  readonly part: string;
  /** The step that it is fitted at; null: the drawing has no steps, or it is fitted at none. */
  readonly step: string | null;
  readonly lines: readonly TextLine[];
  readonly box: Box;
  /** Where its leader ends: on the shape; `onEdge`: at its outline, with an arrow. */
  readonly anchor: Point;
  readonly onEdge: boolean;
}

export interface Column {
  readonly height: number;
  readonly marks: readonly Mark[];
  readonly placed: readonly PlacedItem[];
  readonly names: readonly PlacedName[];
  readonly sides: readonly Side[];
  /** Texts that were cut. */
  readonly cut: readonly string[];
  /** Upper edge of each item, from the bottom of the column up. */
  readonly tops: readonly number[];
  /** The path of the fluid is drawn in it. */
  readonly hasDuct: boolean;
}

/** What all columns of a drawing share. */
export interface Scene {
  readonly facts: Facts;
  readonly carrier: string;
  readonly shapes: ReadonlyMap<string, ShapeName>;
  readonly shares: ReadonlyMap<string, number>;
  /** Ties that are said in words under the name of a part. */
  readonly tieWords: ReadonlyMap<string, readonly string[]>;
  /** All that is drawn, bottom up over the whole drawing, for faces that meet elsewhere. */
  readonly entries: readonly Entry[];
  readonly density: Density;
  /** Texts that were set before. */
  readonly known: Map<string, NameLines>;
}

/** Between the labels of one row. */
const labelGap = 0.8;
/** From the top of a label to the middle of its first line. */
const leaderAt = midline;

/** Millimeters that a row takes at least. */
export function leastHeight(scene: Scene, { entry, beside }: Item & { kind: 'row' }, { namesWidth }: Measures): number {
  const { part, worn } = entry;
  const labels = [
    nameLines(scene, part.name, beside, namesWidth),
    ...worn.map((ring) => nameLines(scene, ring.name, [part.name], namesWidth)),
  ];
  const names = labels.reduce((sum, { lines }) => sum + lines.length * lineHeight + labelGap, -labelGap);
  return Math.max(names, part.name === scene.carrier ? 0 : heightOf(scene, entry, stubsHeight(scene, entry), null));
}

/** Lays a column out from the top down; then all is measured from its top. */
export function buildColumn(scene: Scene, items: readonly Item[], measures: Measures, more: number): Column {
  const { facts, density } = scene;
  const cut: string[] = [];
  const placed: PlacedItem[] = [];
  const names: PlacedName[] = [];
  const marks: Mark[] = [];
  const tops: number[] = [];
  let y = 0;
  const taken = (made: NameLines): readonly TextLine[] => {
    cut.push(...made.cut);
    return made.lines;
  };

  const name = (
    role: 'part' | 'foot',
    part: string,
    lines: readonly TextLine[],
    top: number,
    anchor: Point,
    onEdge: boolean,
  ) => {
    names.push({
      role,
      part,
      step: role === 'part' ? facts.step(part) : null,
      lines,
      box: {
        x: measures.names + measures.stepWidth,
        y: top,
        width: Math.max(...lines.map(({ text, bold }) => widthOf(text, bold))),
        height: lines.length * lineHeight,
      },
      anchor,
      onEdge,
    });
  };

  const drawFoot = (part: string) => {
    const broken = brokenText(facts.drawn.title(part), false, measures.namesWidth, density.titleLines);
    if (broken.cut) cut.push(facts.drawn.title(part));
    const lines = broken.lines.map((text) => ({ text, bold: false }));
    const height = Math.max(5.5, lines.length * lineHeight);
    const width = Math.max((scene.shares.get(part) ?? 0.8) * measures.shapeWidth, measures.shapeWidth * 0.5);
    marks.push(...ghost({ x: measures.middle - width / 2, y: y + height - 5.5, width, height: 5.5 }));
    name('foot', part, lines, y, { x: measures.middle + width / 2, y: y + height - 3 }, true);
    y += height;
  };

  const drawRow = (entry: Entry, beside: readonly string[]) => {
    const { part, worn } = entry;
    const own = taken(nameLines(scene, part.name, beside, measures.namesWidth));
    const rings = worn.map((ring) => ({
      ring,
      lines: taken(nameLines(scene, ring.name, [part.name], measures.namesWidth)),
    }));
    const ports = stubsHeight(scene, entry);
    const sketch = sketchOf(
      scene,
      entry,
      { middle: measures.middle, top: y, width: measures.shapeWidth },
      ports,
      isFalling(scene, entry),
    );
    const heights = [own, ...rings.map(({ lines }) => lines)].map((lines) => lines.length * lineHeight);
    const total = heights.reduce((sum, height) => sum + height + labelGap, -labelGap);
    const { box } = sketch;
    // One label hangs beside its shape, straight if it can; several share the height of the row.
    const down = sketch.spot.y - box.y;
    const shift = total > box.height ? Math.min(Math.max(0, leaderAt - down), total - box.height) : 0;
    const shape = sketch.moved(shift);
    const around = ringMarks(shape, worn.length);
    const height = Math.max(total, shift + box.height);
    marks.push(...shape.marks, ...around.flatMap((ring) => ring.marks));
    placed.push({ ...shape, part: part.name, entry });
    const labels = [
      { part: part.name, lines: own, spot: shape.spot, onEdge: shape.onEdge },
      ...rings.map(({ ring, lines }, at) => ({ part: ring.name, lines, spot: around[at]!.spot, onEdge: true })),
    ].sort((a, b) => a.spot.y - b.spot.y);
    const tops = spread(
      labels.map(({ lines, spot }) => ({ wish: spot.y - leaderAt, height: lines.length * lineHeight })),
      y,
      y + height,
      labelGap,
    );
    labels.forEach((label, at) => {
      name('part', label.part, label.lines, tops[at]!, label.spot, label.onEdge);
    });
    y += height;
  };

  const fromTop = [...items].reverse();
  for (const [index, item] of fromTop.entries()) {
    if (index > 0) y += density.gap + more + fromTop[index]!.above;
    tops.unshift(y);
    if (item.kind === 'foot') drawFoot(item.part);
    else drawRow(item.entry, item.beside);
  }
  const duct = ductOf(scene, placed, measures);
  const { sides, marks: sideMarks } = sidesOf(scene, placed, measures, cut);
  return {
    height: y,
    marks: [...marks, ...duct, ...gapMarks(scene, placed, measures), ...sideMarks],
    placed,
    names,
    sides,
    cut,
    tops,
    hasDuct: duct.length > 0,
  };
}

/** Width of a step number in its frame. */
export function stepWidth(step: string): number {
  return Math.max(7, widthOf(step, false) + 2.6 * (textSize / 10));
}
