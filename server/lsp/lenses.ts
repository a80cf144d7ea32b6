/** Code lenses and links: print, uses of a sequence, the page of a rule. */
import type { CodeLens, DocumentLink } from 'vscode-languageserver';
import * as z from 'zod';
import { codeLensesOf, printTitle, usesAt, usesTitle } from '../../language/ide/code-lenses.ts';
import { documentLinksOf } from '../../language/ide/document-links.ts';
import { asked, type Feature, locationOf } from './feature.ts';

/** What a lens is counted by when it is looked at. */
const lensData = z.strictObject({ uri: z.string().max(4096) });

export const lenses: Feature = {
  register(session) {
    const { connection, options, reader } = session;
    connection.onCodeLens(({ textDocument: { uri } }) => {
      const { snapshot, file } = asked(session, uri);
      const { printCommand, usesCommand } = options;
      return codeLensesOf(snapshot, file).flatMap(({ kind, range }): CodeLens[] => {
        if (kind === 'uses') return usesCommand === undefined ? [] : [{ range, data: { uri } }];
        if (printCommand === undefined) return [];
        const place = { uri, position: range.start };
        return [{ range, command: { title: reader().tell(printTitle), command: printCommand, arguments: [place] } }];
      });
    });
    connection.onCodeLensResolve((lens) => {
      const read = lensData.safeParse(lens.data);
      const command = options.usesCommand;
      if (!read.success || command === undefined) return lens;
      const { uri } = read.data;
      const { snapshot, file } = asked(session, uri);
      const uses = usesAt(snapshot, file, lens.range).map((source) => locationOf(session, source));
      const title = reader().tell(usesTitle(uses.length));
      return { ...lens, command: { title, command, arguments: [uri, lens.range.start, uses] } };
    });
    connection.onDocumentLinks(({ textDocument: { uri } }) => {
      const { snapshot, file } = asked(session, uri);
      return documentLinksOf(snapshot, file).flatMap(({ range, rule, tooltip }): DocumentLink[] => {
        const target = session.pageOf(rule);
        return target === null ? [] : [{ range, target, tooltip: reader().tell(tooltip) }];
      });
    });
  },
};
