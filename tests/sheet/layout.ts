/**
 * What is wrong on a printed page, whatever it looks like: ink outside the page, on other ink, or through a line. Within
 * a figure lines meet its words by design (leaders, grids): it is held as a whole.
 */
import type { Line, Painted, Run } from './paint.ts';
import type { Box } from './shapes.ts';

export const millimetre = 72 / 25.4;

/** Office printers leave a sixth of an inch blank at the edge of a sheet. */
const unprintable = 72 / 6;

/** Height over the base line, and depth under it, of the ink of most letters, in parts of the size. */
const ink = { over: 0.68, under: 0.19 };

/** What two inks may share before it is an overlap: rounding, the slant of a letter. */
const touching = 0.6;

/** What the font draws a pair of letters together by at most, in parts of the size. */
const kerning = 0.1;

/** Where the ink of a run is. */
export function inkOf({ left, right, baseline, size }: Run): Box {
  return { left, right, top: baseline - ink.over * size, bottom: baseline + ink.under * size };
}

/** Everything that is wrong with these pages, in words. */
export function faultsOf(pages: readonly Painted[]): string[] {
  return pages.flatMap((page) => [...outside(page), ...overlaps(page), ...crossed(page), ...coveredByFigures(page)]);
}

function outside({ page, width, height, runs, lines, fields }: Painted): string[] {
  const beyond = ({ left, top, right, bottom }: Box) =>
    left < unprintable || top < unprintable || right > width - unprintable || bottom > height - unprintable;
  return [
    ...fields
      .filter((field) => field.figure !== null && beyond(field))
      .map((field) => `page ${page}: a figure at ${place(field)} is outside the page's margin`),
    ...upright(runs)
      .filter((run) => beyond(inkOf(run)))
      .map((run) => `page ${page}: ${words(run)} is outside the page's margin`),
    ...lines.filter(beyond).map((line) => `page ${page}: a line at ${place(line)} is outside the page's margin`),
  ];
}

function overlaps({ page, runs }: Painted): string[] {
  const inked = upright(runs)
    .map((run) => ({ run, box: inkOf(run) }))
    .sort((a, b) => a.box.top - b.box.top);
  return inked.flatMap(({ run, box }, index) => {
    const found: string[] = [];
    for (const other of inked.slice(index + 1)) {
      if (other.box.top > box.bottom) break;
      if (deep(box, other.box) && !kerned(run, other.run))
        found.push(`page ${page}: ${words(run)} and ${words(other.run)} overlap`);
    }
    return found;
  });
}

/**
 * They follow each other on a line in the same type, and the second is drawn up to the first: a comma under the arm of an r. A
 * browser paints the words of two elements as two runs, kerned where they meet. More than a pair of letters is drawn up
 * by, or on another line, is an overlap.
 */
function kerned(one: Run, other: Run): boolean {
  const [first, second] = one.left <= other.left ? [one, other] : [other, one];
  return (
    Math.abs(first.baseline - second.baseline) < 0.01 &&
    first.font === second.font &&
    first.size === second.size &&
    second.right > first.right &&
    first.right - second.left <= kerning * first.size
  );
}

function crossed({ page, runs, lines }: Painted): string[] {
  const own = lines.filter(({ figure }) => figure === null);
  return upright(runs).flatMap((run) => {
    const box = inkOf(run);
    const through = own.filter((line) => deep(box, thick(line)));
    return through.map((line) => `page ${page}: a line at ${place(line)} goes through ${words(run)}`);
  });
}

/** No word and no line of the sheet overlaps a figure, and no figure another. */
function coveredByFigures({ page, runs, lines, fields }: Painted): string[] {
  const inks = [...upright(runs).map((run) => ({ ...inkOf(run), figure: run.figure })), ...fields];
  const figures = [...new Set(inks.flatMap(({ figure }) => (figure === null ? [] : [figure])))].map((figure) => ({
    figure,
    box: around(inks.filter((ink) => ink.figure === figure)),
  }));
  return figures.flatMap(({ figure, box }) => [
    ...upright(runs)
      .filter((run) => run.figure === null && deep(box, inkOf(run)))
      .map((run) => `page ${page}: a figure at ${place(box)} is on ${words(run)}`),
    ...lines
      .filter((line) => line.figure === null && deep(box, thick(line)))
      .map((line) => `page ${page}: a figure at ${place(box)} is on a line at ${place(line)}`),
    ...figures
      .filter((other) => other.figure > figure && deep(box, other.box))
      .map((other) => `page ${page}: figures at ${place(box)} and ${place(other.box)} overlap`),
  ]);
}

function around(boxes: readonly Box[]): Box {
  return {
    left: Math.min(...boxes.map(({ left }) => left)),
    top: Math.min(...boxes.map(({ top }) => top)),
    right: Math.max(...boxes.map(({ right }) => right)),
    bottom: Math.max(...boxes.map(({ bottom }) => bottom)),
  };
}

/** A thin line as a box that is deep enough to be hit: it must go through ink, not along its edge. */
function thick({ left, top, right, bottom }: Line): Box {
  const [wide, high] = [right - left, bottom - top];
  return wide > high
    ? {
        left,
        right,
        top: Math.min(top, (top + bottom) / 2 - touching),
        bottom: Math.max(bottom, (top + bottom) / 2 + touching),
      }
    : {
        top,
        bottom,
        left: Math.min(left, (left + right) / 2 - touching),
        right: Math.max(right, (left + right) / 2 + touching),
      };
}

function deep(a: Box, b: Box): boolean {
  return (
    Math.min(a.right, b.right) - Math.max(a.left, b.left) > touching &&
    Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top) > touching
  );
}

/** The watermark lies behind all. */
export function upright(runs: readonly Run[]): Run[] {
  return runs.filter((run) => run.upright);
}

const words = ({ text, left, baseline }: Run) =>
  `“${text.length > 60 ? `${text.slice(0, 60)}…` : text}” (${left.toFixed(0)}, ${baseline.toFixed(0)})`;
const place = ({ left, top, right, bottom }: Box) =>
  `(${left.toFixed(0)}, ${top.toFixed(0)}) to (${right.toFixed(0)}, ${bottom.toFixed(0)})`;
