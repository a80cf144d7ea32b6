/** The request `handtight/specs`: the specifications of the procedure at a place, for a view beside the editor. */
import { specsHtml } from '../../language/documents/renderers/index.ts';
import { missingCount, specsOf } from '../../language/documents/specs/index.ts';
import { htmlFonts } from '../host/print/index.ts';
import type { Library } from './document-store.ts';
import { subjectAt } from './print-target.ts';
import type { SheetQuestion, SpecsAnswer } from './requests.ts';
import { canonicalUri } from './uris.ts';

/** Answers for a job with its procedure's. */
export function specsAt(library: Library, { uri, position }: SheetQuestion): SpecsAnswer {
  const found = subjectAt(library, uri, position);
  if (found.kind === 'none') return found;
  const { procedure, symbol } = found.subject;
  const specs = specsOf(procedure);
  return {
    kind: 'specs',
    html: specsHtml(specs, { fonts: htmlFonts(), policy: null }),
    title: symbol.title === '' ? symbol.name : symbol.title,
    file: canonicalUri(uri),
    lines: { first: symbol.range.start.line, last: symbol.range.end.line },
    missing: missingCount(specs),
  };
}
