/** Pictures of figures over time, as SVG: points with their errors, lines, stacked bars. */
import { html, type Markup } from '../../../language/i18n/markup.ts';

export interface Plot {
  readonly title: string;
  /** What the figures are in, beside the axis. */
  readonly unit: string;
  /** `line`: points of a series are joined; `stack`: those of one day are stacked. */
  readonly form: 'points' | 'line' | 'stack';
  readonly series: readonly Series[];
  /** Where the axis ends at least. */
  readonly from?: number;
  readonly to?: number;
}

interface Series {
  readonly name: string;
  readonly points: readonly PlotPoint[];
}

export interface PlotPoint {
  /** ISO date, or a month of one. */
  readonly on: string;
  readonly value: number;
  /** Half the length of the bar through it. */
  readonly error?: number;
}

const width = 720;
const height = 250;
const edge = { left: 56, right: 40, top: 28, bottom: 34 };
const signs = 7;

/** The palette of Wong (Nature Methods 8, 2011, page 441; from memory): people who do not see all colors can distinguish them. */
const colors = ['#0072b2', '#d55e00', '#009e73', '#cc79a7', '#e69f00', '#56b4e9', '#000000'];

/** Null: there is nothing to draw. */
export function drawPlot({ title, unit, form, series, from, to }: Plot): Markup | null {
  const shown = series.filter(({ points }) => points.length > 0);
  const days = [...new Set(shown.flatMap(({ points }) => points.map(({ on }) => on)))].sort();
  const [first, last] = [days[0], days.at(-1)];
  if (first === undefined || last === undefined) return null;
  const ends = valuesOf(shown, form);
  const scale = axis(
    Math.min(...ends, from ?? Number.POSITIVE_INFINITY),
    Math.max(...ends, to ?? Number.NEGATIVE_INFINITY),
  );
  const inner = { width: width - edge.left - edge.right, height: height - edge.top - edge.bottom };
  const y = (value: number) => round(edge.top + inner.height * (1 - (value - scale.low) / (scale.high - scale.low)));
  const [start, end] = [timeOf(first), timeOf(last)];
  const bar = Math.min(28, inner.width / Math.max(1, days.length) / 1.6);
  const x = (on: string) =>
    round(
      start === end
        ? edge.left + inner.width / 2
        : edge.left + bar / 2 + ((inner.width - bar) * (timeOf(on) - start)) / (end - start),
    );
  const every = Math.ceil(days.length / signs);
  const labeled = days.filter((_, index) => index % every === 0);
  return html`<figure><figcaption>${title}</figcaption>
<svg viewBox="0 0 ${width} ${height}" role="img" aria-label="${title}">
${scale.ticks.map(
  (tick) => html`<line class="grid" x1="${edge.left}" x2="${width - edge.right}" y1="${y(tick)}" y2="${y(tick)}"></line>
<text x="${edge.left - 6}" y="${y(tick) + 4}" text-anchor="end">${scale.text(tick)}</text>
`,
)}
<text x="4" y="14">${unit}</text>
${labeled.map((on) => html`<text x="${x(on)}" y="${height - 14}" text-anchor="middle">${on}</text>\n`)}
${form === 'stack' ? stacked(shown, { days, x, y, bar }) : shown.map((one, index) => drawn(one, index, { form, x, y }))}
</svg>
${shown.length > 1 ? html`<p class="key">${shown.map(({ name }, index) => html`<span><svg width="12" height="12" aria-hidden="true">${mark(6, 6, index)}</svg> ${name}</span> `)}</p>` : ''}</figure>
`;
}

function valuesOf(series: readonly Series[], form: Plot['form']): number[] {
  const points = series.flatMap((one) => one.points);
  if (form !== 'stack') return points.flatMap(({ value, error = 0 }) => [value - error, value + error]);
  const sums = new Map<string, number>();
  for (const { on, value } of points) sums.set(on, (sums.get(on) ?? 0) + value);
  return [0, ...sums.values()];
}

interface Placing {
  readonly x: (on: string) => number;
  readonly y: (value: number) => number;
}

function drawn({ name, points }: Series, index: number, { form, x, y }: Placing & { readonly form: Plot['form'] }) {
  const sorted = [...points].sort((one, other) => (one.on < other.on ? -1 : 1));
  const color = colors[index % colors.length]!;
  const line = sorted.map(({ on, value }) => `${x(on)},${y(value)}`).join(' ');
  return html`${form === 'line' && sorted.length > 1 ? html`<polyline points="${line}" fill="none" stroke="${color}" stroke-width="1.5"></polyline>\n` : ''}${sorted.map(
    ({ on, value, error }) =>
      html`<g><title>${`${name}, ${on}: ${value}${error === undefined ? '' : ` ±${error}`}`}</title>${
        error === undefined
          ? ''
          : html`<line x1="${x(on)}" x2="${x(on)}" y1="${y(value - error)}" y2="${y(value + error)}" stroke="${color}"></line>`
      }${mark(x(on), y(value), index)}</g>\n`,
  )}`;
}

/** Each series has a shape of its own as well as a color. */
function mark(x: number, y: number, index: number): Markup {
  const color = colors[index % colors.length]!;
  switch (index % 3) {
    case 0:
      return html`<circle cx="${x}" cy="${y}" r="3.5" fill="${color}"></circle>`;
    case 1:
      return html`<rect x="${x - 3.5}" y="${y - 3.5}" width="7" height="7" fill="${color}"></rect>`;
    default:
      return html`<path d="M${x} ${y - 4.5} l4.5 8 h-9 z" fill="${color}"></path>`;
  }
}

function stacked(
  series: readonly Series[],
  { days, x, y, bar }: Placing & { readonly days: readonly string[]; readonly bar: number },
): Markup[] {
  return days.map((on) => {
    let below = 0;
    return html`${series.map(({ name, points }, index) => {
      const value = points.find((one) => one.on === on)?.value ?? 0;
      if (value === 0) return '';
      const [top, foot] = [y(below + value), y(below)];
      below += value;
      return html`<rect x="${round(x(on) - bar / 2)}" y="${top}" width="${round(bar)}" height="${round(foot - top)}" fill="${colors[index % colors.length]!}"><title>${`${name}, ${on}: ${value}`}</title></rect>\n`;
    })}`;
  });
}

interface Axis {
  readonly low: number;
  readonly high: number;
  readonly ticks: readonly number[];
  readonly text: (value: number) => string;
}

/** Ends and marks at round figures: steps of 1, 2 or 5 times a power of ten, four to eight of them. */
function axis(least: number, most: number): Axis {
  const span = most > least ? most - least : Math.abs(most) || 1;
  const power = 10 ** Math.floor(Math.log10(span / 4));
  const step = power * ([1, 2, 5, 10].find((one) => span / (one * power) <= 7) ?? 10);
  const [from, to] = [Math.floor(least / step), Math.ceil(most / step)];
  const upTo = to > from ? to : from + 1;
  const digits = Math.max(0, -Math.floor(Math.log10(step)));
  return {
    low: from * step,
    high: upTo * step,
    ticks: Array.from({ length: upTo - from + 1 }, (_, index) => (from + index) * step),
    text: (value) => value.toFixed(digits),
  };
}

function timeOf(on: string): number {
  return Date.parse(on.length === 7 ? `${on}-01` : on);
}

function round(value: number): number {
  return Math.round(value * 10) / 10;
}
