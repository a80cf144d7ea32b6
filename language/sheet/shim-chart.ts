import type { Repair, Stage, Step } from '../model/procedure.ts';
import { decimalsOf } from '../quantities/decimal.ts';
import type { Words } from '../words/index.ts';
import type { Drawing } from './model.ts';
import type { Setting } from './setting.ts';
import { type ShimTable, type Stair, shimTables } from './shim-lookup.ts';

/** In millimetres, as printed. */
const size = { width: 84, height: 66 };
const plot = { left: 20, right: 3, top: 8, bottom: 12 };
/** Text of 10 pt, and lines that live through a bad copy. */
const letters = 3.6;
const thin = 0.18;
const thick = 0.8;

/** The shim tables as stairs: along the reading, up to the line, across to the change. One for each table. */
export function shimCharts(setting: Setting, step: Step, place: Stage | Repair): Drawing[] {
  if (step.choose === null) return [];
  return shimTables(setting, step, place).map((table) => chart(setting.words, table));
}

function chart(words: Words, { whose, table, stairs }: ShimTable): Drawing {
  const lows = Math.min(...stairs.map(({ low }) => low));
  const highs = Math.max(...stairs.map(({ high }) => high)) + 1;
  const least = Math.min(...stairs.map(({ change }) => change));
  const most = Math.max(...stairs.map(({ change }) => change));
  const across = size.width - plot.left - plot.right;
  const up = size.height - plot.top - plot.bottom;
  const x = (reading: number) => plot.left + ((reading - lows) / (highs - lows)) * across;
  const y = (change: number) => plot.top + ((most - change) / (most - least)) * up;
  const foot = size.height - plot.bottom;
  const decimals = Math.max(...table.pairs.map(({ to }) => decimalsOf(to.replace(/^[+−]/u, '').replace(',', '.'))));
  const named = (change: number) => table.pairs.find(({ to }) => figureOf(to) === Number(change.toFixed(decimals)))?.to;
  const parts = [
    whose === ''
      ? ''
      : `<text x="${fixed(plot.left + across / 2)}" y="5" text-anchor="middle" font-weight="700">${escaped(whose)}</text>`,
    ...levels(stairs, up).map(({ change }) => line(plot.left, y(change), size.width - plot.right, y(change), thin)),
    ...ticks(lows, highs).map((reading) => line(x(reading), plot.top, x(reading), foot, thin)),
    `<path d="${stairPath(stairs, x, y)}" fill="none" stroke="#000" stroke-width="${thick}"/>`,
    ...levels(stairs, up).map(({ change }) =>
      text(plot.left - 1.5, y(change) + letters / 3, 'end', named(change) ?? words.number(change.toFixed(decimals))),
    ),
    ...ticks(lows, highs).map((reading) =>
      text(x(reading), foot + letters + 0.8, 'middle', words.number(String(reading))),
    ),
    text(plot.left + across / 2, size.height - 1.2, 'middle', table.from),
    `<g transform="rotate(-90 ${letters} ${plot.top + up / 2})">${text(letters, plot.top + up / 2, 'middle', table.to)}</g>`,
  ];
  return {
    svg: `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${size.width} ${size.height}" font-family="Atkinson Hyperlegible Next" font-size="${letters}" fill="#000">${parts.join('')}</svg>`,
    // The table above says the same, figure by figure.
    alt: `${table.title}: ${table.pairs.map(({ from, to }) => `${table.from} ${from}, ${table.to} ${to}`).join('; ')}`,
    ...size,
  };
}

function figureOf(text: string): number {
  return Number(text.replace('−', '-').replace(',', '.'));
}

/** From the highest change down, reading by reading. */
function stairPath(stairs: readonly Stair[], x: (reading: number) => number, y: (change: number) => number): string {
  const sorted = [...stairs].sort((a, b) => a.low - b.low);
  return sorted
    .map(({ low, high, change }, index) => {
      const next = sorted[index + 1];
      const end = next === undefined ? high + 1 : next.low;
      return `${index === 0 ? 'M' : 'L'}${fixed(x(low))} ${fixed(y(change))}L${fixed(x(end))} ${fixed(y(change))}`;
    })
    .join('');
}

/** The changes that have room for their figure: every one, every second, or every fifth. */
function levels(stairs: readonly Stair[], room: number): Stair[] {
  const sorted = [...stairs].sort((a, b) => a.change - b.change);
  const each = [1, 2, 5, 10, 20, 50].find((step) => (sorted.length / step) * letters * 1.3 <= room) ?? 100;
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

function line(x1: number, y1: number, x2: number, y2: number, width: number): string {
  return `<line x1="${fixed(x1)}" y1="${fixed(y1)}" x2="${fixed(x2)}" y2="${fixed(y2)}" stroke="#000" stroke-width="${width}"/>`;
}

function text(x: number, y: number, anchor: 'end' | 'middle', words: string): string {
  return `<text x="${fixed(x)}" y="${fixed(y)}" text-anchor="${anchor}">${escaped(words)}</text>`;
}

function escaped(words: string): string {
  return words.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');
}

function fixed(value: number): string {
  return String(Number(value.toFixed(2)));
}
