import { brokenText } from './broken-text.ts';
import { type Column, type Item, type Measures, type PlacedName, stepWidth } from './column.ts';
import { type Drawing, type Label, lineHeight, type Mark, midline, type Point, weights } from './drawing.ts';
import type { DrawingWords } from './labels.ts';
import { outline, strokes } from './lines.ts';
import { dot } from './shapes/pen.ts';
import type { Side } from './sides.ts';
import { spread } from './spread.ts';
import { widthOf } from './text-width.ts';
import { lanesOf, type Span, type Tie } from './ties.ts';

/** Millimeters kept for leaders at both sides of the shapes, and for each lane of tie lines. */
export const reserve = { left: 10, right: 5.5, tie: 2.4, lane: 5.6 } as const;
const edge = 1;
/** Over a column whose stack goes on in the next, and under the last shape of each. */
const onward = 2 * lineHeight + 4;
const under = 2.2;
/** Most that a page is higher than its columns. */
export const headRoom = onward + 2 * edge + under + 2 * lineHeight;
const mostNoteLines = 2;
const sideGap = 1;

/** Columns that are to be on one page, with what is drawn over them. */
export interface JoinedFamily {
  readonly columns: readonly Column[];
  readonly items: readonly (readonly Item[])[];
  readonly measures: readonly Measures[];
  /** Left edge of each column. */
  readonly offsets: readonly number[];
  /** The words at the head of the first column where its stack goes on in the second; null: it does not. */
  readonly goesOn: string | null;
  readonly ties: readonly Tie[];
  readonly words: DrawingWords;
  /** Said under all of it. */
  readonly notes: readonly string[];
  readonly width: number;
}

type Made = Pick<Drawing, 'height' | 'marks' | 'labels' | 'shortened'> & {
  /** Ties for which no lane was free. */
  readonly failed: readonly Tie[];
};

/** Puts columns on one ground line, and adds axes, leaders, side texts, tie lines and notes. */
export function joinFamily(page: JoinedFamily, mostLanes: number): Made {
  const { columns, offsets } = page;
  const head = columns.map((_, index) => (index === 0 && page.goesOn !== null ? onward : 3));
  const word = Math.max(0, ...page.ties.map(({ kind }) => widthOf(page.words[kind], false)));
  const tallest = Math.max(...columns.map((column, index) => column.height + head[index]!));
  const ground = Math.max(tallest + under, word) + 2 * edge;
  const notes = noteLabel(page, ground);
  const marks: Mark[] = [];
  const labels: Label[] = [...notes];
  const failed: Tie[] = [];
  columns.forEach((column, index) => {
    const x = offsets[index]!;
    const measures = page.measures[index]!;
    const y = ground - edge - under - column.height;
    const isOpen = index === 0 && page.goesOn !== null;
    marks.push(...column.marks.map((mark) => moved(mark, x, y)));
    marks.push(...axes(column, page.items[index]!, measures, isOpen).map((mark) => moved(mark, x, y)));
    const names = column.names.map((name) => movedName(name, x, y));
    for (const name of names) {
      labels.push({ role: name.role, of: [name.part], lines: name.lines, box: name.box, align: 'left', turned: false });
      marks.push(...nameLeader(name, x + measures.middle + measures.shapeWidth / 2, measures.stepWidth));
      if (name.step !== null) {
        const made = stepOf(name, name.step, measures.stepWidth);
        marks.push(made.mark);
        labels.push(made.label);
      }
    }
    const sides = sideLabels(column.sides, x, y, measures, ground);
    labels.push(...sides.labels);
    marks.push(...sides.leaders);
    if (isOpen) {
      const lines = page.goesOn === null ? [] : onwardLines(page.goesOn, measures);
      labels.push({
        role: 'onward',
        of: [],
        lines: lines.map((text) => ({ text, bold: false })),
        box: {
          x: x + measures.names,
          y: y - 4 - lines.length * lineHeight,
          width: Math.max(...lines.map((line) => widthOf(line, false))),
          height: lines.length * lineHeight,
        },
        align: 'left',
        turned: false,
      });
    }
    const mine = page.ties.filter(({ parts }) => names.some((name) => name.role === 'part' && name.part === parts[0]));
    const tied = tieLines(mine, names, page.words, ground, mostLanes);
    marks.push(...tied.marks);
    labels.push(...tied.labels);
    failed.push(...tied.failed);
  });
  const shortened = [...new Set(columns.flatMap(({ cut }) => cut))];
  const height = ground + notes.reduce((sum, { box }) => sum + box.height + noteGap, 0);
  return { height, marks, labels, shortened, failed };
}

const noteGap = 1;

