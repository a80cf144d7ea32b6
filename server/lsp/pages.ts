/** The requests for what is shown beside the editor: sheet, specifications, drawing and state of what is at a place. */
import { drawingPage, sheetPage, specsPage } from '../../language/ide/pages.ts';
import { drawnTargetAt, printTargetAt } from '../../language/ide/print-target.ts';
import type { Reader } from '../../language/ide/problem.ts';
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
  { tell }: Reader,
): Promise<SheetResult> {
  const fonts = await host.fonts();
  const file = store.canonical(uri);
  const found = await hashedTarget(store, host, uri, (result) => printTargetAt(result, file, position));
  if (found.kind === 'none') return { kind: 'none', reason: tell(found.reason) };
  const { target, result, hash } = found;
  return { kind: 'sheet', file, ...sheetPage(target, result, { hash, fonts, form }) };
}

export async function specsAt(
  store: DocumentStore,
  host: Host,
  { uri, position }: PlaceParams,
  reader: Reader,
): Promise<SpecsResult> {
  const fonts = await host.fonts();
  const file = store.canonical(uri);
  const found = printTargetAt(store.check(uri), file, position);
  if (found.kind === 'none') return { kind: 'none', reason: reader.tell(found.reason) };
  return { kind: 'specs', file, ...specsPage(found.target, fonts, reader) };
}

export async function drawingAt(
  store: DocumentStore,
  host: Host,
  { uri, position }: PlaceParams,
  reader: Reader,
): Promise<DrawingResult> {
  const fonts = await host.fonts();
  const file = store.canonical(uri);
  const result = store.check(uri);
  const found = drawnTargetAt(result, file, position);
  if (found.kind === 'none') return { kind: 'none', reason: reader.tell(found.reason) };
  return { kind: 'drawing', file, ...drawingPage(found.target, result, fonts, reader) };
}

export function stateOf(store: DocumentStore, { uri, position }: PlaceParams, { tell }: Reader): StateResult {
  const view = stateViewAt(store.snapshot(uri), store.canonical(uri), position ?? { line: 0, character: 0 });
  if (view.kind === 'none') return { kind: 'none', reason: tell(view.reason) };
  const groups = view.groups.map((group) => ({
    ...group,
    items: group.items.map(({ name, words, since, isNew }) => ({
      name: tell(name),
      words: tell(words),
      since:
        since === null ? null : { ...since, source: { ...since.source, file: store.clientUri(since.source.file) } },
      isNew,
    })),
  }));
  return { ...view, groups };
}
