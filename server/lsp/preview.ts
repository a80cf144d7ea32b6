/** The request `handtight/sheet`: the sheet of what stands at a place, for a view beside the editor. */
import { printedAs } from '../../language/config/config.ts';
import { htmlOf } from '../../language/documents/renderers/index.ts';
import { sheetOf } from '../../language/documents/traveler/index.ts';
import { contentHash } from '../host/files/content-hash.ts';
import { htmlFonts } from '../host/print/index.ts';
import type { Library } from './document-store.ts';
import { subjectAt } from './print-target.ts';
import type { SheetAnswer, SheetQuestion } from './requests.ts';
import { canonicalUri } from './uris.ts';

/** Answers with the page as it would be printed now, errors or not: with errors it bears the draft's mark. */
export function sheetAt(library: Library, { uri, position }: SheetQuestion): SheetAnswer {
  const found = subjectAt(library, uri, position);
  if (found.kind === 'none') return found;
  const { subject } = found;
  const { procedure, job, findings, symbol } = subject;
  const sheet = sheetOf(procedure, {
    job,
    number: null,
    ...printedAs(library.check(uri).sheet),
    draft: false,
    findings,
    hash: contentHash(subject, library.checked(uri)),
  });
  const count = (severity: 'error' | 'warning') => findings.filter((finding) => finding.severity === severity).length;
  return {
    kind: 'sheet',
    // The view has a policy of its own, and this page is shown inside it.
    html: htmlOf(sheet, { fonts: htmlFonts(), policy: null }),
    title: symbol.title === '' ? symbol.name : symbol.title,
    file: canonicalUri(uri),
    lines: { first: symbol.range.start.line, last: symbol.range.end.line },
    errors: count('error'),
    warnings: count('warning'),
  };
}
