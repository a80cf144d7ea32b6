/** All that a print is held to, put together: for a sheet, what its HTML and its PDF have lost. */
import { htmlOf } from '../../language/sheet/html.ts';
import type { Sheet } from '../../language/sheet/model.ts';
import { headTexts, textOf } from '../../language/sheet/text.ts';
import { pdfOf } from '../../server/print/pdf.ts';
import { claimsOf } from './claims.ts';
import { lost } from './conserved.ts';
import { htmlWords } from './html.ts';
import { pdfWords } from './pdf.ts';
import type { Print } from './prints.ts';
import { bones, firstLost, type Words } from './words.ts';

/** What a print with these words has lost of the procedure, and of its own sheet. */
export function lostOf(
  { procedure, options, sheet }: Pick<Print, 'procedure' | 'options' | 'sheet'>,
  words: Words,
): string[] {
  const body = textOf(sheet).slice(headTexts(sheet).length);
  const gone = firstLost(body, bones(words.body.join('')));
  return [
    ...lost(claimsOf(procedure, options), words),
    ...(gone === null ? [] : [`the sheet's “${gone}” is not there, or out of order`]),
  ];
}

/** The words of the HTML of a sheet; its head stands once. */
export function wordsInHtml(sheet: Sheet): Words {
  const { body, furniture } = htmlWords(htmlOf(sheet));
  return { body, furniture: [furniture.join(' ')] };
}

/** The words of the PDF of a sheet. */
export function wordsInPdf(sheet: Sheet): Promise<Words> {
  return pdfWords(pdfOf([sheet]).bytes);
}
