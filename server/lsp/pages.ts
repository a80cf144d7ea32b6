/** The requests for pages beside the editor: the sheet, and the specifications, of what is at a place. */
import { printedContent } from '../../language/db/printed-content.ts';
import { sheetPage, specsPage } from '../../language/ide/pages.ts';
import { printTargetAt } from '../../language/ide/print-target.ts';
import type { Host } from '../host/host.ts';
import type { DocumentStore } from './document-store.ts';
import type { SheetParams, SheetResult, SpecsResult } from './requests.ts';

/** The sheet as it would be printed now. */
export async function sheetAt(store: DocumentStore, host: Host, { uri, position }: SheetParams): Promise<SheetResult> {
  const checked = store.checked(uri);
  const file = store.canonical(uri);
  const found = printTargetAt(checked.result, file, position);
  if (found.kind === 'none') return found;
  const hash = await host.hash(printedContent(found.target, checked));
  return { kind: 'sheet', file, ...sheetPage(found.target, checked.result, { hash, fonts: await host.fonts() }) };
}

export async function specsAt(store: DocumentStore, host: Host, { uri, position }: SheetParams): Promise<SpecsResult> {
  const file = store.canonical(uri);
  const found = printTargetAt(store.check(uri), file, position);
  if (found.kind === 'none') return found;
  return { kind: 'specs', file, ...specsPage(found.target, await host.fonts()) };
}
