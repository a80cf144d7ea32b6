/** Hints in the text, in the protocol's terms. */
import { type InlayHint, InlayHintKind } from 'vscode-languageserver';
import { inlayHintsIn } from '../../language/ide/inlay-hints.ts';
import { serialsIn } from '../../language/ide/serials.ts';
import { visitWords } from '../host/ledger/result-words.ts';
import { asked, type Feature } from './feature.ts';
import { knownSerials } from './known-serials.ts';

export const hints: Feature = {
  register(session) {
    session.connection.languages.inlayHint.on(async ({ textDocument: { uri }, range }): Promise<InlayHint[]> => {
      const { snapshot, file } = asked(session, uri);
      const hints = inlayHintsIn(snapshot, file, range, session.settings().hints, session.reader()).map(
        ({ position, text, isBefore }): InlayHint => ({
          position,
          label: text,
          ...(isBefore ? { paddingRight: true } : { kind: InlayHintKind.Type, paddingLeft: true }),
        }),
      );
      if (!session.settings().hints.shims) return hints;
      const written = serialsIn(snapshot, file).filter(
        ({ range: { start } }) => start.line >= range.start.line && start.line <= range.end.line,
      );
      const known = await knownSerials(session, uri, written);
      return [
        ...hints,
        ...known.map(
          ({ range: { end }, visit }): InlayHint => ({
            position: end,
            label: visitWords(visit, session.reader().tell),
            kind: InlayHintKind.Type,
            paddingLeft: true,
          }),
        ),
      ];
    });
  },
};
