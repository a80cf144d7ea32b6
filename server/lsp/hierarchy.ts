/** The hierarchy of sequences and of procedures that are like each other, in the protocol's terms. */
import { type CallHierarchyItem, type Range, SymbolKind } from 'vscode-languageserver';
import { type Callable, callablesAt, callersOf, callsFrom } from '../../language/ide/call-hierarchy.ts';
import { asked, type Feature, type Session } from './feature.ts';

export const hierarchy: Feature = {
  register(session) {
    const { callHierarchy } = session.connection.languages;
    callHierarchy.onPrepare(({ textDocument: { uri }, position }) => {
      const { snapshot, file } = asked(session, uri);
      return callablesAt(snapshot, file, position).map((one) => itemOf(one, session));
    });
    callHierarchy.onIncomingCalls(({ item }) => {
      const { snapshot, of } = itemAsked(session, item);
      return of.flatMap((one) =>
        callersOf(snapshot, one).map(({ callable, places }) => ({
          from: itemOf(callable, session),
          fromRanges: [...places],
        })),
      );
    });
    callHierarchy.onOutgoingCalls(({ item }) => {
      const { snapshot, of } = itemAsked(session, item);
      return of.flatMap((one) =>
        callsFrom(snapshot, one).map(({ callable, places }) => ({
          to: itemOf(callable, session),
          fromRanges: [...places],
        })),
      );
    });
  },
};

/** An item is asked about by its place, as it is now. */
function itemAsked(session: Session, { uri, selectionRange }: { uri: string; selectionRange: Range }) {
  const { snapshot, file } = asked(session, uri);
  return { snapshot, of: callablesAt(snapshot, file, selectionRange.start) };
}

function itemOf(
  { name, kind, detail, file, range, nameRange }: Callable,
  { store, reader }: Session,
): CallHierarchyItem {
  return {
    name,
    detail: reader().tell(detail),
    kind: kind === 'sequence' ? SymbolKind.Function : SymbolKind.Package,
    uri: store.clientUri(file),
    range,
    selectionRange: nameRange,
  };
}
