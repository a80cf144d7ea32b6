import type { Language } from '../../i18n/index.ts';
import { html, type Markup } from '../../i18n/markup.ts';
import { breakable, printable } from '../../i18n/printable.ts';
import type { QrCode, Sheet } from '../model.ts';
import { phrasePattern } from '../own-language.ts';
import { template } from './typst-template.ts';

/**
 * A document for the typesetter. The source is the same for all documents of its kind; all words are in the data, as JSON, which
 * Typst reads as values: no text of an author's can become markup or code.
 */
export interface TypstDocument {
  readonly source: string;
  readonly data: string;
}

/** The file that the source reads as its data. */
export const dataFile = '/data.json';
/** The file with the sizes of type that `fitting.ts` has chosen. */
export const sizesFile = '/sizes.json';

/**
 * Sheets as one document, with the pages of each counted from one.
 * @param title of the document, as a reader program shows it
 */
export function renderTypst(sheets: readonly Sheet[], title: string): TypstDocument {
  const printed = sheets.map(({ own, ...sheet }) => ({
    ...sheet,
    code: String(qrSvg(sheet.header.qr)),
    own:
      own === null
        ? null
        : { language: own.language, pattern: phrasePattern(own, { edge: '\\b', written: printable }) },
  }));
  return { source, data: typesetJson({ documentTitle: printable(title), sheets: printed }, sheets[0]!.language) };
}

const source = `${template}
#let data = json("${dataFile}")
#print-sheets(data.sheets, data.documentTitle, json("${sizesFile}"))
`;

/** What is no text to be read, or is compared with one. */
const asItIs: ReadonlySet<string> = new Set(['documentTitle', 'svg', 'href', 'pattern', 'code']);

/** A text as the typesetter takes it. Of Spanish it would say a hyphen again on the next line, where a name is then wrong. */
function typeset(text: string, language: Language): string {
  const words = breakable(printable(text));
  return language === 'es' ? words.replace(/(?<=[\p{L}\p{N}])-(?=\p{Ll})/gu, '-\u2060') : words;
}

/** What the source reads, its texts as the typesetter takes them. */
export function typesetJson(data: unknown, language: Language): string {
  return JSON.stringify(data, (key, value: unknown) =>
    typeof value === 'string' && !asItIs.has(key) ? typeset(value, language) : value,
  );
}

/** The QR code as a vector picture. */
export function qrSvg(qr: QrCode): Markup {
  return html`<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${qr.size} ${qr.size}" shape-rendering="crispEdges"><path d="${qr.path}"/></svg>`;
}
