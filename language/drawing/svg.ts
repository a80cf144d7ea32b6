import { baseline, type Drawing, type Label, lineHeight, type Mark, millimetresPerPoint, textSize } from './drawing.ts';

/**
 * A drawing as SVG, in millimetres. Attributes only, no style sheet and no foreign elements: typesetters and browsers draw
 * the same. The same drawing gives the same bytes.
 */
export function svgOf(drawing: Drawing): string {
  const { width, height, alt } = drawing;
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${number(width)}mm" height="${number(height)}mm" viewBox="0 0 ${number(width)} ${number(height)}" role="img" aria-label="${escaped(alt)}" fill="none" stroke="#000" stroke-linecap="butt" stroke-linejoin="miter">`,
    ...drawing.marks.map(path),
    `<g fill="#000" stroke="none" font-family="Atkinson Hyperlegible Next, sans-serif" font-size="${number(textSize * millimetresPerPoint)}">`,
    ...drawing.labels.flatMap(texts),
    '</g>',
    '</svg>',
    '',
  ].join('\n');
}

function path({ runs, closed, fill, weight, dash }: Mark): string {
  const d = runs
    .map((run) => `M${run.map(({ x, y }) => `${number(x)} ${number(y)}`).join('L')}${closed ? 'Z' : ''}`)
    .join('');
  const colour = fill === 'none' ? '' : ` fill="${fill === 'white' ? '#fff' : '#000'}"`;
  const line = weight === 0 ? ' stroke="none"' : ` stroke-width="${number(weight * millimetresPerPoint)}"`;
  const dashes = dash.length === 0 ? '' : ` stroke-dasharray="${dash.map(number).join(' ')}"`;
  return `<path d="${d}"${colour}${line}${dashes}/>`;
}

function texts({ lines, box, align, turned }: Label): string[] {
  return lines.map(({ text, bold }, index) => {
    const along = index * lineHeight + baseline;
    // A turned block begins at the foot of its box, its first line leftmost.
    const [x, y] = turned
      ? [box.x + along, box.y + (align === 'left' ? box.height : 0)]
      : [box.x + (align === 'left' ? 0 : box.width), box.y + along];
    const anchor = align === 'right' ? ' text-anchor="end"' : '';
    const turn = turned ? ` transform="rotate(-90 ${number(x)} ${number(y)})"` : '';
    return `<text x="${number(x)}" y="${number(y)}"${bold ? ' font-weight="700"' : ''}${anchor}${turn}>${escaped(text)}</text>`;
  });
}

/** Hundredths of a millimetre; no `-0`. */
function number(value: number): string {
  return String(Math.round(value * 100) / 100 + 0);
}

function escaped(text: string): string {
  return text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;');
}
