/** The request `handtight/print`: the sheet of what is at a place, as a PDF in a folder, or as a page where none can be made. */
import type * as z from 'zod';
import { countOf, printedPage, sheetFor } from '../../language/ide/pages.ts';
import { printTargetAt, titleOf } from '../../language/ide/print-target.ts';
import type { Reader } from '../../language/ide/problem.ts';
import type { Host } from '../host/host.ts';
import type { DocumentStore } from './document-store.ts';
import { hashedTarget } from './hashed.ts';
import type { PrintResult, printParams } from './requests.ts';

/** Prints, unless there are errors and no draft was requested. A file that cannot be written is a result, not a defect. */
export async function printAt(
  store: DocumentStore,
  host: Host,
  { uri, position, folder, paper, form, draft }: z.output<typeof printParams>,
  { tell }: Reader,
): Promise<PrintResult> {
  const found = await hashedTarget(store, host, uri, (state) => printTargetAt(state, store.canonical(uri), position));
  if (found.kind === 'none') return { kind: 'none', reason: tell(found.reason) };
  const { target, result, hash } = found;
  const errors = countOf(target, 'error');
  if (errors > 0 && !draft) return { kind: 'errors', title: titleOf(target), errors };
  const sheet = sheetFor(target, result, { hash, draft, paper, form });
  // An instruction is for the wall, for every job.
  const printed = sheet.form === 'instruction' ? { ...target, job: null } : target;
  const printer = host.printer(folder);
  if (printer === null) {
    const of = printed.job === null ? printed.procedure.name : `job-${printed.job.name}`;
    const piece = sheet.form === 'card' ? of : `${of}-${sheet.form}`;
    return { kind: 'page', name: draft ? `${piece}-draft` : piece, html: printedPage(sheet, await host.fonts()) };
  }
  const file = await printer.print(sheet, { folder, printed, result, draft });
  if ('problem' in file) return { kind: 'none', reason: tell(file.problem) };
  return { kind: 'printed', file: file.uri, draft, notes: file.notes.map(tell) };
}
