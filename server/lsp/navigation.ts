/** References, highlights, type definitions and renaming. */
import { DocumentHighlightKind, ErrorCodes, ResponseError } from 'vscode-languageserver';
import type { TextDocumentEdit } from 'vscode-languageserver-types';
import * as z from 'zod';
import { highlightsAt, referencesAt } from '../../language/ide/references.ts';
import { renameAt, renameSubjectAt } from '../../language/ide/rename.ts';
import { typeDefinitionsAt } from '../../language/ide/type-definition.ts';
import { asked, type Feature, locationOf } from './feature.ts';

/** Longer than any name; such a one is a mistake of a client. */
const name = z.string().max(1000);

export const navigation: Feature = {
  register(session) {
    const { connection, store } = session;
    connection.onReferences(({ textDocument: { uri }, position, context }) => {
      const { snapshot, file } = asked(session, uri);
      const found = referencesAt(snapshot, file, position, context.includeDeclaration);
      return found.map((source) => locationOf(session, source));
    });
    connection.onDocumentHighlight(({ textDocument: { uri }, position }) => {
      const { snapshot, file } = asked(session, uri);
      return highlightsAt(snapshot, file, position).map(({ range, isDeclaration }) => ({
        range,
        kind: isDeclaration ? DocumentHighlightKind.Write : DocumentHighlightKind.Read,
      }));
    });
    connection.onTypeDefinition(({ textDocument: { uri }, position }) => {
      const { snapshot, file } = asked(session, uri);
      return typeDefinitionsAt(snapshot, file, position).map((source) => locationOf(session, source));
    });
    connection.onPrepareRename(({ textDocument: { uri }, position }) => {
      const { snapshot, file } = asked(session, uri);
      const found = renameSubjectAt(snapshot, file, position);
      if (found.kind === 'refused') throw refusal(session.reader().tell(found.reason));
      return { range: found.range, placeholder: found.name };
    });
    connection.onRenameRequest(({ textDocument: { uri }, position, newName }) => {
      const { snapshot, file } = asked(session, uri);
      const wanted = name.safeParse(newName);
      if (!wanted.success) throw new ResponseError(ErrorCodes.InvalidParams, wanted.error.message);
      const renamed = renameAt(snapshot, file, position, wanted.data);
      if (renamed.kind === 'refused') throw refusal(session.reader().tell(renamed.reason));
      const files = [...new Set(renamed.edits.map(({ source }) => source.file))];
      return {
        documentChanges: files.map(
          (of): TextDocumentEdit => ({
            textDocument: { uri: store.clientUri(of), version: store.document(of)?.version ?? null },
            edits: renamed.edits.flatMap(({ source, text }) =>
              source.file === of ? [{ range: source.range, newText: text }] : [],
            ),
          }),
        ),
      };
    });
  },
};

/** The editor shows its words. */
function refusal(reason: string): ResponseError {
  return new ResponseError(ErrorCodes.InvalidRequest, reason);
}
