/** What every drawing must keep: texts apart and on the page, leaders that do not cross, weights that print. */
import {
  type Box,
  type Drawing,
  type Label,
  lineHeight,
  type Mark,
  type Point,
} from '../../language/documents/drawing/drawing.ts';
import { widthOf } from '../../language/documents/drawing/text-width.ts';

const slack = 0.01;

const meet = (a: Box, b: Box) =>
  a.x < b.x + b.width - slack &&
  b.x < a.x + a.width - slack &&
  a.y < b.y + b.height - slack &&
  b.y < a.y + a.height - slack;

interface Segment {
  readonly from: Point;
  readonly to: Point;
  readonly mark: Mark;
}

function segmentsOf(drawing: Drawing, roles: readonly Mark['role'][]): Segment[] {
  return drawing.marks
    .filter(({ role }) => roles.includes(role))
    .flatMap((mark) => mark.runs.flatMap((run) => run.slice(1).map((to, index) => ({ from: run[index]!, to, mark }))));
}

const side = (a: Point, b: Point, c: Point) => {
  const value = (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
  return Math.abs(value) < 1e-6 ? 0 : Math.sign(value);
};

/** Whether one passes from one side of the other to its other side; touching is no crossing. */
function cross(a: Segment, b: Segment): boolean {
  return (
    side(a.from, a.to, b.from) * side(a.from, a.to, b.to) < 0 &&
    side(b.from, b.to, a.from) * side(b.from, b.to, a.to) < 0
  );
}

/** Whether a segment passes through the inside of a box. */
function runsThrough({ from, to }: Segment, box: Box): boolean {
  const [left, right, top, bottom] = [
    box.x + slack,
    box.x + box.width - slack,
    box.y + slack,
    box.y + box.height - slack,
  ];
  let [enter, leave] = [0, 1];
  for (const [start, delta, low, high] of [
    [from.x, to.x - from.x, left, right],
    [from.y, to.y - from.y, top, bottom],
  ] as const) {
    if (Math.abs(delta) < 1e-9) {
      if (start <= low || start >= high) return false;
      continue;
    }
    const [a, b] = [(low - start) / delta, (high - start) / delta];
    enter = Math.max(enter, Math.min(a, b));
    leave = Math.min(leave, Math.max(a, b));
  }
  return enter < leave - 1e-9;
}

/** The room of each line: a tie line may reach a short title above a longer line. */
function lineBoxes({ box, lines, align, turned }: Label): Box[] {
  if (turned) return [box];
  return lines.map(({ text, bold }, index) => {
    const width = widthOf(text, bold);
    const x = align === 'left' ? box.x : box.x + box.width - width;
    return { x, y: box.y + index * lineHeight, width, height: lineHeight };
  });
}

/** Everything that is wrong with a drawing, in words. */
export function faultsOf(drawing: Drawing): string[] {
  const faults: string[] = [];
  const { labels, width, height } = drawing;
  const named = (index: number) => labels[index]!.lines.map(({ text }) => text).join(' / ');
  labels.forEach(({ box }, index) => {
    if (box.x < -slack || box.y < -slack || box.x + box.width > width + slack || box.y + box.height > height + slack)
      faults.push(`off the page: ${named(index)} ${JSON.stringify(box)} of ${width} × ${height}`);
    labels.slice(index + 1).forEach((other, after) => {
      if (meet(box, other.box)) faults.push(`over each other: ${named(index)} | ${named(index + 1 + after)}`);
    });
  });
  for (const { runs, role, weight } of drawing.marks) {
    if (weight > 0 && weight < 0.5) faults.push(`too thin: ${role}`);
    if (role === 'face' && weight < 1.2) faults.push('a face that is not thick');
    for (const { x, y } of runs.flat()) {
      if (!(x >= -slack && y >= -slack && x <= width + slack && y <= height + slack))
        faults.push(`off the page: ${role} ${x} ${y}`);
    }
  }
  const lines = segmentsOf(drawing, ['leader', 'tie', 'bracket']);
  lines.forEach((one, index) => {
    for (const other of lines.slice(index + 1))
      if (one.mark !== other.mark && cross(one, other)) faults.push(`${one.mark.role} crosses ${other.mark.role}`);
    labels.forEach((label, at) => {
      if (lineBoxes(label).some((box) => runsThrough(one, box)))
        faults.push(`${one.mark.role} runs through ${named(at)}`);
    });
  });
  return [...new Set(faults)];
}
