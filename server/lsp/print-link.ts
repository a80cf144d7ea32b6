/** The request `handtight/printLink`: what a printed sheet was made from, by the link on it. */
import { printedContent } from '../../language/db/printed-content.ts';
import { notFoundHere, printedFrom } from '../../language/ide/print-target.ts';
import type { Reader } from '../../language/ide/problem.ts';
import type { Host } from '../host/host.ts';
import type { DocumentStore } from './document-store.ts';
import type { PrintLinkParams, PrintLinkResult } from './requests.ts';

/** Finds the job, or without one the procedure, in the workspace; `same` while the text still gives the printed hash. */
export async function resolvePrintLink(
  store: DocumentStore,
  host: Host,
  { procedure, job, hash }: PrintLinkParams,
  { tell }: Reader,
): Promise<PrintLinkResult> {
  for (const { result, files } of store.checks()) {
    const found = printedFrom(result, { procedure, job }, files);
    if (found === null) continue;
    const { file, position, target } = found;
    const same =
      target !== null && hash !== '' && (await host.hash(printedContent(target, store.checked(file)))).startsWith(hash);
    return { kind: 'found', uri: store.clientUri(file), position, same };
  }
  return { kind: 'none', reason: tell(notFoundHere({ procedure, job })) };
}
