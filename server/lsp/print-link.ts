/** The request `handtight/printLink`: what a printed sheet was made from, by the link on it. */
import { printedContent } from '../../language/db/printed-content.ts';
import { printedFrom } from '../../language/ide/print-target.ts';
import type { Host } from '../host/host.ts';
import type { DocumentStore } from './document-store.ts';
import type { PrintLinkParams, PrintLinkResult } from './requests.ts';

/** Finds the job, or without one the procedure, in the workspace; `same` while the text still gives the printed hash. */
export async function resolvePrintLink(
  store: DocumentStore,
  host: Host,
  { procedure, job, hash }: PrintLinkParams,
): Promise<PrintLinkResult> {
  for (const { result, files } of store.checks()) {
    const found = printedFrom(result, { procedure, job }, files);
    if (found === null) continue;
    const { file, position, target } = found;
    const same =
      target !== null && hash !== '' && (await host.hash(printedContent(target, store.checked(file)))).startsWith(hash);
    return { kind: 'found', uri: store.clientUri(file), position, same };
  }
  const [kind, name] = job === '' ? ['procedure', procedure] : ['job', job];
  return {
    kind: 'none',
    reason: `No ${kind} of this workspace is called ${name}. Open the folder that the sheet was printed from, and scan or click again.`,
  };
}
