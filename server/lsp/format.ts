/** The layout of a document, of a range, and of what is typed. */
import {
  BulkRegistration,
  type Connection,
  DocumentFormattingRequest,
  DocumentOnTypeFormattingRequest,
  DocumentRangeFormattingRequest,
  ErrorCodes,
  ResponseError,
  type TextEdit,
} from 'vscode-languageserver';
import { isSettings } from '../../language/config/settings-name.ts';
import { isIssuedFile } from '../../language/db/issued/format.ts';
import { formatEdits, formatTyped, notLaidOut, unreadable } from '../../language/ide/format/format.ts';
import type { Reader } from '../../language/ide/problem.ts';
import type { Edit } from '../../language/model/diagnostic.ts';
import { onType } from './capabilities.ts';
import { asked, type Feature } from './feature.ts';

export const format: Feature = {
  register(session) {
    /** None for the settings: the editor knows how their text is laid out. None for an issued revision, which is never touched. */
    const answer = (uri: string, edits: (text: string, file: string) => readonly Edit[]): TextEdit[] => {
      if (isSettings(uri) || isIssuedFile(uri)) return [];
      const { snapshot, file } = asked(session, uri);
      return edits(snapshot.textOf(file) ?? '', file).map(textEdit);
    };
    session.connection.onDocumentFormatting(({ textDocument: { uri } }) =>
      answer(uri, (text, file) => {
        refuseUnreadable(text, session.reader());
        return formatEdits(text, file);
      }),
    );
    session.connection.onDocumentRangeFormatting(({ textDocument: { uri }, range }) =>
      answer(uri, (text, file) => {
        refuseUnreadable(text, session.reader());
        return formatEdits(text, file, range);
      }),
    );
    session.connection.onDocumentOnTypeFormatting(({ textDocument: { uri }, position, ch }) =>
      answer(uri, (text, file) => {
        // What is being typed cannot be read yet: what is around it is left alone then.
        if (unreadable(text) !== null) return [];
        return formatTyped(text, file, ch === '\n' ? Math.max(0, position.line - 1) : position.line);
      }),
    );
  },
};

/** Announces it for procedures alone. */
export async function registerFormatting({ client }: Connection): Promise<void> {
  const of = { documentSelector: [{ language: 'rebuild' }] };
  const all = BulkRegistration.create();
  all.add(DocumentFormattingRequest.type, of);
  all.add(DocumentRangeFormattingRequest.type, of);
  all.add(DocumentOnTypeFormattingRequest.type, { ...of, ...onType });
  await client.register(all);
}

function textEdit({ source: { range }, text }: Edit): TextEdit {
  return { range, newText: text };
}

function refuseUnreadable(text: string, { tell }: Reader): void {
  const why = unreadable(text);
  if (why !== null) throw new ResponseError(ErrorCodes.InvalidRequest, tell(notLaidOut(why)));
}
