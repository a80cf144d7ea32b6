/**
 * Findings on request, for a client that takes no pushed ones. One that takes both would show each finding twice: to such a
 * client they are pushed, since a change of one file shows in others that nobody would ask about.
 */
import type { Feature } from './feature.ts';

export const pull: Feature = {
  capabilities: ({ textDocument }) =>
    textDocument?.diagnostic !== undefined && textDocument.publishDiagnostics === undefined
      ? { diagnosticProvider: { interFileDependencies: true, workspaceDiagnostics: false } }
      : {},
  register(session) {
    session.connection.languages.diagnostics.on(({ textDocument: { uri } }) => {
      const { store } = session;
      const items = store.snapshot(uri).findingsIn(store.canonical(uri));
      return { kind: 'full', items: items.map(session.diagnosticOf) };
    });
  },
};
