import { join } from 'node:path';
import type { Sheet } from '../../../language/documents/model.ts';
import { renderHtml, renderHtmlPages } from '../../../language/documents/renderers/html.ts';
import { type Said, say } from '../../../language/say/say.ts';
import { fileName } from './file-name.ts';
import { htmlFonts } from './fonts.ts';
import { pdfOf } from './pdf.ts';
import { writeWhole } from './write.ts';

export type SheetFormat = 'pdf' | 'html';

export interface PrintOptions {
  readonly formats: readonly SheetFormat[];
  /** Folder that the files go to; made if it is not there. */
  readonly to: string;
  /** Name of the files without ending; characters that a file system may refuse become `-`. */
  readonly name: string;
}

export interface Printed {
  /** Paths of the files written, in the order of `formats`. */
  readonly files: string[];
  /** What the person who prints should know, such as characters that no font has. */
  readonly notes: Said[];
}

/** Prints a sheet into files, all formats made before the first is written. Throws a WriteError naming the file. */
export function printSheet(sheet: Sheet, options: PrintOptions): Printed {
  return printSheets([sheet], sheet.title, options);
}

/** Several sheets as one document. A single one is what it would be alone. */
export function printSheets(sheets: readonly [Sheet, ...Sheet[]], title: string, options: PrintOptions): Printed {
  const notes: Said[] = [];
  const made = [...new Set(options.formats)].map((format) => {
    const file = join(options.to, `${fileName(options.name)}.${format}`);
    const fonts = format === 'html' ? htmlFonts() : [];
    if (format === 'html')
      return {
        file,
        content: sheets.length === 1 ? renderHtml(sheets[0], { fonts }) : renderHtmlPages(sheets, title, { fonts }),
      };
    const pdf = pdfOf(sheets, title);
    if (pdf.missing.length > 0)
      notes.push(
        say`${file}: no font on the sheet has ${pdf.missing.join(' ')}: it prints as an empty box. Write it in other words.`,
      );
    return { file, content: pdf.bytes };
  });
  for (const { file, content } of made) writeWhole(file, content);
  return { files: made.map(({ file }) => file), notes };
}

export { fileName } from './file-name.ts';
export { sheetNames } from './sheet-name.ts';
export { WriteError } from './write.ts';
