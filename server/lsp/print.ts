/** The request `handtight/print`: the sheet of what is at a place, as a PDF in a folder. */

import type { z } from 'zod';
import { printedAs } from '../../language/config/config.ts';
import { sheetOf } from '../../language/documents/traveler/index.ts';
import { contentHash } from '../host/files/content-hash.ts';
import { printSheet } from '../host/print/index.ts';
import { sheetNames } from '../host/print/sheet-name.ts';
import type { Library } from './document-store.ts';
import { subjectAt } from './print-target.ts';
import type { PrintAnswer, printQuestion } from './requests.ts';
import { pathOfUri, uriOfPath } from './uris.ts';

/** Prints, unless there are errors and no draft was requested. A file that cannot be written is an answer, not a defect. */
export async function printAt(
  library: Library,
  { uri, position, folder, paper, draft }: z.output<typeof printQuestion>,
): Promise<PrintAnswer> {
  const found = subjectAt(library, uri, position);
  if (found.kind === 'none') return found;
  const to = pathOfUri(folder);
  if (to === null) return { kind: 'none', reason: `There is no folder on this machine's disk behind ${folder}.` };
  const { subject } = found;
  const { procedure, job, findings, symbol } = subject;
  const errors = findings.filter(({ severity }) => severity === 'error').length;
  if (errors > 0 && !draft) return { kind: 'errors', title: symbol.title === '' ? symbol.name : symbol.title, errors };
  const sheet = sheetOf(procedure, {
    job,
    number: null,
    ...printedAs(library.check(uri).sheet, { paper }),
    draft,
    findings,
    hash: contentHash(subject, library.checked(uri)),
  });
  try {
    const { files, notes } = printSheet(sheet, {
      formats: ['pdf'],
      to,
      name: sheetNames(library.check(uri))(subject, draft),
    });
    return { kind: 'printed', file: uriOfPath(files[0]!), draft, notes };
  } catch (error) {
    return { kind: 'none', reason: error instanceof Error ? error.message : String(error) };
  }
}
