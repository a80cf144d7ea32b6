/** Fonts of a PDF, as pdf.js loads them. */
import type { PDFPageProxy } from 'pdfjs-dist/legacy/build/pdf.mjs';

export interface UsedFont {
  readonly name: string;
  /** False: the reader program would have to find it on its machine. */
  readonly embedded: boolean;
}

/** Each font that these pages use, once. */
export async function fontsOf(pages: readonly PDFPageProxy[]): Promise<UsedFont[]> {
  const fonts = new Map<string, UsedFont>();
  for (const page of pages) {
    const { styles } = await page.getTextContent();
    // Fonts are loaded with the operators of the page.
    await page.getOperatorList();
    for (const id of Object.keys(styles)) {
      const { name, missingFile } = page.commonObjs.get(id) as {
        readonly name: string;
        readonly missingFile?: boolean;
      };
      fonts.set(name, { name, embedded: missingFile !== true });
    }
  }
  return [...fonts.values()];
}
