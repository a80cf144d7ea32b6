/** Hints in the text, in the protocol's terms. */
import { InlayHintKind } from 'vscode-languageserver';
import { inlayHintsIn } from '../../language/ide/inlay-hints.ts';
import { asked, type Feature } from './feature.ts';

export const hints: Feature = {
  register(session) {
    session.connection.languages.inlayHint.on(({ textDocument: { uri }, range }) => {
      const { snapshot, file } = asked(session, uri);
      const { hints: shown } = session.settings();
      return inlayHintsIn(snapshot, file, range, shown, session.reader()).map(({ position, text, isBefore }) => ({
        position,
        label: text,
        ...(isBefore ? { paddingRight: true } : { kind: InlayHintKind.Type, paddingLeft: true }),
      }));
    });
  },
};
