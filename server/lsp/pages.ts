/** The requests for what is shown beside the editor: sheet, specifications, drawing and state of what is at a place. */
import { drawingPage, sheetPage, specsPage } from '../../language/ide/pages.ts';
import { drawnTargetAt, printTargetAt } from '../../language/ide/print-target.ts';
import { stateViewAt } from '../../language/ide/state-view.ts';
import type { Host } from '../host/host.ts';
import type { DocumentStore } from './document-store.ts';
import { hashedTarget } from './hashed.ts';
import type { DrawingResult, PlaceParams, SheetParams, SheetResult, SpecsResult, StateResult } from './requests.ts';

/** The sheet as it would be printed now. */
export async function sheetAt(
  store: DocumentStore,
  host: Host,
  { uri, position, form }: SheetParams,
): Promise<SheetResult> {
  const fonts = await host.fonts();
  const file = store.canonical(uri);
  const found = await hashedTarget(store, host, uri, (result) => printTargetAt(result, file, position));
  if (found.kind === 'none') return found;
  const { target, result, hash } = found;
  return { kind: 'sheet', file, ...sheetPage(target, result, { hash, fonts, form }) };
}

export async function specsAt(store: DocumentStore, host: Host, { uri, position }: PlaceParams): Promise<SpecsResult> {
  const fonts = await host.fonts();
  const file = store.canonical(uri);
  const found = printTargetAt(store.check(uri), file, position);
  if (found.kind === 'none') return found;
  return { kind: 'specs', file, ...specsPage(found.target, fonts) };
}

export async function drawingAt(
  store: DocumentStore,
  host: Host,
  { uri, position }: PlaceParams,
): Promise<DrawingResult> {
  const fonts = await host.fonts();
  const file = store.canonical(uri);
  const result = store.check(uri);
  const found = drawnTargetAt(result, file, position);
  if (found.kind === 'none') return found;
  return { kind: 'drawing', file, ...drawingPage(found.target, result, fonts) };
}

export function stateOf(store: DocumentStore, { uri, position }: PlaceParams): StateResult {
  const view = stateViewAt(store.snapshot(uri), store.canonical(uri), position ?? { line: 0, character: 0 });
  if (view.kind === 'none') return view;
  const groups = view.groups.map((group) => ({
    ...group,
    items: group.items.map((item) => {
      if (item.since === null) return item;
      const { number, source } = item.since;
      return { ...item, since: { number, source: { ...source, file: store.clientUri(source.file) } } };
    }),
  }));
  return { ...view, groups };
}
