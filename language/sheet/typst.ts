import type { Sheet } from './model.ts';
import { breakable, printable } from './printable.ts';
import { template } from './typst-template.ts';

/**
 * The sheet as Typst source. All words travel as JSON inside one string literal, which Typst reads as data: no text of
 * an author's can become markup or code.
 */
export function typstOf(sheet: Sheet): string {
  const words = JSON.stringify(sheet, (key, value: unknown) =>
    typeof value === 'string' && key !== 'svg' && key !== 'href' ? breakable(printable(value)) : value,
  );
  const code = JSON.stringify(qrSvg(sheet));
  return `#let sheet = json(bytes("${literal(words)}"))\n#let code = json(bytes("${literal(code)}"))\n${template}`;
}

/** JSON has no control characters left; in a Typst string only these two mean something. */
function literal(text: string): string {
  return text.replaceAll('\\', '\\\\').replaceAll('"', '\\"');
}

/** The QR code as a vector picture. */
export function qrSvg({ header: { qr } }: Sheet): string {
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${qr.size} ${qr.size}" shape-rendering="crispEdges"><path d="${qr.path}"/></svg>`;
}
