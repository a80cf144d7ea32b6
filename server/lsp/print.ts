/** The request `handtight/print`: the sheet of what is at a place, as a PDF in a folder. */
import type * as z from 'zod';
import { countOf, sheetFor } from '../../language/ide/pages.ts';
import { printTargetAt, titleOf } from '../../language/ide/print-target.ts';
import type { Host } from '../host/host.ts';
import type { DocumentStore } from './document-store.ts';
import { hashedTarget } from './hashed.ts';
import type { PrintResult, printParams } from './requests.ts';

const noPrinter =
  'A PDF cannot be made in a browser. Print with the desktop editor, or with the command handtight print. Handtight: Open Sheet to the Side shows the same sheet here.';

/** Prints, unless there are errors and no draft was requested. A file that cannot be written is a result, not a defect. */
export async function printAt(
  store: DocumentStore,
  host: Host,
  { uri, position, folder, paper, draft }: z.output<typeof printParams>,
): Promise<PrintResult> {
  if (host.printer === null) return { kind: 'none', reason: noPrinter };
  const found = await hashedTarget(store, host, uri, (state) => printTargetAt(state, store.canonical(uri), position));
  if (found.kind === 'none') return found;
  const { target, result, hash } = found;
  const errors = countOf(target, 'error');
  if (errors > 0 && !draft) return { kind: 'errors', title: titleOf(target), errors };
  try {
    const sheet = sheetFor(target, result, { hash, draft, paper });
    const file = await host.printer.print(sheet, { folder, printed: target, result, draft });
    return { kind: 'printed', file: file.uri, draft, notes: file.notes };
  } catch (error) {
    return { kind: 'none', reason: error instanceof Error ? error.message : String(error) };
  }
}
