/** Paths of a PDF as lines and fields. */
import { at, type Matrix } from './matrix.ts';

/** How pdf.js writes a path down: a number for each part, then its points. */
const part = { move: 0, line: 1, curve: 2, quadratic: 3, close: 4 } as const;

type Point = readonly [number, number];

/** Edges of a rectangle. */
export interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

interface Shape {
  readonly lines: readonly (Box & { readonly width: number })[];
  /** What is filled and no line. */
  readonly field: Box | null;
}

/** The thickest filled bar that is still a line: a gate's bar has 4 pt. */
const thickest = 6;

/** `width` of a stroke; null: the path is filled. */
export function shapeOf(data: ArrayLike<number>, ctm: Matrix, width: number | null): Shape {
  const { paths, curved } = pathsOf(data, ctm);
  const points = paths.flat();
  if (points.length === 0) return { lines: [], field: null };
  if (width !== null)
    return { lines: paths.flatMap((path) => edges(path).map((box) => ({ ...box, width }))), field: null };
  // A picture, such as the code in the head: many squares in one path.
  if (curved || paths.length > 8) return { lines: [], field: boxOf(points) };
  const bars = paths.map(boxOf);
  if (paths.every((path, index) => isBar(path, bars[index]!)))
    return {
      lines: bars.map((bar) => ({ ...bar, width: Math.min(bar.right - bar.left, bar.bottom - bar.top) })),
      field: null,
    };
  // Dashes, as a browser fills them: each is a strip of its own, and one that goes round a corner has more than four.
  if (bars.every((bar, index) => bars.every((other, at) => at === index || isApart(bar, other)))) {
    const strips = paths.map(stripWidth);
    if (paths.length > 1 && strips.every((strip) => strip <= thickest))
      return {
        lines: paths.flatMap((path, index) => edges(path).map((box) => ({ ...box, width: strips[index]! }))),
        field: null,
      };
  }
  const gap = narrowest(points);
  if (gap <= thickest)
    return { lines: paths.flatMap((path) => edges(path).map((box) => ({ ...box, width: gap }))), field: null };
  return { lines: [], field: boxOf(points) };
}

/** The box around a path; null if it has no points. */
export function fieldOf(data: ArrayLike<number>, ctm: Matrix): Box | null {
  const points = pathsOf(data, ctm).paths.flat();
  return points.length === 0 ? null : boxOf(points);
}

/** What two boxes have in common; null: nothing. */
export function cutTo(box: Box, frame: Box): Box | null {
  const left = Math.max(box.left, frame.left);
  const top = Math.max(box.top, frame.top);
  const right = Math.min(box.right, frame.right);
  const bottom = Math.min(box.bottom, frame.bottom);
  return left > right || top > bottom ? null : { left, top, right, bottom };
}

function pathsOf(data: ArrayLike<number>, ctm: Matrix): { paths: Point[][]; curved: boolean } {
  const paths: Point[][] = [];
  let curved = false;
  for (let index = 0; index < data.length; ) {
    const kind = data[index++]!;
    const points = kind === part.close ? 0 : kind === part.curve ? 3 : kind === part.quadratic ? 2 : 1;
    if (kind === part.move) paths.push([]);
    if (kind === part.curve || kind === part.quadratic) curved = true;
    const path = paths.at(-1);
    if (kind === part.close && path?.[0] !== undefined) path.push(path[0]);
    for (let count = 0; count < points; count++, index += 2) path?.push(at(ctm, data[index]!, data[index + 1]!));
  }
  return { paths, curved };
}

function boxOf(points: readonly Point[]): Box {
  const xs = points.map(([x]) => x);
  const ys = points.map(([, y]) => y);
  return { left: Math.min(...xs), top: Math.min(...ys), right: Math.max(...xs), bottom: Math.max(...ys) };
}

/** The straight edges of a path that are parallel to those of the page. */
function edges(path: readonly Point[]): Box[] {
  return path.slice(1).flatMap((to, index) => {
    const box = boxOf([path[index]!, to]);
    const [wide, high] = [box.right - box.left, box.bottom - box.top];
    return wide < 0.01 === high < 0.01 ? [] : [box];
  });
}

function isBar(path: readonly Point[], box: Box): boolean {
  const corners = new Set(path.map(([x, y]) => `${x.toFixed(2)} ${y.toFixed(2)}`));
  return corners.size <= 4 && Math.min(box.right - box.left, box.bottom - box.top) <= thickest;
}

function isApart(a: Box, b: Box): boolean {
  return a.right < b.left || b.right < a.left || a.bottom < b.top || b.bottom < a.top;
}

/** How wide a strip is, straight or bent: its length and width make up its area and half of its edge. */
function stripWidth(path: readonly Point[]): number {
  let [area, edge] = [0, 0];
  for (const [index, [x, y]] of path.entries()) {
    const [nextX, nextY] = path[(index + 1) % path.length]!;
    area += (x * nextY - nextX * y) / 2;
    edge += Math.hypot(nextX - x, nextY - y) / 2;
  }
  return (edge - Math.sqrt(Math.max(0, edge * edge - 4 * Math.abs(area)))) / 2;
}

/** The narrowest strip between the corners of a frame that is drawn as one filled path. */
function narrowest(points: readonly Point[]): number {
  const gap = (values: readonly number[]) => {
    const sorted = [...new Set(values.map((value) => Number(value.toFixed(2))))].sort((a, b) => a - b);
    return Math.min(
      ...sorted
        .slice(1)
        .map((value, index) => value - sorted[index]!)
        .filter((one) => one > 0.05),
    );
  };
  return Math.min(gap(points.map(([x]) => x)), gap(points.map(([, y]) => y)));
}
