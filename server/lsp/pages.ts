/** The requests for pages beside the editor: the sheet, and the specifications, of what is at a place. */
import { sheetPage, specsPage } from '../../language/ide/pages.ts';
import { printTargetAt } from '../../language/ide/print-target.ts';
import type { Host } from '../host/host.ts';
import type { DocumentStore } from './document-store.ts';
import { hashedTarget } from './hashed.ts';
import type { SheetParams, SheetResult, SpecsResult } from './requests.ts';

/** The sheet as it would be printed now. */
export async function sheetAt(store: DocumentStore, host: Host, { uri, position }: SheetParams): Promise<SheetResult> {
  const fonts = await host.fonts();
  const file = store.canonical(uri);
  const found = await hashedTarget(store, host, uri, (result) => printTargetAt(result, file, position));
  if (found.kind === 'none') return found;
  const { target, result, hash } = found;
  return { kind: 'sheet', file, ...sheetPage(target, result, { hash, fonts }) };
}

export async function specsAt(store: DocumentStore, host: Host, { uri, position }: SheetParams): Promise<SpecsResult> {
  const fonts = await host.fonts();
  const file = store.canonical(uri);
  const found = printTargetAt(store.check(uri), file, position);
  if (found.kind === 'none') return found;
  return { kind: 'specs', file, ...specsPage(found.target, fonts) };
}