/** The notes, as wide as the page. */
function noteLabel({ notes, width }: JoinedFamily, top: number): Label[] {
  const lines = brokenText(notes.join(' '), false, width - 4, mostNoteLines).lines.filter((line) => line !== '');
  if (lines.length === 0) return [];
  return [
    {
      role: 'note',
      of: [],
      lines: lines.map((text) => ({ text, bold: false })),
      box: {
        x: 2,
        y: top + noteGap / 2,
        width: Math.max(...lines.map((line) => widthOf(line, false))),
        height: lines.length * lineHeight,
      },
      align: 'left',
      turned: false,
    },
  ];
}

const onwardLines = (text: string, { namesWidth }: Measures) => brokenText(text, false, namesWidth, 2).lines;

/** Center lines of the stacks of a column; the last one of an open column ends in an arrow. */
function axes(column: Column, items: readonly Item[], measures: Measures, isOpen: boolean): Mark[] {
  const shapeOf = (item: Item) => {
    const part = item.kind === 'foot' ? item.part : item.entry.part.name;
    const placed = item.kind === 'row' ? column.placed.find((one) => one.part === part)?.box : undefined;
    const foot = column.names.find((name) => name.role === 'foot' && name.part === part);
    return placed ?? { x: 0, y: (foot?.anchor.y ?? 0) - 2, width: 0, height: 4 };
  };
  const runs: Point[][] = [];
  let from = 0;
  items.forEach((item, index) => {
    if (item.above === 0 && index + 1 < items.length) return;
    const [first, last] = [shapeOf(items[from]!), shapeOf(item)];
    const isLast = index + 1 === items.length;
    const over = isLast && isOpen ? 7 : 2.2;
    runs.push([
      { x: measures.middle, y: first.y + first.height + (items[from]!.kind === 'foot' ? -1 : 2.2) },
      { x: measures.middle, y: last.y - over },
    ]);
    from = index + 1;
  });
  const line = strokes('axis', runs, { weight: weights.hair, dash: [3.6, 0.9, 0.7, 0.9] });
  if (!isOpen) return [line];
  const tip = runs.at(-1)![1]!;
  const arrow: Point[] = [{ x: tip.x - 1.1, y: tip.y + 2.4 }, tip, { x: tip.x + 1.1, y: tip.y + 2.4 }];
  return [line, { ...strokes('axis', [arrow]), closed: true, fill: 'black', weight: 0 }];
}

function moved(mark: Mark, dx: number, dy: number): Mark {
  return { ...mark, runs: mark.runs.map((run) => run.map(({ x, y }) => ({ x: x + dx, y: y + dy }))) };
}

function movedName(name: PlacedName, dx: number, dy: number): PlacedName {
  return {
    ...name,
    box: { ...name.box, x: name.box.x + dx, y: name.box.y + dy },
    anchor: { x: name.anchor.x + dx, y: name.anchor.y + dy },
  };
}

/** From a shape to its name or its step: straight, or bent once outside all shapes. It ends in a dot on the shape, or an arrow at its edge. */
function nameLeader({ box, anchor, onEdge, step }: PlacedName, shapesEnd: number, steps: number): Mark[] {
  const end = { x: box.x - (step === null ? 1.2 : steps), y: box.y + midline };
  const bend = { x: shapesEnd + 2, y: anchor.y };
  const line = strokes('leader', [Math.abs(end.y - anchor.y) < 0.02 ? [anchor, end] : [anchor, bend, end]]);
  return [line, leaderEnd(anchor, onEdge, 1)];
}

/** `way`: 1 where the leader goes to the right. */
function leaderEnd({ x, y }: Point, onEdge: boolean, way: 1 | -1): Mark {
  const arrow = [
    { x, y },
    { x: x + way * 2, y: y - 0.55 },
    { x: x + way * 2, y: y + 0.55 },
  ];
  return outline(onEdge ? arrow : dot(x, y, 0.6), { role: 'dot', fill: 'black', weight: 0 });
}

/** The number of a step in a frame with round ends, before the name of the part that is fitted at it. */
function stepOf({ box, part }: PlacedName, text: string, room: number): { readonly mark: Mark; readonly label: Label } {
  const width = stepWidth(text);
  const height = lineHeight - 0.3;
  const x = box.x - room;
  const y = box.y + midline - height / 2;
  const radius = height / 2;
  const round = (middle: number, from: number): Point[] =>
    Array.from({ length: 9 }, (_, index) => {
      const angle = ((from + index * 22.5) * Math.PI) / 180;
      return { x: middle + radius * Math.cos(angle), y: y + radius + radius * Math.sin(angle) };
    });
  const length = widthOf(text, false);
  return {
    mark: outline([...round(x + width - radius, -90), ...round(x + radius, 90)], {
      role: 'step',
      weight: weights.thin,
    }),
    label: {
      role: 'step',
      of: [part],
      lines: [{ text, bold: false }],
      box: { x: x + (width - length) / 2, y: box.y, width: length, height: lineHeight },
      align: 'left',
      turned: false,
    },
  };
}

