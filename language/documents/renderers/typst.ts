import { html, type Markup } from '../../i18n/markup.ts';
import { breakable, printable } from '../../i18n/printable.ts';
import type { Sheet } from '../model.ts';
import { template } from './typst-template.ts';

/**
 * Sheets as Typst source, one document with the pages of each counted from one. All words travel as JSON inside one
 * string literal, which Typst reads as data: no text of an author's can become markup or code.
 * @param title of the document, as a reader program shows it
 */
export function renderTypst(sheets: readonly Sheet[], title: string): string {
  const words = JSON.stringify(sheets, (key, value: unknown) =>
    typeof value === 'string' && key !== 'svg' && key !== 'href' ? breakable(printable(value)) : value,
  );
  return `${data('sheets', words)}${data('title', JSON.stringify(printable(title)))}${data('codes', JSON.stringify(sheets.map((sheet) => String(qrSvg(sheet)))))}${template}`;
}

function data(name: string, json: string): string {
  return `#let ${name} = json(bytes("${literal(json)}"))\n`;
}

/** JSON has no control characters left; in a Typst string only these two mean something. */
function literal(text: string): string {
  return text.replaceAll('\\', '\\\\').replaceAll('"', '\\"');
}

/** The QR code as a vector picture. */
export function qrSvg({ header: { qr } }: Sheet): Markup {
  return html`<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${qr.size} ${qr.size}" shape-rendering="crispEdges"><path d="${qr.path}"/></svg>`;
}
