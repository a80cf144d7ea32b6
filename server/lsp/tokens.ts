/** Semantic tokens: colors of names that the text alone does not show. */
import { SemanticTokensBuilder } from 'vscode-languageserver';
import { coloredNames } from '../../language/ide/semantic-tokens.ts';
import { colors } from './capabilities.ts';
import { asked, type Feature } from './feature.ts';

export const tokens: Feature = {
  register(session) {
    session.connection.languages.semanticTokens.on(({ textDocument: { uri } }) => {
      const { snapshot, file } = asked(session, uri);
      const builder = new SemanticTokensBuilder();
      for (const { range, color } of coloredNames(snapshot, file)) {
        const { line, character } = range.start;
        builder.push(line, character, range.end.character - character, colors.indexOf(color), 0);
      }
      return { data: builder.build().data };
    });
  },
};
