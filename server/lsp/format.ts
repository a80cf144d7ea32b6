/** The layout of a document, of a range, and of what is typed. */
import { ErrorCodes, ResponseError, type TextEdit } from 'vscode-languageserver';
import { formatEdits, formatTyped, unreadable } from '../../language/ide/format/format.ts';
import type { Edit } from '../../language/model/diagnostic.ts';
import { asked, type Feature } from './feature.ts';

export const format: Feature = {
  register(session) {
    const textOf = (uri: string) => {
      const { snapshot, file } = asked(session, uri);
      return { text: snapshot.textOf(file) ?? '', file };
    };
    session.connection.onDocumentFormatting(({ textDocument: { uri } }) => {
      const { text, file } = textOf(uri);
      refuseUnreadable(text);
      return formatEdits(text, file).map(textEdit);
    });
    session.connection.onDocumentRangeFormatting(({ textDocument: { uri }, range }) => {
      const { text, file } = textOf(uri);
      refuseUnreadable(text);
      return formatEdits(text, file, range).map(textEdit);
    });
    session.connection.onDocumentOnTypeFormatting(({ textDocument: { uri }, position, ch }) => {
      const { text, file } = textOf(uri);
      // What is being typed cannot be read yet: what is around it is left alone then.
      if (unreadable(text) !== null) return [];
      return formatTyped(text, file, ch === '\n' ? Math.max(0, position.line - 1) : position.line).map(textEdit);
    });
  },
};

function textEdit({ source: { range }, text }: Edit): TextEdit {
  return { range, newText: text };
}

function refuseUnreadable(text: string): void {
  const why = unreadable(text);
  if (why !== null)
    throw new ResponseError(
      ErrorCodes.InvalidRequest,
      `Not laid out: line ${why.line + 1} cannot be read. ${why.message}`,
    );
}
