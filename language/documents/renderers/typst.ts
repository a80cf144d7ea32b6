import type { Language } from '../../i18n/index.ts';
import { html, type Markup } from '../../i18n/markup.ts';
import { breakable, printable } from '../../i18n/printable.ts';
import type { QrCode, Sheet } from '../model.ts';
import { phrasePattern } from '../own-language.ts';
import { template } from './typst-template.ts';

/**
 * Sheets as Typst source, one document with the pages of each counted from one. All words travel as JSON inside one
 * string literal, which Typst reads as data: no text of an author's can become markup or code.
 * @param title of the document, as a reader program shows it
 */
export function renderTypst(sheets: readonly Sheet[], title: string): string {
  const printed = sheets.map(({ own, ...sheet }) => ({
    ...sheet,
    own:
      own === null
        ? null
        : { language: own.language, pattern: phrasePattern(own, { edge: '\\b', written: printable }) },
  }));
  const words = JSON.stringify(printed, (key, value: unknown) =>
    typeof value === 'string' && !asItIs.has(key) ? typeset(value, sheets[0]!.language) : value,
  );
  return `${data('sheets', words)}${data('title', JSON.stringify(printable(title)))}${data('codes', JSON.stringify(sheets.map(({ header }) => String(qrSvg(header.qr)))))}${template}`;
}

/** What is no text to be read, or is compared with one. */
const asItIs: ReadonlySet<string> = new Set(['svg', 'href', 'pattern']);

/** A text as the typesetter takes it. Of Spanish it would say a hyphen again on the next line, where a name is then wrong. */
export function typeset(text: string, language: Language): string {
  const words = breakable(printable(text));
  return language === 'es' ? words.replace(/(?<=[\p{L}\p{N}])-(?=\p{Ll})/gu, '-\u2060') : words;
}

export function data(name: string, json: string): string {
  return `#let ${name} = json(bytes("${literal(json)}"))\n`;
}

/** JSON has no control characters left; in a Typst string only these two mean something. */
function literal(text: string): string {
  return text.replaceAll('\\', '\\\\').replaceAll('"', '\\"');
}

/** The QR code as a vector picture. */
export function qrSvg(qr: QrCode): Markup {
  return html`<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${qr.size} ${qr.size}" shape-rendering="crispEdges"><path d="${qr.path}"/></svg>`;
}
