import { html, joined, type Markup } from '../../i18n/markup.ts';
import { printable } from '../../i18n/printable.ts';
import { baseline, type Drawing, type Label, lineHeight, type Mark, millimetresPerPoint, textSize } from './drawing.ts';
import { advanceOf, fontOf, noSign, widthOf } from './text-width.ts';

export interface SvgOptions {
  /** The family by which the sheet's text font is known where the drawing is put. */
  readonly font?: string;
  /**
   * It is drawn by a browser, which finds a font for any sign by itself. A typesetter has to be given the font of each: for a sign that
   * the named font lacks it would take one of the machine's, and some such signs end it (usvg 0.45: `removal index`).
   */
  readonly inBrowser?: boolean;
}

/**
 * A drawing as SVG, in millimeters. Attributes only, no style sheet and no foreign elements: typesetters and browsers draw
 * the same. The same drawing gives the same bytes.
 */
export function renderSvg(drawing: Drawing, options: SvgOptions = {}): string {
  const { width, height, alt } = drawing;
  const { font = 'Atkinson Hyperlegible Next', inBrowser = false } = options;
  const lines = [
    html`<svg xmlns="http://www.w3.org/2000/svg" width="${number(width)}mm" height="${number(height)}mm" viewBox="0 0 ${number(width)} ${number(height)}" role="img" aria-label="${alt}" fill="none" stroke="#000" stroke-linecap="butt" stroke-linejoin="miter">`,
    ...drawing.marks.map(path),
    html`<g fill="#000" stroke="none" font-family="${font}, sans-serif" font-size="${number(textSize * millimetresPerPoint)}">`,
    ...drawing.labels.flatMap((label) => texts(label, inBrowser)),
    html`</g>`,
    html`</svg>`,
  ];
  return `${joined(lines, '\n')}\n`;
}

function path({ runs, closed, fill, weight, dash }: Mark): Markup {
  const d = runs
    .map((run) => `M${run.map(({ x, y }) => `${number(x)} ${number(y)}`).join('L')}${closed ? 'Z' : ''}`)
    .join('');
  const colour = fill === 'none' ? '' : html` fill="${fill === 'white' ? '#fff' : '#000'}"`;
  const line = weight === 0 ? html` stroke="none"` : html` stroke-width="${number(weight * millimetresPerPoint)}"`;
  const dashes = dash.length === 0 ? '' : html` stroke-dasharray="${dash.map(number).join(' ')}"`;
  return html`<path d="${d}"${colour}${line}${dashes}/>`;
}

function texts({ lines, box, align, turned }: Label, inBrowser: boolean): Markup[] {
  return lines.flatMap(({ text: written, bold }, index) => {
    // As it is drawn, so that it is measured, and given a font, by the characters that it has then.
    const text = printable(written);
    const along = index * lineHeight + baseline;
    // A turned block begins at the foot of its box, its first line leftmost.
    const [x, y] = turned ? [box.x + along, box.y + box.height] : [box.x, box.y + along];
    const turn = turned ? html` transform="rotate(-90 ${number(x)} ${number(y)})"` : '';
    const weight = bold ? html` font-weight="700"` : '';
    const runs = inBrowser ? [{ text, isLent: false }] : fontRuns(text);
    const isRight = align === 'right';
    if (runs.length === 1 && isRight)
      return html`<text x="${number(x + box.width)}" y="${number(y)}"${weight} text-anchor="end"${family(runs[0]!.isLent)}>${runs[0]!.text}</text>`;
    // Each run stands for itself: within one text a typesetter tries all its letters in the font of each part.
    let at = isRight ? x + box.width - widthOf(text, bold) : x;
    return runs.map((run) => {
      const one = html`<text x="${number(at)}" y="${number(y)}"${weight}${turn}${family(run.isLent)}>${run.text}</text>`;
      at += advanceOf(run.text, bold);
      return one;
    });
  });
}

const family = (isLent: boolean) => (isLent ? html` font-family="DejaVu Sans, sans-serif"` : '');

/** A line in runs of one font each; what shows nothing by itself goes where no font has it. */
function fontRuns(text: string): { readonly text: string; readonly isLent: boolean }[] {
  const runs: { text: string; isLent: boolean }[] = [];
  for (const character of text) {
    const font = fontOf(character);
    if (font === null && /\p{Default_Ignorable_Code_Point}|\p{M}/u.test(character)) continue;
    const last = runs.at(-1);
    // A blank does not part what another font has on both sides of it.
    const isLent = character === ' ' && last !== undefined ? last.isLent : font !== 'own';
    const shown = font === null ? noSign : character;
    if (last?.isLent === isLent) last.text += shown;
    else runs.push({ text: shown, isLent });
  }
  return runs.length === 0 ? [{ text: '', isLent: false }] : runs;
}

/** Hundredths of a millimeter; no `-0`. */
function number(value: number): string {
  return String(Math.round(value * 100) / 100 + 0);
}
