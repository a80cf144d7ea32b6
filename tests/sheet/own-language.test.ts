/** An author's words are spoken in their own language, the fixed words in that of the sheet. */
import { expect, it } from 'vitest';
import { checkFiles } from '../../language/db/workspace.ts';
import { renderHtml } from '../../language/documents/renderers/html.ts';
import { buildSheet } from '../../language/documents/traveler/index.ts';
import type { Language } from '../../language/i18n/index.ts';
import { fullMessage } from '../../language/model/diagnostic.ts';
import { pdfOf } from '../../server/host/print/pdf.ts';

const text = (head: string) => `shop taller "Taller" {
  station mesa "Mesa de montaje" clean
}
family porta "Portainyector" {
  part cuerpo "Cuerpo"
  part tuerca "Tuerca de tobera" on cuerpo
}
procedure armar "Armar" for porta at taller${head} {
  stage montar "Montaje" at mesa {
    fit tuerca "sin golpes, \u00e1rbol & eje limpios"
  }
}
`;
const sheetOf = (head: string, language: Language) => {
  const [found] = checkFiles([{ uri: 'a.rebuild', text: text(head) }]).procedures;
  return buildSheet(found!.procedure, {
    job: null,
    number: null,
    paper: 'a4',
    draft: false,
    diagnostics: [],
    hash: 'ab'.repeat(32),
    language,
  });
};

it('in HTML', () => {
  const html = renderHtml(sheetOf(' language es', 'en'));
  expect(html).toContain('<html lang="en">');
  expect(html).toContain(
    'Fit the <span lang="es">tuerca de tobera</span>: <span lang="es">sin golpes, árbol &amp; eje limpios</span>',
  );
  expect(html).not.toMatch(/lang="es"[^<]*Fit/u);
});

it('in PDF', () => {
  const bytes = pdfOf([sheetOf(' language es', 'de')]).bytes.toString('latin1');
  expect(bytes).toMatch(/\/Lang ?\(de/u);
  expect(bytes).toMatch(/\/Lang ?\(es/u);
});

it('nothing is tagged where both are the same, or the author does not say', () => {
  expect(sheetOf(' language es', 'es').own).toBeNull();
  expect(sheetOf('', 'de').own).toBeNull();
  expect(renderHtml(sheetOf('', 'de'))).not.toContain('<span lang=');
});

it('a code that no language has is reported', () => {
  const { diagnostics } = checkFiles([{ uri: 'a.rebuild', text: text(' language qqx') }]);
  expect(diagnostics.filter(({ rule }) => rule === 'unknown-word').map(fullMessage)).toEqual([
    'No language has the code qqx, so a reader program cannot speak these words right. Write the code of ISO 639: en, es, de, pt, fr.',
  ]);
});
