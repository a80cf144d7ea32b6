import { buildOrder } from '../../analysis/build-order.ts';
import { analyzeFlow, type FlowAnalysis } from '../../analysis/flow-analysis.ts';
import { Relations } from '../../analysis/relations.ts';
import { printable } from '../../i18n/printable.ts';
import type { Procedure } from '../../model/procedure.ts';
import { oncePer } from '../../quantities/memo.ts';
import { brokenText } from './broken-text.ts';
import { type Box, type Drawing, type Label, lineHeight, type Mark, midline, weights } from './drawing.ts';
import { Facts } from './facts.ts';
import { type DrawingWords, englishWords } from './labels.ts';
import { corners, hatch, outline, strokes } from './lines.ts';
import { onceEach } from './once-each.ts';
import { type Presence, stripStates } from './strip-states.ts';
import { widthOf } from './text-width.ts';

export interface StripOptions {
  readonly words?: DrawingWords;
  /** Millimeters. */
  readonly width?: number;
  /** The flow analysis of the part numbers that it is for; the first where none is given. */
  readonly flow?: FlowAnalysis;
}

/** Which parts are off the unit at the end of each stage: a row for each stage, a column for each part in build order. */
export interface Strip extends Drawing {
  readonly rows: readonly {
    /** Names of the stages at whose end all is so; empty: as received. */
    readonly stages: readonly string[];
    /** Of its stage, or of the first and the last of several that leave all as it is. */
    readonly title: string;
    readonly cells: readonly { readonly part: string; readonly presence: Presence }[];
  }[];
}

/** Side of a cell, least and most advance of a column, longest title of a part: millimeters. */
const cellSize = 4.4;
const pitches = { least: 5.2, most: 6.4 } as const;
const longestTitle = 52;
const gaps = { row: 1.9, head: 1.8, label: 2.4, band: 7, legend: 4 } as const;
const edge = 1;

/** What each stage leaves: kept, as each print of a procedure would have its flow analyzed again. */
const statesOf = oncePer((procedure: Procedure) => {
  const [flow] = analyzeFlow(procedure);
  return flow === undefined ? [] : stripStates(flow, onceEach(procedure.family));
});

/** The strip in one picture, however high it is. */
export function buildStrip(procedure: Procedure, options: StripOptions = {}): Strip {
  return stripsOf(procedure, options)[0]!;
}

/**
 * The strip in as few pictures as it takes, none higher than so many millimeters: the parts are spread over them, and the
 * stages too where they alone fill more than one.
 */
export function stripsOf(procedure: Procedure, options: StripOptions & { readonly maxHeight?: number } = {}): Strip[] {
  const { words = englishWords, width = 186, maxHeight = Number.POSITIVE_INFINITY } = options;
  const drawn = onceEach(procedure.family);
  const facts = new Facts(drawn, Relations.of(drawn.family), words);
  const states = options.flow === undefined ? statesOf(procedure) : stripStates(options.flow, drawn);
  const parts = buildOrder(facts.relations).flatMap(({ part, inner }) => [part, ...inner].map(({ name }) => name));
  const rows = merged(
    states.map(({ stage, presences }) => ({
      stages: [stage?.name ?? ''],
      titles: [stage === null ? words.strip.received : stageTitle(stage)],
      cells: parts.map((part) => ({ part, presence: presences.get(part) ?? ('off' as const) })),
    })),
  ).map(({ titles, ...row }) => ({
    ...row,
    title: titles.length < 2 ? titles[0]! : words.strip.span(titles[0]!, titles.at(-1)!),
  }));
  const common = (some: Rows) => ({
    title: printable(procedure.title),
    alt: altOf(facts, procedure, some),
    rows: some,
  });
  if (parts.length === 0 || rows.length === 0)
    return [{ ...common(rows), width, height: lineHeight, marks: [], labels: [], shortened: [] }];
  const drawnOf = (at: readonly number[], mine: readonly string[]): Strip => {
    const some = at.map((index) => ({
      ...rows[index]!,
      cells: rows[index]!.cells.filter(({ part }) => mine.includes(part)),
    }));
    return { ...common(some), width, ...drawnStrip(facts, some, mine, width) };
  };
  const indexes = [...rows.keys()];
  let strips: Strip[] = [];
  for (let heights = 1; heights <= rows.length; heights++)
    for (let widths = 1; widths <= parts.length; widths++) {
      strips = evenly(indexes, heights).flatMap((at) => evenly(parts, widths).map((mine) => drawnOf(at, mine)));
      if (strips.every(({ height }) => height <= maxHeight)) return strips;
      // Fewer parts make a picture lower only while they fill more than one band of it.
      if (parts.length / widths <= bandOf(width)) break;
    }
  return strips;
}

