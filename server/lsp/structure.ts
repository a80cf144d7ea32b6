/** Symbols of the workspace, folding, selections, linked editing: the shape of texts, in the protocol's terms. */
import { FoldingRangeKind, type SelectionRange, type WorkspaceSymbol } from 'vscode-languageserver';
import { linkedPlaces } from '../../language/ide/linked-editing.ts';
import { foldsOf, rangesAround } from '../../language/ide/structure.ts';
import { workspaceSymbols } from '../../language/ide/workspace-symbols.ts';
import { asked, type Feature, locationOf } from './feature.ts';
import { symbolKind } from './symbols.ts';

export const structure: Feature = {
  register(session) {
    const { connection, store } = session;
    connection.onWorkspaceSymbol(({ query }) =>
      store.snapshots().flatMap((snapshot) =>
        workspaceSymbols(snapshot, query).map(
          ({ name, kind, container, source }): WorkspaceSymbol => ({
            name,
            kind: symbolKind(kind),
            ...(container === null ? {} : { containerName: container }),
            location: locationOf(session, source),
          }),
        ),
      ),
    );
    connection.onFoldingRanges(({ textDocument: { uri } }) =>
      foldsOf(store.text(uri) ?? '').map(({ start, end, isRemark }) => ({
        startLine: start,
        endLine: end,
        ...(isRemark ? { kind: FoldingRangeKind.Comment } : {}),
      })),
    );
    connection.onSelectionRanges(({ textDocument: { uri }, positions }) => {
      const text = store.text(uri) ?? '';
      return positions.map((position) => {
        const ranges = rangesAround(text, position);
        const nested = ranges.reduceRight<SelectionRange | undefined>(
          (parent, range) => ({ range, ...(parent === undefined ? {} : { parent }) }),
          undefined,
        );
        return nested ?? { range: { start: position, end: position } };
      });
    });
    connection.languages.onLinkedEditingRange(({ textDocument: { uri }, position }) => {
      const { snapshot, file } = asked(session, uri);
      const ranges = linkedPlaces(snapshot, file, position);
      return ranges.length === 0 ? null : { ranges };
    });
  },
};
