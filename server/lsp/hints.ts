/** Hints in the text, in the protocol's terms. */
import { InlayHintKind } from 'vscode-languageserver';
import { inlayHintsIn } from '../../language/ide/inlay-hints.ts';
import { asked, type Feature } from './feature.ts';

export const hints: Feature = {
  register(session) {
    session.connection.languages.inlayHint.on(({ textDocument: { uri }, range }) => {
      const { snapshot, file } = asked(session, uri);
      return inlayHintsIn(snapshot, file, range, session.settings().hints).map(({ position, text, isBefore }) => ({
        position,
        label: text,
        ...(isBefore ? { paddingRight: true } : { kind: InlayHintKind.Type, paddingLeft: true }),
      }));
    });
  },
};