/** So many lists of about the same length. */
function evenly<T>(all: readonly T[], count: number): T[][] {
  const each = Math.ceil(all.length / count);
  return Array.from({ length: Math.ceil(all.length / each) }, (_, at) => all.slice(at * each, (at + 1) * each));
}

/** Parts that certainly fit side by side, beside the longest stage titles. */
const bandOf = (width: number) => Math.floor(((width * 2) / 3 - edge) / pitches.least);

function stageTitle({ name, title }: { readonly name: string; readonly title: string }): string {
  return printable(title === name ? name.replace(/[-_]+/gu, ' ') : title);
}

type Rows = Strip['rows'];

interface StageRow extends Omit<Rows[number], 'title'> {
  readonly titles: readonly string[];
}

/** Rows that differ: those that follow each other and are alike are one. */
function merged(rows: readonly StageRow[]): StageRow[] {
  const kept: StageRow[] = [];
  for (const row of rows) {
    const last = kept.at(-1);
    const isSame = last?.cells.every(({ presence }, index) => presence === row.cells[index]!.presence) ?? false;
    if (last !== undefined && isSame)
      kept[kept.length - 1] = {
        ...last,
        stages: [...last.stages, ...row.stages],
        titles: [...last.titles, ...row.titles],
      };
    else kept.push(row);
  }
  return kept;
}

function drawnStrip(
  facts: Facts,
  rows: Rows,
  parts: readonly string[],
  width: number,
): Pick<Drawing, 'height' | 'marks' | 'labels' | 'shortened'> {
  const marks: Mark[] = [];
  const labels: Label[] = [];
  const shortened: string[] = [];
  // Titles of stages take what they need, up to a third of the width.
  const titles = rows.map(({ title }) => {
    const broken = brokenText(title, false, width / 3 - gaps.label, 2);
    if (broken.cut) shortened.push(title);
    return broken.lines;
  });
  const titleWidth = Math.max(...titles.flat().map((line) => widthOf(line, false)));
  const left = titleWidth + gaps.label;
  const perBand = Math.max(1, Math.floor((width - left - edge) / pitches.least));
  const bands = Math.ceil(parts.length / perBand);
  // Bands of about the same length, not one full and one with what was left.
  const inBand = Math.ceil(parts.length / bands);
  const pitch = Math.min(pitches.most, (width - left - edge) / inBand);
  let y = edge;
  for (let band = 0; band < bands; band++) {
    const mine = parts.slice(band * inBand, (band + 1) * inBand);
    const heads = mine.map((part) => {
      const broken = brokenText(facts.heading(part), true, longestTitle, 1);
      if (broken.cut) shortened.push(facts.heading(part));
      return broken.lines[0]!;
    });
    const headHeight = Math.max(...heads.map((text) => widthOf(text, true)));
    const centre = (column: number) => left + (column + 0.5) * pitch;
    heads.forEach((text, column) => {
      const length = widthOf(text, true);
      labels.push({
        role: 'column',
        of: [mine[column]!],
        lines: [{ text, bold: true }],
        box: { x: centre(column) - lineHeight / 2, y: y + headHeight - length, width: lineHeight, height: length },
        align: 'left',
        turned: true,
      });
    });
    y += headHeight + gaps.head;
    const end = left + mine.length * pitch;
    rows.forEach((row, index) => {
      const lines = titles[index]!;
      const height = Math.max(cellSize, lines.length * lineHeight);
      marks.push(rule(0, end, y - gaps.row / 2));
      labels.push({
        role: 'row',
        of: row.stages,
        lines: lines.map((text) => ({ text, bold: false })),
        box: {
          x: 0,
          y: y + (height - lines.length * lineHeight) / 2,
          width: Math.max(...lines.map((line) => widthOf(line, false))),
          height: lines.length * lineHeight,
        },
        align: 'left',
        turned: false,
      });
      mine.forEach((part, column) => {
        const { presence } = row.cells.find((cell) => cell.part === part)!;
        marks.push(...cell(presence, { ...square(centre(column), y + height / 2) }));
      });
      y += height + gaps.row;
    });
    marks.push(rule(0, end, y - gaps.row / 2));
    if (band + 1 < bands) y += gaps.band;
  }
  y += gaps.legend - gaps.row;
  const legend = legendOf(facts.words, rows, y, width);
  return {
    height: legend.bottom + edge,
    marks: [...marks, ...legend.marks],
    labels: [...labels, ...legend.labels],
    shortened: [...new Set(shortened)],
  };
}

