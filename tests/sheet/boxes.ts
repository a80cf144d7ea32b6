/** Boxes of a page: what four lines enclose, and what is written in it. */
import { inkOf, upright } from './layout.ts';
import type { Painted } from './paint.ts';
import type { Box } from './shapes.ts';

export interface WritingBox extends Box {
  readonly page: number;
  /** The text in it. */
  readonly text: string;
}

/** Lines that meet at so little, in points, do meet. */
const near = 2;

interface Edge {
  /** The coordinate that is the same along it. */
  readonly at: number;
  readonly from: number;
  readonly to: number;
}

/** The smallest rectangles between four lines that no letter is in. */
export function emptyBoxes(page: Painted): WritingBox[] {
  return boxesOf(page).filter(({ text }) => text === '');
}

/** The smallest rectangles between four lines of the sheet; squares of a drawing are no boxes. */
export function boxesOf({ page, lines: all, runs }: Painted): WritingBox[] {
  const lines = all.filter(({ figure }) => figure === null);
  const level = joined(
    lines
      .filter((line) => line.right - line.left > line.bottom - line.top)
      .map((line) => ({ at: (line.top + line.bottom) / 2, from: line.left, to: line.right })),
  );
  const plumb = joined(
    lines
      .filter((line) => line.right - line.left <= line.bottom - line.top)
      .map((line) => ({ at: (line.left + line.right) / 2, from: line.top, to: line.bottom })),
  );
  const inked = upright(runs).map((run) => ({ ...inkOf(run), text: run.text }));
  return level.flatMap((top) => {
    const sides = plumb
      .filter(
        ({ at, from, to }) => at > top.from - near && at < top.to + near && from < top.at + near && to > top.at + near,
      )
      .sort((a, b) => a.at - b.at);
    return sides.slice(1).flatMap((right, index) => {
      const left = sides[index]!;
      const under = level
        .filter(({ at, from, to }) => at > top.at + near && from < left.at + near && to > right.at - near)
        .sort((a, b) => a.at - b.at)[0];
      if (under === undefined || left.to < under.at - near || right.to < under.at - near) return [];
      const box = { left: left.at, top: top.at, right: right.at, bottom: under.at };
      const written = inked.filter(
        (ink) => ink.left < box.right && ink.right > box.left && ink.top < box.bottom && ink.bottom > box.top,
      );
      return [{ page, ...box, text: written.map(({ text }) => text).join(' ') }];
    });
  });
}

/** Lines drawn cell by cell, as the long ones that they are. */
function joined(edges: readonly Edge[]): Edge[] {
  const all: Edge[] = [];
  for (const edge of [...edges].sort((a, b) => a.at - b.at || a.from - b.from)) {
    const index = all.findLastIndex(
      ({ at, to, from }) => Math.abs(at - edge.at) < 0.6 && edge.from <= to + near && edge.to >= from - near,
    );
    const known = all[index];
    if (known === undefined) all.push(edge);
    else all[index] = { at: known.at, from: Math.min(known.from, edge.from), to: Math.max(known.to, edge.to) };
  }
  return all;
}
