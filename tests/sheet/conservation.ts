/** All that a print is held to, put together: for a sheet, what its HTML and its PDF have lost. */

import type { Sheet } from '../../language/documents/model.ts';
import { renderHtml } from '../../language/documents/renderers/html.ts';
import { headTexts, renderText } from '../../language/documents/texts.ts';
import { pdfOf } from '../../server/host/print/pdf.ts';
import { claimsOf } from './claims.ts';
import { lost } from './conserved.ts';
import { drawnTexts, htmlWords } from './html.ts';
import { pdfWords } from './pdf.ts';
import type { Print } from './prints.ts';
import { bones, firstLost, lowBones, type Words } from './words.ts';

/** What a print with these words has lost of the procedure, and of its own sheet. */
export function lostOf(
  { procedure, options, sheet }: Pick<Print, 'procedure' | 'options' | 'sheet'>,
  words: Words,
): string[] {
  const body = renderText(sheet).slice(headTexts(sheet).length);
  const gone = firstLost(body, bones(words.body.map(({ text }) => text).join('')));
  return [
    ...lost(claimsOf(procedure, options), words),
    ...(gone === null ? [] : [`the sheet's “${gone}” is not there, or out of order`]),
    ...lostDrawings(sheet, words),
  ];
}

/** Each drawing appears once, in its order, with everything that is written in it. */
function lostDrawings({ blocks }: Sheet, { drawings }: Words): string[] {
  const own = blocks.flatMap((block) => (block.kind === 'drawing' ? [block] : []));
  if (own.length !== drawings.length) return [`the sheet's ${own.length} drawings are ${drawings.length}`];
  return own.flatMap(({ svg }, at) => {
    const printed = lowBones(drawings[at]!);
    return drawnTexts(svg)
      .filter((text) => !printed.includes(lowBones(text)))
      .map((text) => `the sheet's “${text}” is not in drawing ${at + 1}`);
  });
}

/** The words of the HTML of a sheet; its head appears once. */
export function wordsInHtml(sheet: Sheet): Words {
  const words = htmlWords(renderHtml(sheet));
  return { ...words, furniture: [words.furniture.join(' ')] };
}

/** The words of the PDF of a sheet. */
export function wordsInPdf(sheet: Sheet): Promise<Words> {
  return pdfWords(pdfOf([sheet]).bytes);
}