const rule = (from: number, to: number, y: number): Mark =>
  strokes(
    'rule',
    [
      [
        { x: from, y },
        { x: to, y },
      ],
    ],
    { weight: weights.hair },
  );

const square = (x: number, y: number): Box => ({
  x: x - cellSize / 2,
  y: y - cellSize / 2,
  width: cellSize,
  height: cellSize,
});

function cell(presence: Presence, box: Box): Mark[] {
  const frame = outline(corners(box), { role: 'cell', weight: weights.thin });
  const [topLeft, topRight, bottomRight, bottomLeft] = corners(box);
  switch (presence) {
    case 'on':
      return [outline(corners(box), { role: 'cell', fill: 'black', weight: weights.thin })];
    case 'off':
      return [frame];
    case 'guard':
      return [frame, hatch(box, 1)];
    case 'discarded':
      return [
        frame,
        strokes('cell', [
          [topLeft!, bottomRight!],
          [topRight!, bottomLeft!],
        ]),
      ];
    case 'some':
      return [frame, outline([topLeft!, bottomRight!, bottomLeft!], { role: 'cell', fill: 'black', weight: 0 })];
  }
}

/** What the cells mean, of those that there are; in lines as wide as the strip. */
function legendOf(words: DrawingWords, rows: Rows, top: number, width: number) {
  const all: readonly Presence[] = ['on', 'off', 'guard', 'discarded', 'some'];
  const used = all.filter((presence) => rows.some(({ cells }) => cells.some((one) => one.presence === presence)));
  const marks: Mark[] = [];
  const labels: Label[] = [];
  let [x, y] = [0, top];
  for (const presence of used) {
    const text = words.strip[presence];
    const length = widthOf(text, false);
    const advance = cellSize + 1.6 + length + 6;
    if (x > 0 && x + advance - 6 > width) [x, y] = [0, y + lineHeight + 1.5];
    marks.push(...cell(presence, square(x + cellSize / 2 + 0.2, y + midline)));
    labels.push({
      role: 'legend',
      of: [presence],
      lines: [{ text, bold: false }],
      box: { x: x + cellSize + 1.6, y, width: length, height: lineHeight },
      align: 'left',
      turned: false,
    });
    x += advance;
  }
  return { marks, labels, bottom: y + lineHeight };
}

/** Stage by stage, what is not on the unit. */
function altOf(facts: Facts, procedure: Procedure, rows: Rows): string {
  const { words } = facts;
  const kinds: readonly Exclude<Presence, 'on'>[] = ['off', 'guard', 'discarded', 'some'];
  const stages = rows.map(({ title, cells }) => {
    const said = kinds.flatMap((presence) => {
      const parts = cells.filter((one) => one.presence === presence).map(({ part }) => part);
      return parts.length === 0 ? [] : [`${words.strip[presence]}: ${facts.list(parts)}`];
    });
    return said.length === 0 ? words.alt.allOn(title) : words.alt.stage(title, said.join('; '));
  });
  return [words.alt.strip(printable(procedure.title)), ...stages].join(' ');
}
