import { createRequire } from 'node:module';
import { join } from 'node:path';
import type { NodeCompiler } from '@myriaddreamin/typst-ts-node-compiler';
import type { LabelSheet } from '../../../language/documents/labels/index.ts';
import type { Sheet } from '../../../language/documents/model.ts';
import { type Extent, Fitting } from '../../../language/documents/renderers/fitting.ts';
import { labelTooSmall, renderLabels } from '../../../language/documents/renderers/label-typst.ts';
import { dataFile, renderTypst, sizesFile, type TypstDocument } from '../../../language/documents/renderers/typst.ts';
import { pdfFonts } from './fonts.ts';
import { documentMade } from './native-memory.ts';

/** A PDF and what could not be set as written. */
export interface PdfSheet {
  readonly bytes: Buffer;
  readonly pages: number;
  /** It is tagged by PDF/UA-1. False: tagged, but with a character that no embedded font has. */
  readonly accessible: boolean;
  /** Characters that print as an empty box. */
  readonly missing: readonly string[];
}

let compiler: NodeCompiler | null = null;

/** Folder that the typesetter takes its files from; nothing is read there. */
const root = process.cwd();

/** Loaded on the first print: checking needs no typesetter. */
function typesetter(): NodeCompiler {
  if (compiler === null) {
    const require = createRequire(import.meta.url);
    const typst =
      require('@myriaddreamin/typst-ts-node-compiler') as typeof import('@myriaddreamin/typst-ts-node-compiler');
    compiler = typst.NodeCompiler.create({ workspace: root, fontArgs: [{ fontBlobs: pdfFonts() }] });
  }
  return compiler;
}

/** Results of earlier sheets kept for the next one; more would only fill memory in an editor left open. */
const keptRounds = 4;

/**
 * Sets sheets as one tagged PDF (PDF/UA-1), with title, language and subset fonts. The same sheet gives the same bytes:
 * nothing in them comes from the clock or the machine. Throws where the typesetter refuses, which is a defect of the
 * program: no text of an author's can cause it.
 */
export function pdfOf(sheets: readonly [Sheet, ...Sheet[]], title = sheets[0].title): PdfSheet {
  return set(renderTypst(sheets, title));
}

/** Labels as one PDF, a page for each; null: they are too small for their words. */
export function labelsPdf(sheet: LabelSheet): PdfSheet | null {
  try {
    return set(renderLabels(sheet));
  } catch (error) {
    if (String((error as Error).message).includes(labelTooSmall)) return null;
    throw error;
  }
}

/** Sets a document, its parts in the sizes that save pages. */
function set({ source, data }: TypstDocument): PdfSheet {
  const typst = typesetter();
  const fitting = new Fitting();
  give(typst, dataFile, data);
  try {
    for (;;) {
      give(typst, sizesFile, JSON.stringify(fitting.sizes));
      const document = compiled(typst, source);
      if (fitting.next(typst.query(document, { selector: '<extent>', field: 'value' }) as Extent[])) continue;
      return { ...pdfBytes(typst, document), pages: document.numOfPages };
    }
  } finally {
    typst.evictCache(keptRounds);
    documentMade();
  }
}

/** A file for the typesetter, which is on no disk. */
function give(typst: NodeCompiler, file: string, content: string) {
  typst.mapShadow(join(root, file), Buffer.from(content));
}

function compiled(typst: NodeCompiler, source: string): Compiled {
  const made = typst.compile({ mainFileContent: source });
  if (made.result !== null) return made.result;
  const problems = typst.fetchDiagnostics(made.takeDiagnostics()!) as { message: string }[];
  throw new Error(`The sheet cannot be set: ${problems.map(({ message }) => message).join('; ')}`);
}

type Compiled = NonNullable<ReturnType<NodeCompiler['compile']>['result']>;

function pdfBytes(typst: NodeCompiler, document: Compiled): Omit<PdfSheet, 'pages'> {
  try {
    return {
      bytes: typst.pdf(document, { pdfStandard: 'ua-1' }),
      accessible: true,
      missing: [],
    };
  } catch (error) {
    // PDF/UA refuses a character that no font can draw. The sheet is printed with empty boxes and says which.
    const missing = missingCharacters(String((error as Error).message));
    if (missing.length === 0) throw error;
    return { bytes: typst.pdf(document), accessible: false, missing };
  }
}

function missingCharacters(message: string): string[] {
  const found = [...message.matchAll(/the text `\\?"(.+?)\\?"` could not be displayed/gu)].map(([, text]) => text!);
  return [...new Set(found)];
}
