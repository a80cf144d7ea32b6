import { printable } from '../../i18n/printable.ts';
import { decimalsOf } from '../../quantities/decimal.ts';
import { type ForNumbers, whoseWords } from '../figures/by-number.ts';
import type { ShimTable } from '../figures/shim-table.ts';
import type { Drawing, Lookup } from '../model.ts';
import type { PrintContext } from '../print-context.ts';
import {
  type Box,
  type Drawing as Drawn,
  type Label,
  lineHeight,
  type Mark,
  midline,
  type Point,
  weights,
} from './drawing.ts';
import { renderSvg } from './index.ts';
import { widthOf } from './text-width.ts';

/** In millimeters, as printed. */
const size = { width: 84, height: 66 };
const plot = { left: 20, right: 3, top: 8, bottom: 12 };

/** A shim table as stairs: along the reading, up to the line, across to the change. Null: there is no stair to draw. */
export function shimChart({ words }: PrintContext, group: ForNumbers<ShimTable>, table: Lookup): Drawing | null {
  const whose = whoseWords(group);
  const mark = Number(group.made.mark.number);
  const all = group.made.stairs.map(
    ({ low, high, change }): Stair => ({
      low: Number(low.number),
      high: Number(high.number),
      change: change === null ? null : Number(change.number),
    }),
  );
  const stairs = all.flatMap(({ low, high, change }) => (change === null ? [] : [{ low, high, change }]));
  if (stairs.length < 2) return null;
  const lows = Math.min(...stairs.map(({ low }) => low));
  const highs = Math.max(...stairs.map(({ high }) => high)) + mark;
  const least = Math.min(...stairs.map(({ change }) => change));
  const most = Math.max(...stairs.map(({ change }) => change));
  const right = size.width - plot.right;
  const foot = size.height - plot.bottom;
  const x = (reading: number) => plot.left + ((reading - lows) / (highs - lows)) * (right - plot.left);
  const y = (change: number) => plot.top + ((most - change) / (most - least)) * (foot - plot.top);
  const decimals = Math.max(...table.pairs.map(({ to }) => decimalsOf(to.replace(/^[+−]/u, '').replace(',', '.'))));
  const named = (change: number) =>
    table.pairs.find(({ to }) => figureOf(to) === Number(change.toFixed(decimals)))?.to ??
    words.number(change.toFixed(decimals));
  const shown = levels(stairs, foot - plot.top);
  const readings = ticks(lows, highs);
  const middle = (plot.left + right) / 2;
  const drawn: Drawn = {
    title: table.title,
    // The table above says the same, figure by figure.
    alt: `${table.title}: ${table.pairs.map(({ from, to }) => `${table.from} ${from}, ${table.to} ${to}`).join('; ')}`,
    ...size,
    marks: [
      rules([
        ...shown.map(({ change }) => [
          { x: plot.left, y: y(change) },
          { x: right, y: y(change) },
        ]),
        ...readings.map((reading) => [
          { x: x(reading), y: plot.top },
          { x: x(reading), y: foot },
        ]),
      ]),
      {
        role: 'outline',
        runs: flights(all).map((flight) => stair(flight, mark, x, y)),
        closed: false,
        fill: 'none',
        weight: weights.thick,
        dash: [],
      },
    ],
    labels: [
      ...(whose === '' ? [] : [centred(whose, middle, 1.5, true)]),
      ...shown.map(({ change }) => endingAt(named(change), plot.left - 1.5, y(change) - midline)),
      ...readings.map((reading) => centred(words.number(String(reading)), x(reading), foot + 0.8)),
      centred(table.from, middle, size.height - lineHeight - 0.4),
      upright(table.to, 1, (plot.top + foot) / 2),
    ],
    shortened: [],
  };
  return { svg: renderSvg(drawn), alt: drawn.alt, ...size };
}

function figureOf(text: string): number {
  return Number(text.replace('−', '-').replace(',', '.'));
}

/** Figures of a stair, in the units of the table. */
interface Stair {
  readonly low: number;
  readonly high: number;
  readonly change: number | null;
}

/** A reading that a change brings into the window. */
type Tread = Stair & { readonly change: number };

/** The stairs from one reading that no change brings in to the next. */
function flights(all: readonly Stair[]): Tread[][] {
  const flights: Tread[][] = [[]];
  for (const { low, high, change } of all) {
    if (change === null) flights.push([]);
    else flights.at(-1)!.push({ low, high, change });
  }
  return flights.filter((flight) => flight.length > 0);
}

/** From the lowest reading to the highest. */
function stair(
  stairs: readonly Tread[],
  mark: number,
  x: (reading: number) => number,
  y: (change: number) => number,
): Point[] {
  const sorted = [...stairs].sort((a, b) => a.low - b.low);
  return sorted.flatMap(({ low, high, change }, index) => [
    { x: x(low), y: y(change) },
    { x: x(sorted[index + 1]?.low ?? high + mark), y: y(change) },
  ]);
}

/** The changes that have room for their figure: every one, every second, or every fifth. */
function levels(stairs: readonly Tread[], room: number): Tread[] {
  const sorted = [...stairs].sort((a, b) => a.change - b.change);
  const each = [1, 2, 5, 10, 20, 50].find((step) => (sorted.length / step) * lineHeight <= room) ?? 100;
  const zero = Math.max(
    0,
    sorted.findIndex(({ change }) => change === 0),
  );
  return sorted.filter((_, index) => (index - zero) % each === 0);
}

/** Round readings along the foot, about six of them. */
function ticks(low: number, high: number): number[] {
  const rough = (high - low) / 6;
  const ten = 10 ** Math.floor(Math.log10(rough));
  const step = [1, 2, 5, 10].map((times) => times * ten).find((one) => one >= rough)!;
  const first = Math.ceil(low / step);
  const last = Math.floor(high / step);
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, index) =>
    Number(((first + index) * step).toPrecision(12)),
  );
}

function rules(runs: readonly (readonly Point[])[]): Mark {
  return { role: 'rule', runs, closed: false, fill: 'none', weight: weights.hair, dash: [] };
}

function label(text: string, box: Box, align: 'left' | 'right', { bold = false, turned = false } = {}): Label {
  return { role: 'legend', of: [], lines: [{ text, bold }], box, align, turned };
}

function centred(words: string, x: number, y: number, bold = false): Label {
  const text = printable(words);
  const width = widthOf(text, bold);
  return label(text, { x: x - width / 2, y, width, height: lineHeight }, 'left', { bold });
}

function endingAt(words: string, x: number, y: number): Label {
  const text = printable(words);
  const width = widthOf(text, false);
  return label(text, { x: x - width, y, width, height: lineHeight }, 'right');
}

/** Read from below upwards. */
function upright(words: string, x: number, y: number): Label {
  const text = printable(words);
  const height = widthOf(text, false);
  return label(text, { x, y: y - height / 2, width: lineHeight, height }, 'left', { turned: true });
}