/**
 * Texts at the left, as near to their points as they can be. Points and texts have the same order from the top, and all
 * leaders bend at one upright: none crosses another.
 */
function sideLabels(sides: readonly Side[], dx: number, dy: number, measures: Measures, height: number) {
  const order = sides.map((_, index) => index).sort((a, b) => sides[a]!.anchor.y - sides[b]!.anchor.y || a - b);
  const wishes = order.map((index) => {
    const { lines, anchor } = sides[index]!;
    return { wish: anchor.y + dy - middleOf(lines.length), height: lines.length * lineHeight };
  });
  const tops = spread(wishes, edge, height - edge, sideGap);
  const shapesBegin = dx + measures.middle - measures.shapeWidth / 2;
  const right = shapesBegin - reserve.left;
  const labels: Label[] = [];
  const leaders: Mark[] = [];
  order.forEach((index, place) => {
    const { role, of, lines, anchor, end: ending } = sides[index]!;
    const width = Math.max(...lines.map(({ text, bold }) => widthOf(text, bold)));
    const top = tops[place]!;
    labels.push({
      role,
      of,
      lines,
      box: { x: right - width, y: top, width, height: lines.length * lineHeight },
      align: 'right',
      turned: false,
    });
    const from = { x: anchor.x + dx, y: anchor.y + dy };
    const end = { x: right + 1.2, y: top + middleOf(lines.length) };
    const bend = { x: shapesBegin - 5.6, y: from.y };
    leaders.push(strokes('leader', [Math.abs(end.y - from.y) < 0.02 ? [from, end] : [from, bend, end]]));
    if (ending !== 'line') leaders.push(leaderEnd(from, ending === 'arrow', -1));
  });
  return { labels, leaders };
}

/** Of a block of lines, from its top: where its leader begins. */
const middleOf = (lines: number) => midline + ((lines - 1) * lineHeight) / 2;

/** Tie lines right of the names: a tick to the title of each part, the word along the line. */
function tieLines(
  ties: readonly Tie[],
  names: readonly PlacedName[],
  words: DrawingWords,
  height: number,
  mostLanes: number,
) {
  const marks: Mark[] = [];
  const labels: Label[] = [];
  const failed: Tie[] = [];
  const made = ties.map((tie) => {
    const ends = tie.parts.map((part) => {
      const { box, lines } = names.find((name) => name.role === 'part' && name.part === part)!;
      const first = lines[0]!;
      // A part may be in a pair of each kind: its two ticks are a little apart.
      const y = box.y + midline + (tie.kind === 'matched' ? -0.6 : 0.6);
      return { x: box.x + widthOf(first.text, first.bold) + 1.2, y };
    });
    const ticks = ends.map(({ y }) => y);
    const word = words[tie.kind];
    const length = widthOf(word, false);
    const [low, high] = [Math.min(...ticks), Math.max(...ticks)];
    const centre = Math.min(height - edge - length / 2, Math.max(edge + length / 2, (low + high) / 2));
    const span: Span = {
      ticks,
      from: Math.min(low, centre - length / 2),
      to: Math.max(high, centre + length / 2),
    };
    return { tie, ends, low, high, word, length, centre, span };
  });
  // The lines are clear of all texts that they pass.
  const left = Math.max(
    0,
    ...names
      .filter(({ box }) => made.some(({ span }) => box.y < span.to && span.from < box.y + box.height))
      .map(({ box }) => box.x + box.width + 1.2 + reserve.tie - 0.6),
  );
  const lanes = lanesOf(
    made.map(({ span }) => span),
    mostLanes,
  );
  made.forEach(({ tie, ends, low, high, word, length, centre }, index) => {
    const lane = lanes[index];
    if (lane == null) {
      failed.push(tie);
      return;
    }
    const x = left + lane * reserve.lane;
    marks.push(
      strokes('tie', [
        ...ends.map((end) => [end, { x, y: end.y }]),
        [
          { x, y: low },
          { x, y: high },
        ],
      ]),
    );
    labels.push({
      role: 'tie',
      of: tie.parts,
      lines: [{ text: word, bold: false }],
      box: { x: x + 0.4, y: centre - length / 2, width: lineHeight, height: length },
      align: 'left',
      turned: true,
    });
  });
  return { marks, labels, failed };
}
