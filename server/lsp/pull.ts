/**
 * Findings on request, for a client that takes no pushed ones. One that takes both would show each finding twice: to such a
 * client they are pushed, since a change of one file shows in others that nobody would ask about.
 */
import type { Feature } from './feature.ts';

export const pull: Feature = {
  register(session) {
    session.connection.languages.diagnostics.on(({ textDocument: { uri } }) => {
      const { store } = session;
      store.bringUpToDate(uri);
      const items = store.findingsIn(store.canonical(uri));
      return { kind: 'full', items: items.map(session.diagnosticOf) };
    });
  },
};
