import { html, joined } from '../../i18n/markup.ts';
import { printable } from '../../i18n/printable.ts';
import { brokenText } from '../drawing/broken-text.ts';
import { millimetresPerPoint, textSize } from '../drawing/drawing.ts';
import type { Label, LabelSheet } from '../labels/index.ts';
import { type HtmlOptions, pageOf } from './html.ts';
import { fontFaces } from './html-style.ts';
import { qrSvg } from './typst.ts';

/** Millimeters, points, and parts of the size of type: those of the PDF. */
const margin = 2;
const gap = 1.5;
const sizes = { least: 5.5, most: 13.75, step: 0.25 } as const;
const leading = 1.1;
const large = 1.7;
const below = { large: 0.25, paragraph: 0.1 } as const;

/** Labels as one page for a browser, each as large as the label paper; null: they are too small for their words. */
export function renderLabelsHtml(sheet: LabelSheet, options: HtmlOptions = {}): string | null {
  const { width, height } = sheet.size;
  const code = Math.min(height - 2 * margin, 0.36 * (width - 2 * margin));
  const room = { width: width - 2 * margin - code - gap, height: height - 2 * margin };
  const labels: { readonly label: Label; readonly size: number }[] = [];
  for (const label of sheet.labels) {
    const size = sizeOf(label, room);
    if (size === null) return null;
    labels.push({ label, size });
  }
  const style = `${fontFaces(options.fonts ?? [])}
@page{size:${width}mm ${height}mm;margin:0}
*{box-sizing:border-box}
html{background:#fff;color:#000;color-scheme:light}
body{margin:0;font-family:"Atkinson Hyperlegible Next",sans-serif;overflow-wrap:anywhere}
.label{display:grid;grid-template-columns:minmax(0,1fr) ${code}mm;column-gap:${gap}mm;width:${width}mm;height:${height}mm;padding:${margin}mm;line-height:${leading}}
.label+.label{break-before:page}
h1,p{margin:0}
h1{font-size:${large}em;line-height:${leading};margin-bottom:${below.large / large}em}
p{margin-bottom:${below.paragraph}em}
svg{display:block}
@media screen{.label{margin:4mm;outline:.5pt solid}}
`;
  const body = joined(
    labels.map(
      ({ label, size }) => html`<section class="label"><div style="font-size:${size}pt"><h1>${label.large}</h1>
<p><b>${label.title}</b></p>
${joined(
  label.facts.map(({ label: name, text }) => html`<p>${name} <b>${text}</b></p>`),
  '\n',
)}</div>
<div role="img" aria-label="${label.qr.alt}">${qrSvg(label.qr)}</div></section>`,
    ),
    '\n',
  );
  return pageOf({ language: sheet.language, title: sheet.title, style, body: html`<main>${body}</main>` }, options);
}

/** Points: the largest type in which all words have room. No script measures them in the browser, so they are measured here. */
function sizeOf(label: Label, room: { readonly width: number; readonly height: number }): number | null {
  for (let size = sizes.most; size >= sizes.least; size -= sizes.step)
    if (heightOf(label, room.width, size) <= room.height) return size;
  return null;
}

/** Millimeters. Words are taken as bold, which is wider: no line is ever longer than it was reckoned. */
function heightOf({ large: head, title, facts }: Label, width: number, size: number): number {
  // Widths are those of the type of a drawing.
  const lines = (text: string, of: number) =>
    brokenText(printable(text), true, (width * textSize) / of, Number.POSITIVE_INFINITY).lines.length;
  const paragraphs = [title, ...facts.map(({ label: name, text }) => `${name} ${text}`)];
  const ems =
    lines(head, large * size) * large * leading +
    below.large +
    paragraphs.reduce((sum, text) => sum + lines(text, size) * leading + below.paragraph, 0);
  return ems * size * millimetresPerPoint;
}
